import { distance } from "fastest-levenshtein";

/** The known name that a slip of the finger would turn into this one; none where the nearest is another word. */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  let nearest: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  const folded = name.toLowerCase().slice(0, 80);
  for (const candidate of known) {
    const steps = distance(folded, candidate.toLowerCase());
    if (steps < least) {
      least = steps;
      nearest = candidate;
    }
  }
  if (nearest === undefined) return undefined;
  // Two slips in five letters are still the same word; two in four are another.
  const slips = Math.max(1, Math.round(Math.max(folded.length, nearest.length) * 0.3));
  return least <= slips ? nearest : undefined;
}

/** "Did you mean …?", else the whole choice where it is short enough to read. */
export function suggestion(name: string, known: Iterable<string>): string | undefined {
  const names = [...known];
  const nearest = nearestName(name, names);
  if (nearest !== undefined) return `Did you mean "${nearest}"?`;
  if (names.length > 0 && names.length <= 12) return `Known: ${names.join(", ")}.`;
  return undefined;
}
