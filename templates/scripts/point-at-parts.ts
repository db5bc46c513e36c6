/**
 * A part pointed at in the case plan, in a photograph's legend or in the list of parts is marked in the others
 * as well. Without this every compartment is still a link to its line.
 */
const partOf = (target: EventTarget | null): string | null => {
  if (!(target instanceof Element)) return null;
  const marked = target.closest("[data-part]");
  if (marked) return marked.getAttribute("data-part");
  const href = target.closest("a[href^='#part-']")?.getAttribute("href");
  return href ? href.slice("#part-".length) : null;
};

let shown: string | null = null;

function point(part: string | null): void {
  if (part === shown) return;
  shown = part;
  for (const marked of document.querySelectorAll(".pointed-at")) marked.classList.remove("pointed-at");
  if (part === null) return;
  const name = CSS.escape(part);
  for (const match of document.querySelectorAll(
    `[data-part="${name}"], .legend li:has(a[href="#part-${name}"])`,
  )) {
    match.classList.add("pointed-at");
  }
}

document.addEventListener("pointerover", ({ target }) => point(partOf(target)));
document.addEventListener("focusin", ({ target }) => point(partOf(target)));
