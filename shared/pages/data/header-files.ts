import type { PublishedCollection } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { rootedAddress } from "../addresses/relative-address.ts";
import { securityHeaders } from "../security-policy.ts";
import type { OutputFile } from "./output-file.ts";

type Header = readonly [name: string, value: string];

/** Files that carry a hash in their name never change, so that a browser may keep them. */
const kept: Header = ["Cache-Control", "public, max-age=31536000, immutable"];
/**
 * Programs of other sites may read what is made for programs (IIIF Presentation 3.0, 6.3); never the owner's own
 * copy, which would be open to every page that the owner visits.
 */
const open: Header = ["Access-Control-Allow-Origin", "*"];

const ofFolders: Readonly<Record<string, readonly Header[]>> = {
  "/assets/": [kept],
  "/images/": [kept, open],
  "/recordings/": [kept, open],
  "/data/": [open],
  "/iiif/": [open],
};

/** The same headers in the two forms that static hosts read: a `_headers` file, and Apache's `.htaccess`. */
export function headerFiles({
  audience,
  settings,
}: Pick<PublishedCollection, "audience" | "settings">): OutputFile[] {
  const folders = Object.entries(ofFolders).flatMap(([folder, headers]) => {
    const sent = headers.filter((header) => audience === "public" || header !== open);
    return sent.length === 0 ? [] : [{ folder, headers: sent }];
  });
  const plain = [
    "/*",
    ...securityHeaders.map(([name, value]) => `  ${name}: ${value}`),
    ...folders.flatMap(({ folder, headers }) => [
      `${folder}*`,
      ...headers.map(([name, value]) => `  ${name}: ${value}`),
    ]),
    "",
  ];
  const apache = [
    "<IfModule mod_headers.c>",
    ...securityHeaders.map(([name, value]) => `  Header always set ${name} "${value}"`),
    ...folders.flatMap(({ folder, headers }) => [
      `  <If "%{REQUEST_URI} =~ m#${folder}#">`,
      ...headers.map(([name, value]) => `    Header always set ${name} "${value}"`),
      "  </If>",
    ]),
    "</IfModule>",
    "AddType text/vtt .vtt",
    // Apache takes the way from the root of the host, whatever folder the file is in.
    `ErrorDocument 404 ${rootedAddress(settings.url, addresses.missing)}`,
    "",
  ];
  return [
    { address: "/_headers", text: plain.join("\n") },
    { address: "/.htaccess", text: apache.join("\n") },
  ];
}
