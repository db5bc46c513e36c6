import { distance } from "fastest-levenshtein";

/** Two letters that stand next to one another, each in the other's place: one slip of the fingers, where letters are two. */
function isSwapped(name: string, other: string): boolean {
  if (name.length !== other.length) return false;
  const at = [...name].findIndex((letter, place) => letter !== other[place]);
  return (
    at >= 0 &&
    name[at] === other[at + 1] &&
    name[at + 1] === other[at] &&
    name.slice(at + 2) === other.slice(at + 2)
  );
}

const slipsBetween = (name: string, other: string): number =>
  isSwapped(name, other) ? 1 : distance(name, other);

/** Whether one word is the other but for a letter, or for two that stand next to one another in each other's place. */
export const isOneSlip = (name: string, other: string): boolean => slipsBetween(name, other) === 1;

/** The same, where the slip makes no other word of it: a letter in place of another often does. */
export const isMistyped = (name: string, other: string): boolean =>
  isOneSlip(name, other) && (name.length !== other.length || isSwapped(name, other));

/** The known names that the fewest slips of the finger would turn into this one; none where those are another word. */
function near(name: string, known: Iterable<string>): readonly string[] {
  let names: string[] = [];
  let least = Number.POSITIVE_INFINITY;
  const folded = name.toLowerCase().slice(0, 80);
  for (const candidate of known) {
    const steps = slipsBetween(folded, candidate.toLowerCase());
    if (steps > least) continue;
    if (steps < least) names = [];
    least = steps;
    if (!names.includes(candidate)) names.push(candidate);
  }
  const [nearest] = names;
  if (nearest === undefined) return [];
  // Two slips in five letters are still the same word; two in four are another.
  const slips = Math.max(1, Math.round(Math.max(folded.length, nearest.length) * 0.3));
  return least <= slips ? names : [];
}

/** The known name that a slip of the finger would turn into this one; none where the nearest is another word. */
export const nearestName = (name: string, known: Iterable<string>): string | undefined =>
  near(name, known)[0];

/** "Did you mean …?", where something known is near. */
export function nearestSuggestion(name: string, known: Iterable<string>): string | undefined {
  const names = near(name, known).slice(0, 3);
  return names.length > 0 ? `Did you mean ${names.map((each) => `"${each}"`).join(" or ")}?` : undefined;
}

/** What had other names before. */
export interface Renamed {
  readonly id: string;
  readonly formerly: readonly string[];
}

/**
 * The same, else the whole choice where it is short enough to read. What is taken already was not meant; and what had the
 * name before is what was meant, whatever else is near.
 */
export function suggestion(
  name: string,
  known: Iterable<string | Renamed>,
  isTaken: (known: string) => boolean = () => false,
): string | undefined {
  const all: string[] = [];
  for (const each of known) {
    if (typeof each === "string") all.push(each);
    else if (each.formerly.includes(name)) return `It is now called "${each.id}".`;
    else all.push(each.id);
  }
  const nearest = nearestSuggestion(
    name,
    all.filter((each) => !isTaken(each)),
  );
  if (nearest !== undefined) return nearest;
  if (all.length > 0 && all.length <= 12) return `Known: ${all.join(", ")}.`;
  return undefined;
}

/** The name that a remedy says something bears now. */
export const nowCalled = (remedy: string | null): string | undefined =>
  remedy === null ? undefined : /^It is now called "([^"]+)"\.$/.exec(remedy)?.[1];

/** The name that a remedy of the form above suggests, where it is the only one. */
export function onlySuggested(remedy: string | null): string | undefined {
  return remedy === null ? undefined : /^Did you mean "([^"]+)"\?$/.exec(remedy)?.[1];
}
