import type { Words } from "../../shared/words/words.ts";
import { keepTicks, readTicks, showTicks } from "./ticks/ticked.ts";

/** Outfits ticked in a list, and the way to see them side by side. */
function offerTicks(bar: HTMLElement): void {
  const told = bar.querySelector<HTMLOutputElement>(".told-ticked");
  const link = bar.querySelector<HTMLAnchorElement>(".set-beside");
  if (!told || !link) return;
  for (const cell of document.querySelectorAll<HTMLElement>(".tick[hidden]")) cell.hidden = false;
  const page = link.href;
  let ticks = readTicks();

  const show = async () => {
    bar.hidden = ticks.size === 0;
    link.hidden = ticks.size < 2;
    link.href = `${page}?items=${[...ticks].map(encodeURIComponent).join(",")}`;
    if (ticks.size === 0) return;
    const { words } = (await import(new URL(bar.dataset.words ?? "", location.href).href)) as {
      words: Words;
    };
    const say = words.pages.finder;
    told.value = [say.ticked(ticks.size), ...(ticks.size < 2 ? [say.tickMore] : [])].join(" ");
  };

  document.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement) || !target.classList.contains("tick-box")) return;
    ticks = readTicks();
    if (target.checked) ticks.add(target.value);
    else ticks.delete(target.value);
    keepTicks(ticks);
    // The same outfit may stand in a list and among what was found.
    showTicks(document);
    void show();
  });
  bar.querySelector(".untick")?.addEventListener("click", () => {
    ticks = new Set();
    keepTicks(ticks);
    showTicks(document);
    void show();
  });
  // Coming back to a page, the browser may have kept it as it was.
  window.addEventListener("pageshow", () => {
    ticks = readTicks();
    showTicks(document);
    void show();
  });
}

const bar = document.querySelector<HTMLElement>(".ticked");
if (bar) offerTicks(bar);
