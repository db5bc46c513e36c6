/**
 * What a browser may do on these pages, in one place: the pages say it themselves, and the header files for static
 * hosts say it again, with what a page cannot say. Nothing comes from anywhere else, and nothing inline runs.
 */
const contentSecurity: Readonly<Record<string, string>> = {
  "default-src": "'none'",
  "style-src": "'self'",
  "script-src": "'self'",
  "font-src": "'self'",
  "img-src": "'self'",
  "media-src": "'self'",
  "connect-src": "'self'",
  "manifest-src": "'self'",
  "form-action": "'self'",
  "base-uri": "'none'",
};

const written = (policy: Readonly<Record<string, string>>): string =>
  Object.entries(policy)
    .map(([directive, value]) => `${directive} ${value}`)
    .join("; ");

export const contentSecurityPolicy = written(contentSecurity);

export const referrerPolicy = "strict-origin-when-cross-origin";

/** Header names and values, for the host to send with every file. */
export const securityHeaders: readonly (readonly [name: string, value: string])[] = [
  ["Content-Security-Policy", written({ ...contentSecurity, "frame-ancestors": "'none'" })],
  ["Referrer-Policy", referrerPolicy],
  ["Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"],
  ["X-Content-Type-Options", "nosniff"],
];
