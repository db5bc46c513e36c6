/** An umlaut as it is typed without its dots; after another vowel, or after q, the e is a letter of its own. */
const spelt = /(^|[^aeouq])([aou])e/g;

/**
 * A folded word, and what it may be meant for where people write German: "Öl" is folded to "ol", and typed as "Oel" too.
 * Checks   spellingsOf("oelfeuerzeug", "de") => ["oelfeuerzeug", "olfeuerzeug"]    spellingsOf("does", "en") => ["does"]
 *          spellingsOf("neue", "de") => ["neue"]    spellingsOf("quelle", "de-AT") => ["quelle"]
 */
export function spellingsOf(word: string, language: string): string[] {
  if (!/^de\b/i.test(language)) return [word];
  const meant = word.replace(spelt, "$1$2");
  return meant === word ? [word] : [word, meant];
}
