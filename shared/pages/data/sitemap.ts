import { addresses } from "../addresses/addresses.ts";
import { absoluteAddress } from "../citation/linked-data.ts";
import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

/** `/sitemap.xml`, after the sitemap protocol 0.9. */
export function sitemap(siteUrl: string, pages: readonly string[]): OutputFile {
  const lines = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...[...pages]
      .sort()
      .map((address) => `  <url><loc>${xmlText(absoluteAddress(siteUrl, address))}</loc></url>`),
    "</urlset>",
  ];
  return { address: addresses.sitemap, text: `${lines.join("\n")}\n` };
}
