import { addresses } from "../addresses/addresses.ts";
import { absoluteAddress } from "../citation/linked-data.ts";
import { plainDate } from "../citation/plain-date.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

/** RFC 3339, as Atom wants it, from a plain date; what is vaguer than a year is not given a day. */
function timestamp(edtf: string | null): string | null {
  const match = edtf === null ? null : plainDate.exec(edtf);
  return match ? `${match[1]}-${match[2] ?? "01"}-${match[3] ?? "01"}T00:00:00Z` : null;
}

/** A feed is for what is new: who reads it has the rest. */
const mostEntries = 100;

/** `/feed.xml`: Atom (RFC 4287), the records last changed, the latest first. */
export function feed({ collection: { settings }, listed }: CatalogueIndex): OutputFile {
  const entries = listed
    .flatMap(({ items }) => items)
    .flatMap((item) => {
      const updated = timestamp(item.updated);
      return updated === null ? [] : [{ item, updated }];
    })
    .sort((a, b) =>
      a.updated === b.updated ? (a.item.id < b.item.id ? -1 : 1) : a.updated > b.updated ? -1 : 1,
    )
    .slice(0, mostEntries);
  const home = absoluteAddress(settings.url, addresses.home);
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom">',
    `  <id>${xmlText(home)}</id>`,
    `  <title>${xmlText(settings.title)}</title>`,
    `  <updated>${entries[0]?.updated ?? "1970-01-01T00:00:00Z"}</updated>`,
    `  <author><name>${xmlText(settings.publisher ?? settings.title)}</name></author>`,
    `  <link rel="self" href="${xmlText(absoluteAddress(settings.url, addresses.feed))}"/>`,
    `  <link rel="alternate" href="${xmlText(home)}"/>`,
    ...entries.flatMap(({ item, updated }) => {
      const at = (id: string) => xmlText(absoluteAddress(settings.url, addresses.item(id)));
      const address = at(item.id);
      return [
        "  <entry>",
        // What is published under another id stays the same entry (4.2.6).
        `    <id>${at(item.formerly[0] ?? item.id)}</id>`,
        `    <title>${xmlText(item.title)}</title>`,
        `    <updated>${updated}</updated>`,
        `    <link rel="alternate" href="${address}"/>`,
        `    <summary>${xmlText(item.change ?? item.variant.name)}</summary>`,
        "  </entry>",
      ];
    }),
    "</feed>",
  ];
  return { address: addresses.feed, text: `${lines.join("\n")}\n` };
}
