import type { Path } from "../source/document.ts";
import type { Item } from "./item.ts";
import type { Report } from "./report.ts";

interface Told {
  readonly path: Path;
  readonly text: string;
}

/** Fields of an item that no public page has, whatever stands in them. */
const keptFields: ReadonlySet<string> = new Set(["storage", "distinguishing", "private"]);

/** What stands in a record as text, kept and not kept, with where. */
function textsIn(data: unknown, path: Path, isKept: boolean, kept: Told[], open: Told[]): void {
  if (typeof data === "string") (isKept ? kept : open).push({ path, text: data });
  if (Array.isArray(data)) {
    for (const [at, each] of data.entries()) textsIn(each, [...path, at], isKept, kept, open);
    return;
  }
  if (typeof data !== "object" || data === null) return;
  const fields = data as Readonly<Record<string, unknown>>;
  const own = Array.isArray(fields.private) ? fields.private : [];
  for (const [field, value] of Object.entries(fields)) {
    if (field === "private" && own.length > 0) continue;
    const isOne = path.length === 0 ? keptFields.has(field) : own.includes(field);
    textsIn(value, [...path, field], isKept || isOne, kept, open);
  }
}

/** A short word, or one in small letters by itself, is in many a sentence that gives nothing away. */
const shortest = 5;
const isOrdinary = (text: string): boolean => text.length < shortest || /^\p{Ll}+$/u.test(text);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/\s+/g, "\\s+");

/**
 * What an item keeps private must not be read in its other texts: a name that is kept in its custody, and told in its
 * description. Only a warning, since the words may say something else there.
 */
export function checkPrivate(report: Report, item: Item): void {
  const { document } = item;
  const kept: Told[] = [];
  const open: Told[] = [];
  textsIn(document.data, [], false, kept, open);
  const secrets = kept.filter(({ text }) => !isOrdinary(text.trim()) && /\p{L}/u.test(text));
  if (secrets.length === 0) return;
  open.push({ path: [], text: document.body });
  const all = open
    .map(({ text }) => text)
    .join("\n")
    .toLowerCase();
  const said = new Set<string>();
  for (const { path, text } of secrets) {
    const secret = text.trim();
    // The search for all at once is for nothing but speed: hardly any is found.
    if (said.has(secret) || !all.includes(secret.toLowerCase().split(/\s/)[0] ?? "")) continue;
    const pattern = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(secret)}(?![\\p{L}\\p{N}])`, "iu");
    const told = open.find((each) => pattern.test(each.text));
    if (!told) continue;
    said.add(secret);
    const where = told.path.length === 0 ? "the description" : `"${told.path[0]}"`;
    report("private-in-text", document, path, {
      found: `"${secret}", which ${where} tells`,
      expected: "what is private to stand in no text that is published",
    });
  }
}
