import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { inventedNames, inventedWords } from "./generate/invented-words.ts";
import { itemText } from "./generate/items.ts";
import { randomFrom } from "./generate/random.ts";
import { generateReference } from "./generate/reference.ts";
import { sightingRow, sightingsText } from "./generate/sightings.ts";

export interface Wanted {
  readonly folder: string;
  readonly items: number;
  readonly seed?: number;
  /** Items of one variant; families, variants and the log grow with the items. */
  readonly itemsInVariant?: number;
}

export interface Generated {
  readonly files: number;
  readonly bytes: number;
  readonly variants: number;
  readonly sightings: number;
}

const rowsInFile = 10_000;
const sightingsOfItem = 10;

/**
 * A large collection in the contract's format, the same for the same seed: 30 parts and 10 features, provenance
 * and a text of 150 words an item, ten sightings for each. All of it is invented by chance.
 */
export function generateCollection({ folder, items, seed = 1, itemsInVariant = 40 }: Wanted): Generated {
  let files = 0;
  let bytes = 0;
  const write = (file: string, text: string) => {
    const full = path.join(folder, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
    files++;
    bytes += Buffer.byteLength(text);
  };

  const random = randomFrom(seed);
  const words = inventedWords(random, 8000);
  const given = { words, places: inventedNames(random, 400), names: inventedNames(random, 1500) };
  const count = Math.max(1, Math.ceil(items / itemsInVariant));
  const { variants, files: reference } = generateReference(random, count, words, given.names);

  write(
    "content/collection.yaml",
    "title: A generated collection\nurl: https://example.org/generated/\nwatching: 2001/2024\npublish: { serial: masked }\n",
  );
  write(
    "content/sources.yaml",
    "- { id: ledger, type: manuscript, title: A ledger, author: [{ literal: Nobody }], issued: 1900 }\n",
  );
  for (const [file, text] of reference) write(file, text);
  // Longer than any serial: an address that has the number of a masked serial is refused.
  const first = 10 ** Math.max(6, String(items).length);
  for (let item = 0; item < items; item++) {
    const variant = variants[item % variants.length];
    if (!variant) continue;
    const id = `outfit-${first + item + 1}`;
    write(`content/items/${id}/index.md`, itemText(item + 1, variant, random, given));
  }
  const sightings = items * sightingsOfItem;
  for (let from = 0; from < sightings; from += rowsInFile) {
    const rows: string[] = [];
    for (let row = from; row < Math.min(sightings, from + rowsInFile); row++) {
      const variant = variants[row % variants.length];
      if (variant) rows.push(sightingRow(variant, random, itemsInVariant * sightingsOfItem));
    }
    write(`content/sightings/log-${String(from / rowsInFile + 1).padStart(3, "0")}.csv`, sightingsText(rows));
  }
  return { files, bytes, variants: variants.length, sightings };
}

/** `node --import ./tests/benchmarks/typescript.mjs tests/benchmarks/generate-collection.ts FOLDER --items 10000` */
function main(): void {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: {
      items: { type: "string", default: "10000" },
      seed: { type: "string", default: "1" },
      "in-variant": { type: "string", default: "40" },
    },
  });
  const [folder] = positionals;
  if (folder === undefined) {
    process.stderr.write("Name the folder to write to.\n");
    process.exitCode = 2;
    return;
  }
  const { files, bytes, variants, sightings } = generateCollection({
    folder,
    items: Number(values.items),
    seed: Number(values.seed),
    itemsInVariant: Number(values["in-variant"]),
  });
  process.stdout.write(
    `${values.items} items of ${variants} variants and ${sightings} sightings: ${files} files, ${(bytes / 1e6).toFixed(1)} MB\n`,
  );
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) main();
