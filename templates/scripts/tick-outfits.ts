import { readTicks, showTicks, tick, ticked, untickAll } from "./ticks/ticked.ts";
import { siteWords } from "./words/site-words.ts";

const isSeen = (box: HTMLElement): boolean => box.getClientRects().length > 0;

/** The box itself, or the first of the list where it is no longer shown. */
function placeAfter(last: HTMLInputElement | null): HTMLInputElement | undefined {
  if (last && isSeen(last)) return last;
  return [...document.querySelectorAll<HTMLInputElement>(".tick-box")].find(isSeen);
}

/** Outfits ticked in a list, and the way to see them side by side. */
function offerTicks(bar: HTMLElement): void {
  const told = bar.querySelector<HTMLOutputElement>(".told-ticked");
  const link = bar.querySelector<HTMLAnchorElement>(".set-beside");
  if (!told || !link) return;
  for (const cell of document.querySelectorAll<HTMLElement>(".tick[hidden]")) cell.hidden = false;
  const page = link.href;
  let last: HTMLInputElement | null = null;

  const show = async () => {
    const ids = ticked();
    bar.hidden = ids.length === 0;
    link.hidden = ids.length < 2;
    link.href = `${page}?items=${ids.map(encodeURIComponent).join(",")}`;
    if (ids.length === 0) return;
    const say = (await siteWords()).pages.finder;
    // While the words came, another may have been ticked.
    const count = ticked().length;
    told.value = [say.ticked(count), ...(count < 2 ? [say.tickMore] : [])].join(" ");
  };

  document.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement) || !target.classList.contains("tick-box")) return;
    last = target;
    tick(target.value, target.checked);
    // The same outfit may stand in a list and among what was found.
    showTicks(document);
    void show();
  });
  bar.querySelector<HTMLElement>(".untick")?.addEventListener("click", ({ detail }) => {
    untickAll();
    showTicks(document);
    void show();
    // The button is gone: the keyboard goes on from the box ticked last. A click by hand leaves the page where it is.
    placeAfter(last)?.focus({ preventScroll: detail > 0 });
  });
  // Coming back to a page, the browser may have kept it as it was.
  window.addEventListener("pageshow", () => {
    readTicks();
    showTicks(document);
    void show();
  });
}

const bar = document.querySelector<HTMLElement>(".ticked");
if (bar) offerTicks(bar);
