import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { addresses } from "../../pages/addresses/addresses.ts";
import { fileOf } from "../files/site-file.ts";

const ofRecords = [addresses.articles, addresses.families, addresses.items, "/variants/"];

/** The addresses of records at which a site that stands has a page and another, by its addresses, has none. */
export function gonePages(site: string | undefined, others: readonly string[]): string[] {
  if (site === undefined) return [];
  const files = new Set(others.map(fileOf));
  return ofRecords.flatMap((kind) => {
    const folder = path.join(site, kind);
    return (existsSync(folder) ? readdirSync(folder).sort() : [])
      .map((id) => `${kind}${id}/`)
      .filter((address) => !files.has(fileOf(address)) && existsSync(path.join(site, fileOf(address))));
  });
}
