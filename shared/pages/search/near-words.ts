/** How many slips of the finger a word may have: none where it is short, and none in a number. */
export function slipsIn(word: string): number {
  if (word.length < 4 || /\p{N}/u.test(word)) return 0;
  return word.length < 8 ? 1 : 2;
}

/** Which of 32 groups of letters stand in a word, as bits: two words far apart differ in many. */
function lettersOf(word: string): number {
  let bits = 0;
  for (let at = 0; at < word.length; at++) bits |= 1 << (word.charCodeAt(at) & 31);
  return bits;
}

function bitCount(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count++;
  return count;
}

/**
 * The fewest slips that make the typed word of the other or of its beginning: a letter left out, put in, put for
 * another, or two neighbours changed about (the optimal string alignment distance). More than `most` is most + 1.
 * Checks   slips("quernby", "quernby", 2) => 0
 *          slips("qurenby", "quernby", 2) => 1
 *          slips("qernby", "quernby", 2) => 1
 *          slips("quernbi", "quernbys", 2) => 1
 *          slips("thwale", "estrow", 2) => 3
 */
export function slips(typed: string, word: string, most: number): number {
  const width = Math.min(word.length, typed.length + most);
  let before = new Array<number>(width + 1).fill(0);
  let last = Array.from({ length: width + 1 }, (_, at) => at);
  for (let row = 1; row <= typed.length; row++) {
    const next = [row];
    let least = row;
    for (let at = 1; at <= width; at++) {
      const same = typed.charCodeAt(row - 1) === word.charCodeAt(at - 1);
      let cost = Math.min((last[at] ?? 0) + 1, (next[at - 1] ?? 0) + 1, (last[at - 1] ?? 0) + (same ? 0 : 1));
      const swapped =
        row > 1 &&
        at > 1 &&
        typed.charCodeAt(row - 1) === word.charCodeAt(at - 2) &&
        typed.charCodeAt(row - 2) === word.charCodeAt(at - 1);
      if (swapped) cost = Math.min(cost, (before[at - 2] ?? 0) + 1);
      next.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    before = last;
    last = next;
  }
  return Math.min(most + 1, ...last);
}

/** Of all words those nearest to one that nothing has: with the fewest slips, and the shortest of these. */
export function nearWords(typed: string, words: Iterable<string>, atMost = 4): string[] {
  let allowed = slipsIn(typed);
  if (allowed === 0) return [];
  const letters = lettersOf(typed);
  let nearest: string[] = [];
  const seen = new Set<string>();
  for (const word of words) {
    if (word.length < typed.length - allowed || seen.has(word)) continue;
    // A letter of the typed word that the other has not got takes a slip.
    if (bitCount(letters & ~lettersOf(word)) > allowed) continue;
    const count = slips(typed, word, allowed);
    if (count > allowed || count === 0) continue;
    if (count < allowed) nearest = [];
    allowed = count;
    seen.add(word);
    nearest.push(word);
  }
  return nearest.sort((a, b) => a.length - b.length || (a < b ? -1 : 1)).slice(0, atMost);
}
