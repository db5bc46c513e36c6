import type { Finding } from "../../diagnostics/diagnostic.ts";
import type { Renamed } from "../../diagnostics/nearest-name.ts";
import type { Lookup } from "../lookup.ts";
import type { PublishedItem, PublishedVariant } from "../published.ts";
import { itemReading, membersOf, type Reading, variantReading } from "./reading.ts";
import { type Resolved, unknownName } from "./resolved.ts";

export interface ReadingAt {
  readonly subject:
    | { readonly kind: "variant"; readonly variant: PublishedVariant }
    | { readonly kind: "item"; readonly item: PublishedItem };
  readonly reading: Reading;
  /** The names below the subject, to what carries the evidence: those of a figure, not those of its low end. */
  readonly names: readonly string[];
  /** What stands at those names: the reading itself, or the figure that it is an end of. */
  readonly whole: Reading;
}

/** What bears evidence of its own; the rest is an end or a word of it. */
const isWhole = ({ kind }: Reading): boolean => kind !== "number" && kind !== "reason" && kind !== "word";

/** What a path can begin with. */
export interface Subjects {
  readonly variants: ReadonlyMap<string, Renamed>;
  readonly items: ReadonlyMap<string, Renamed>;
}

/** What is wrong with the first two names of a path. */
export function unknownSubject(
  [root = "", id = ""]: readonly string[],
  { variants, items }: Subjects,
): Finding | null {
  if (root !== "variants" && root !== "items")
    return unknownName(root, '"variants" or "items"', ["variants", "items"]);
  const known = root === "variants" ? variants : items;
  if (known.has(id)) return null;
  return unknownName(id, `the id of ${root === "variants" ? "a variant" : "an item"}`, known.values());
}

/** The reading at a path such as `variants/survey-pattern-2/survivors`, after the data files' own names. */
export function readingAt(path: readonly string[], lookup: Lookup): Resolved<ReadingAt> {
  const [root, id = "", ...names] = path;
  const problem = unknownSubject(path, lookup);
  const subject = subjectOf(root === "variants", id, lookup);
  if (problem || !subject) return { problem: problem ?? unknownName(id, "an id", []) };
  const top = subject.kind === "variant" ? variantReading(subject.variant) : itemReading(subject.item);
  const found = readingIn(top, id, names);
  return "problem" in found ? found : { value: { subject, ...found.value } };
}

/** The reading at the names below a subject. */
export function readingIn(
  top: Reading,
  id: string,
  names: readonly string[],
): Resolved<Omit<ReadingAt, "subject">> {
  let reading = top;
  let whole = top;
  let depth = 0;
  for (const [at, name] of names.entries()) {
    const members = membersOf(reading);
    const next = members.get(name);
    if (!next)
      return { problem: unknownName(name, `a name within ${within(reading, names, at)}`, members.keys()) };
    reading = next;
    if (isWhole(next) || at === 0) {
      whole = next;
      depth = at + 1;
    }
  }
  if (reading.kind === "group") {
    const found = `${names.length === 0 ? "no name" : "nothing"} after "${names.at(-1) ?? id}"`;
    const known = [...reading.members.keys()];
    const expected = `a name within ${reading.of}`;
    const remedy =
      known.length === 0
        ? undefined
        : `Known: ${known.slice(0, 12).join(", ")}${known.length > 12 ? ", …" : ""}.`;
    return { problem: { found, expected, remedy } };
  }
  return { value: { reading, names: names.slice(0, depth), whole } };
}

function subjectOf(isVariant: boolean, id: string, { variants, items }: Lookup): ReadingAt["subject"] | null {
  if (isVariant) {
    const variant = variants.get(id);
    return variant ? { kind: "variant", variant } : null;
  }
  const item = items.get(id);
  return item ? { kind: "item", item } : null;
}

const within = (reading: Reading, names: readonly string[], at: number): string =>
  reading.kind === "group" ? reading.of : `"${names[at - 1]}"`;
