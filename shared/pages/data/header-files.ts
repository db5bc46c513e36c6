import { securityHeaders } from "../security-policy.ts";
import type { OutputFile } from "./output-file.ts";

/** Files that carry a hash in their name never change, so that a browser may keep them. */
const kept = ["/assets/", "/images/"];
const forEver = "public, max-age=31536000, immutable";

/** The same headers in the two forms that static hosts read: a `_headers` file, and Apache's `.htaccess`. */
export function headerFiles(): OutputFile[] {
  const plain = [
    "/*",
    ...securityHeaders.map(([name, value]) => `  ${name}: ${value}`),
    ...kept.flatMap((folder) => [`${folder}*`, `  Cache-Control: ${forEver}`]),
    "",
  ];
  const apache = [
    "<IfModule mod_headers.c>",
    ...securityHeaders.map(([name, value]) => `  Header always set ${name} "${value}"`),
    ...kept.flatMap((folder) => [
      `  <If "%{REQUEST_URI} =~ m#${folder}#">`,
      `    Header always set Cache-Control "${forEver}"`,
      "  </If>",
    ]),
    "</IfModule>",
    "ErrorDocument 404 /404.html",
    "",
  ];
  return [
    { address: "/_headers", text: plain.join("\n") },
    { address: "/.htaccess", text: apache.join("\n") },
  ];
}
