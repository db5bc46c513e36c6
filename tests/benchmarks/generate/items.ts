import { inventedText } from "./invented-words.ts";
import type { Random } from "./random.ts";
import type { GeneratedPart, GeneratedVariant } from "./reference.ts";

export interface Vocabulary {
  readonly words: readonly string[];
  readonly places: readonly string[];
  readonly names: readonly string[];
}

const wordsInText = 150;
const conditions = ["fine", "sound", "worn", "damaged"] as const;
const statuses = ["collection", "collection", "collection", "offered", "sold", "reference"] as const;

const day = (random: Random, year: number): string =>
  `${year}-${String(1 + random.below(12)).padStart(2, "0")}-${String(1 + random.below(28)).padStart(2, "0")}`;

/** A line for most parts; how much is gone differs from example to example. */
function partLine(
  { id, quantity, bearsSet }: GeneratedPart,
  set: string,
  loss: number,
  random: Random,
): string | null {
  if (random.chance(0.08)) return null;
  if (random.chance(loss)) return `  ${id}: absent`;
  if (random.chance(0.04)) return `  ${id}: unverified`;
  if (random.chance(0.03)) return `  ${id}: { state: substitute, model: later }`;
  if (quantity > 1 && random.chance(0.3)) return `  ${id}: { state: present, quantity: 1, rest: absent }`;
  if (bearsSet)
    return `  ${id}: { state: present, marks: ["${random.chance(0.9) ? set : String(1 + random.below(900))}"], condition: ${random.pick(conditions)} }`;
  return `  ${id}: present`;
}

function provenance(variant: GeneratedVariant, random: Random, { places, names }: Vocabulary): string[] {
  const events: string[] = [];
  let year = variant.issuedTo;
  const holder = () =>
    `${random.pick(names)} ${random.pick(["Survey", "Station", "School", "Works", "and Co."])}`;
  for (let at = 0; at < 3 + random.below(3) && year < 2005; at++) {
    const until = Math.min(2010, year + 5 + random.below(30));
    events.push(
      `  - { date: ${year}/${until}, event: in service, holder: ${holder()}, place: ${random.pick(places)}, source: ledger }`,
    );
    year = until + random.below(12);
  }
  events.push(
    `  - { date: ${2011 + random.below(10)}, event: acquired, from: ${random.pick(names)}, private: [from], evidence: receipt }`,
  );
  return events;
}

export function itemText(
  number: number,
  variant: GeneratedVariant,
  random: Random,
  given: Vocabulary,
): string {
  const set = String(1 + random.below(900));
  const serial = `${variant.prefix}${variant.firstSerial + random.below(variant.made)}`;
  const loss = 0.02 + 0.3 * random.next() ** 2;
  const lines = variant.parts.flatMap((part) => partLine(part, set, loss, random) ?? []);
  const isMistaken = random.chance(0.03);
  const features = variant.features.flatMap((value, at) => {
    if (random.chance(0.25)) return [];
    const seen = isMistaken || value === null ? random.pick(["plain", "ribbed", "pierced"]) : value;
    return [`feature-${at + 1}: ${seen}`];
  });
  const year = 2015 + random.below(10);
  return [
    "---",
    `title: ${variant.name.replace(",", "")} no. ${set}, from ${random.pick(given.places)}`,
    `variant: ${variant.id}`,
    `serial: ${serial}`,
    `set: "${set}"`,
    `example: example-${number}`,
    `examined: ${day(random, year)}`,
    `updated: ${day(random, year + 1)}`,
    `status: ${random.pick(statuses)}`,
    `features: { ${features.join(", ")} }`,
    "parts:",
    ...lines,
    ...(random.chance(0.2) ? [`extras: [{ name: ${random.pick(given.words)} strap, quantity: 1 }]`] : []),
    `labels: [{ where: lid, kind: plate, text: ["SET NO. ${set}", "${random.pick(given.names).toUpperCase()}"] }]`,
    "provenance:",
    ...provenance(variant, random, given),
    `storage: room ${1 + random.below(40)}`,
    `paid: { amount: ${100 + random.below(4000)}, currency: XTS }`,
    "---",
    inventedText(random, given.words, wordsInText),
    "",
  ].join("\n");
}
