/**
 * What a figure in a sentence rests on opens below the sentence, and closes again. Without this the figure is a
 * link to its note at the end of the text.
 */
const opened = new Map<Element, Element>();

function toggle(told: Element): boolean {
  const shown = opened.get(told);
  if (shown) {
    shown.remove();
    opened.delete(told);
    told.setAttribute("aria-expanded", "false");
    return true;
  }
  const note = document.querySelector(`${told.getAttribute("href")} > p`);
  const block = told.closest("p, li, td, th, h2, h3, h4, blockquote");
  if (!note || !block) return false;
  const here = document.createElement("aside");
  here.className = "basis-here";
  here.append(...[...note.childNodes].map((node) => node.cloneNode(true)));
  // The ways back to each place that the note belongs to, which is where the reader is.
  for (const back of here.querySelectorAll(".back")) back.remove();
  if (block.matches("p, h2, h3, h4, blockquote")) block.after(here);
  else block.append(here);
  opened.set(told, here);
  told.setAttribute("aria-expanded", "true");
  return true;
}

for (const told of document.querySelectorAll("a.told[href^='#basis-']")) {
  told.setAttribute("aria-expanded", "false");
}

document.addEventListener("click", (event) => {
  const { target } = event;
  const isPlain = event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;
  if (!isPlain || !(target instanceof Element)) return;
  const told = target.closest("a.told[href^='#basis-']");
  if (told && toggle(told)) event.preventDefault();
});
