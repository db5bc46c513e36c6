import type { Collection } from "./collection.ts";
import type { Report } from "./report.ts";
import { serialKey } from "./serial.ts";

/** A name without what people write now so, now so: capitals, spaces and hyphens. */
const loose = (name: string): string => name.toLowerCase().replace(/[\s_\u2010-\u2015-]+/g, "");

interface Known {
  /** As it is written, for each way in which it is written otherwise. */
  readonly names: Map<string, string>;
  readonly serials: Map<string, string>;
}

/**
 * The names of examples against each other, within a variant: one name with two serials joins what may be two outfits,
 * and two spellings of one name part what may be one.
 */
export function checkExamples({ items, sightings }: Collection, report: Report): void {
  const variants = new Map<string, Known>();
  const knownOf = (variant: string): Known => {
    const known = variants.get(variant) ?? { names: new Map(), serials: new Map() };
    variants.set(variant, known);
    return known;
  };
  for (const { id, variant, example, serial, census } of items.values()) {
    if (!census) continue;
    const { names, serials } = knownOf(variant);
    const name = example?.trim() ?? id;
    if (!names.has(loose(name))) names.set(loose(name), name);
    if (example !== undefined && serial !== undefined && !serials.has(name)) serials.set(name, serial);
  }
  const told = new Set<string>();
  for (const { variant, example, serial, document } of sightings) {
    const name = example?.trim();
    if (name === undefined || name === "") continue;
    const { names, serials } = knownOf(variant);
    const other = names.get(loose(name));
    if (other === undefined) names.set(loose(name), name);
    else if (other !== name && !told.has(`${variant} ${name}`)) {
      told.add(`${variant} ${name}`);
      report("doubtful-example", document, ["example"], {
        found: `"${name}", which counts as another example than "${other}"`,
        expected: "one spelling for one example",
        remedy: `Did you mean "${other}"?`,
      });
    }
    if (serial === undefined) continue;
    const first = serials.get(name);
    if (first === undefined) serials.set(name, serial);
    else if (serialKey(first) !== serialKey(serial))
      report("doubtful-example", document, ["serial"], {
        found: `"${serial}" of "${name}", which has "${first}" elsewhere and counts as one example`,
        expected: "one serial for one example, or a name of its own for each",
      });
  }
}
