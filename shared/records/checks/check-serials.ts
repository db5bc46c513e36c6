import { isLeftOut, type Path } from "../../source/document.ts";
import type { Collection } from "../collection.ts";
import type { Item } from "../item.ts";
import type { Report } from "../report.ts";
import { foldSerial, serialKey } from "../serial.ts";
import type { Sighting } from "../sighting.ts";

/** Serials against each other, and against all that would give away one that an item masks or hides. */
export function checkSerials({ items, sightings, variants }: Collection, report: Report): void {
  const bearers = new Map<string, Item>();
  // One outfit may be taken for two variants, but hardly for two families.
  const familyKey = (variant: string, serial: string) => keyOf(variants.get(variant)?.family ?? "", serial);
  const unshown = new Map<string, Item>();
  for (const item of items.values()) {
    if (item.serial === undefined) continue;
    if (item.publish.serial !== "shown") {
      checkAddresses(report, item, item.serial);
      const key = familyKey(item.variant, item.serial);
      if (!unshown.has(key)) unshown.set(key, item);
    }
    const key = keyOf(item.variant, item.serial);
    const other = bearers.get(key);
    if (other) checkBearers(report, item, item.serial, other);
    else bearers.set(key, item);
  }
  for (const sighting of sightings) {
    if (sighting.serial === undefined) continue;
    checkLogged(report, sighting, sighting.serial, unshown.get(familyKey(sighting.variant, sighting.serial)));
  }
}

const keyOf = (of: string, serial: string): string => `${of} ${serialKey(serial)}`;

/** The numbers in a text, without the zeros before them; those of one or two digits count anything. */
const numbersIn = (text: string): string[] =>
  (foldSerial(text).match(/\p{Nd}+/gu) ?? [])
    .map((number) => number.replace(/^0+/, ""))
    .filter(({ length }) => length > 2);

/** An address is public: a serial that is not must not be read off it, nor its number. */
function checkAddresses(report: Report, item: Item, serial: string) {
  const letters = (text: string) => foldSerial(text).replace(/[^\p{L}\p{N}]/gu, "");
  const secret = letters(serial);
  const numbers = numbersIn(serial);
  const check = (address: string, path: Path, remedy: string) => {
    const isSpelt = secret.length > 2 && letters(address).includes(secret);
    if (!isSpelt && !numbersIn(address).some((number) => numbers.includes(number))) return;
    report("serial-in-address", item.document, path, {
      found: `the address "${address}", which spells out ${isSpelt ? "the serial" : "the number of the serial"}`,
      expected: "an address that does not",
      remedy: `${remedy}, or write "publish: { serial: shown }".`,
    });
  };
  check(item.id, ["serial"], "Rename the item");
  for (const [at, id] of item.formerly.entries()) check(id, ["formerly", at], "Leave it out");
}

/** What is in the log counts as published: a mask in an item hides nothing of it. */
function checkLogged(report: Report, { document }: Sighting, serial: string, item: Item | undefined) {
  if (!item) return;
  report("serial-in-log", document, ["serial"], {
    found: `"${serial}" in full, although the item "${item.id}" has it ${item.publish.serial}`,
    expected: 'a row that names the example ("example:" in both) and gives no serial',
    remedy: 'If it has been published already, write "publish: { serial: shown }" in the item.',
  });
}

/** One outfit may be described twice, and then says so; otherwise one of two like serials is a slip. */
function checkBearers(report: Report, item: Item, serial: string, other: Item) {
  if (item.example !== undefined && item.example === other.example) return;
  // What does not fit, and two of one id, are told of already.
  if (item.id === other.id || isLeftOut(item.document, "example") || isLeftOut(other.document, "example"))
    return;
  report("same-serial", item.document, ["serial"], {
    found: `"${serial}", which "${other.id}" has too`,
    expected: 'a different serial, or the same "example" in both if it is one outfit described twice',
  });
}
