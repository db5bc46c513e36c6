import type { OutputFile } from "./output-file.ts";
import { absolute, xmlText } from "./xml.ts";

/** `/sitemap.xml`, after the sitemap protocol 0.9. */
export function sitemap(siteUrl: string, addresses: readonly string[]): OutputFile {
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...[...addresses]
      .sort()
      .map((address) => `  <url><loc>${xmlText(absolute(siteUrl, address))}</loc></url>`),
    "</urlset>",
  ];
  return { address: "/sitemap.xml", text: `${lines.join("\n")}\n` };
}
