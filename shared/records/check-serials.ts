import type { Collection } from "./collection.ts";
import type { Item } from "./item.ts";
import type { Report } from "./report.ts";
import { foldSerial, serialKey } from "./serial.ts";
import type { Sighting } from "./sighting.ts";

/** Serials against each other, and against all that would give away one that an item masks or hides. */
export function checkSerials({ items, sightings, variants }: Collection, report: Report): void {
  // One outfit may be taken for two variants, but hardly for two families.
  const familyKey = (variant: string, serial: string) => keyOf(variants.get(variant)?.family ?? "", serial);
  const logged = new Map<string, Sighting>();
  for (const sighting of sightings) {
    if (sighting.serial === undefined) continue;
    const key = familyKey(sighting.variant, sighting.serial);
    if (!logged.has(key)) logged.set(key, sighting);
  }
  const bearers = new Map<string, Item>();
  for (const item of items.values()) {
    if (item.serial === undefined) continue;
    const key = keyOf(item.variant, item.serial);
    if (item.publish.serial !== "shown") {
      checkAddress(report, item, item.serial);
      checkLogged(report, item, item.serial, logged.get(familyKey(item.variant, item.serial)));
    }
    const other = bearers.get(key);
    if (other) checkBearers(report, item, item.serial, other);
    else bearers.set(key, item);
  }
}

const keyOf = (of: string, serial: string): string => `${of} ${serialKey(serial)}`;

/** An address is public: a serial that is not must not be read off it. */
function checkAddress(report: Report, item: Item, serial: string) {
  const letters = (text: string) => foldSerial(text).replace(/[^\p{L}\p{N}]/gu, "");
  const secret = letters(serial);
  const leaking = [item.id, ...item.formerly].find(
    (id) => secret.length >= 3 && letters(id).includes(secret),
  );
  if (leaking === undefined) return;
  report("serial-in-address", item.document, ["serial"], {
    found: `the address "${leaking}", which spells out the serial`,
    expected: "an address that does not",
    remedy: 'Rename the item, or say "publish: { serial: shown }".',
  });
}

/** What is in the log counts as published: a mask beside it hides nothing. */
function checkLogged(report: Report, item: Item, serial: string, sighting: Sighting | undefined) {
  if (!sighting) return;
  report("serial-in-log", item.document, ["serial"], {
    found: `"${serial}", which is ${item.publish.serial} here, in the open in ${sighting.document.file}`,
    expected: 'a row that names the example ("example:", in both) and gives no serial',
    remedy: 'Where it was published before anyway, say "publish: { serial: shown }".',
  });
}

/** One outfit may be described twice, and then says so; otherwise one of two like serials is a slip. */
function checkBearers(report: Report, item: Item, serial: string, other: Item) {
  if (item.example !== undefined && item.example === other.example) return;
  report("same-serial", item.document, ["serial"], {
    found: `"${serial}", which "${other.id}" has, too`,
    expected: 'a serial of its own; or in both the same "example", where it is one outfit described twice',
  });
}
