/**
 * A part pointed at in the case plan, on a photograph, in the list below it or in the list of parts is marked in
 * all the others. Without this each is still a link: a number and a compartment to the part's line, the line to
 * the photographs.
 */
const partOf = (target: EventTarget | null): string | null => {
  if (!(target instanceof Element)) return null;
  const marked = target.closest("[data-part], tr[id^='part-'], a[href^='#part-']");
  if (!marked) return null;
  const { id } = marked;
  if (marked.tagName === "TR" && id) return id.slice("part-".length);
  return marked.getAttribute("data-part") ?? marked.getAttribute("href")?.slice("#part-".length) ?? null;
};

let shown: string | null = null;

function point(part: string | null): void {
  if (part === shown) return;
  shown = part;
  for (const marked of document.querySelectorAll(".pointed-at")) marked.classList.remove("pointed-at");
  if (part === null) return;
  const name = CSS.escape(part);
  const matches = `[data-part="${name}"], tr[id="part-${name}"], svg a[href="#part-${name}"]`;
  for (const match of document.querySelectorAll(matches)) match.classList.add("pointed-at");
}

/** Whoever followed a link to a line, or to a number below a photograph, has pointed at its part. */
const pointAtAddress = () =>
  point(partOf(document.getElementById(decodeURIComponent(location.hash.slice(1)))));

document.addEventListener("pointerover", ({ target }) => point(partOf(target)));
document.addEventListener("focusin", ({ target }) => point(partOf(target)));
window.addEventListener("hashchange", pointAtAddress);
if (location.hash !== "") pointAtAddress();
