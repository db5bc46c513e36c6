/**
 * The one script that stands in a page itself, of pages at former addresses: what is asked for within such a page goes
 * along to the present one. As a file it could be held to its digest only where a host serves it, not from a disk.
 */
export const leadingScript =
  'location.replace(document.querySelector("a").href + location.search + location.hash);';

/** Its SHA-256, as Content Security Policy writes it. */
const leadingDigest = "sha256-SuJj1O2Jy+FR2jvGXwnTVYFv2QdRYckJqr7LN7Ad59o=";

/**
 * What a browser may do on these pages, in one place: the pages say it themselves, and the header files for static
 * hosts say it again, with what a page cannot say. Nothing comes from anywhere else, and of what is inline nothing runs
 * but the script above, which is known by its digest.
 */
const contentSecurity: Readonly<Record<string, string>> = {
  "default-src": "'none'",
  "style-src": "'self'",
  "script-src": `'self' '${leadingDigest}'`,
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
