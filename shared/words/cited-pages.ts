/** A number, perhaps with a letter before or after it; or a Roman one. */
const arabic = String.raw`\p{L}?\d+(?:[a-eg-z](?!\p{L}))?`;
const roman = "(?=[ivxlcdm])m*(?:c[dm]|d?c{0,3})(?:x[lc]|l?x{0,3})(?:i[xv]|v?i{0,3})(?![\\p{L}.])";
const page = `(?:${arabic}|${roman})`;
const first = new RegExp(`^${page}`, "iu");
/** What follows where there are several: another page, or "f." and "ff.", those that come next. */
const more = new RegExp(String.raw`^\s*(?:ff?(?!\p{L})|(?:[-–—,;/&+]|and|und|to|bis)\s*${page})`, "iu");

/**
 * Whether a place in a source is one page or several; null where it is of another kind: a folio, a number, a plate.
 * Checks   citedPages("31") => "one"    citedPages("xii") => "one"    citedPages("31-33") => "several"
 *          citedPages("31f.") => "several"    citedPages("31, pl. 3") => "one"    citedPages("fol. 1") => null
 */
export function citedPages(place: string): "one" | "several" | null {
  const [found] = first.exec(place.trim()) ?? [];
  if (found === undefined) return null;
  return more.test(place.trim().slice(found.length)) ? "several" : "one";
}
