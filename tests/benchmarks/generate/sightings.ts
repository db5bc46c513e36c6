import type { Random } from "./random.ts";
import type { GeneratedVariant } from "./reference.ts";

const columns =
  "seen,variant,serial,example,source,kind,list,present,absent,condition,price,currency,relisted,note";

/** The log: examples turn up again and again, some often and most but once. */
export function sightingRow(variant: GeneratedVariant, random: Random, population: number): string {
  const seen = `${2001 + random.below(24)}-${String(1 + random.below(12)).padStart(2, "0")}`;
  const example = random.below(population);
  const serial = random.chance(0.7)
    ? `${variant.prefix}${variant.firstSerial + (example % variant.made)}`
    : "";
  const kind = random.pick(["offer", "offer", "record", "mention"]);
  const isFull = kind !== "mention";
  const absent = isFull ? variant.parts.filter(() => random.chance(0.15)).map(({ id }) => id) : [];
  const price = kind === "offer" && random.chance(0.6) ? `${100 + random.below(3000)},XTS` : ",";
  return [
    seen,
    variant.id,
    serial,
    serial === "" && random.chance(0.5) ? `seen-${variant.id}-${example}` : "",
    "ledger",
    kind,
    random.chance(0.5) ? random.pick(["north", "south"]) : "",
    isFull ? "rest" : "",
    absent.join(";"),
    random.pick(["fine", "sound", "worn", ""]),
    price,
    kind === "offer" && random.chance(0.05) ? "true" : "",
    "",
  ].join(",");
}

export const sightingsText = (rows: readonly string[]): string => `${columns}\r\n${rows.join("\r\n")}\r\n`;
