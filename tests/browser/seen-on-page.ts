import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

/** Texts that lie over one another, as "one | other", however the page is laid out. Drawings have tests of their own. */
export const overlappingTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    interface Placed {
      readonly text: string;
      readonly of: Element;
      readonly box: DOMRect;
    }
    const placed: Placed[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement;
      const text = node.textContent?.trim() ?? "";
      if (!of || text === "" || of.closest(".unseen, svg, math, script, template, dialog, .skip, .ticked"))
        continue;
      if (of.closest("thead") && getComputedStyle(of.closest("thead") as Element).position === "absolute")
        continue;
      if (!of.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects())
        if (box.width > 1 && box.height > 1) placed.push({ text: text.slice(0, 40), of, box });
    }
    placed.sort((a, b) => a.box.top - b.box.top);
    const found: string[] = [];
    for (const [at, one] of placed.entries()) {
      for (let next = at + 1; next < placed.length; next++) {
        const other = placed[next];
        if (!other || other.box.top >= one.box.bottom) break;
        if (one.of === other.of || one.of.contains(other.of) || other.of.contains(one.of)) continue;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // Lines are set closer than the boxes of their letters, which hold room for accents.
        if (across > 2 && down > Math.min(one.box.height, other.box.height) / 2)
          found.push(`${one.text} | ${other.text}`);
      }
    }
    return found;
  });

export interface Stop {
  readonly what: string;
  readonly isSeen: boolean;
  readonly hasName: boolean;
  readonly isMarked: boolean;
}

/** Every stop of the Tab key from the top of a page until it leaves it, or as many as asked for. */
export async function tabStops(page: Page, most: number): Promise<Stop[]> {
  await page.evaluate(() => {
    const stops: Stop[] = [];
    Object.assign(window, { stops });
    document.addEventListener("focusin", ({ target }) => {
      const at = target as Element;
      const box = at.getBoundingClientRect();
      const style = getComputedStyle(at);
      const name = at.getAttribute("aria-label") ?? at.textContent?.trim() ?? "";
      const labelled =
        at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.length : 0;
      stops.push({
        what: `${at.tagName.toLowerCase()} ${name.slice(0, 50)}`.trim(),
        isSeen:
          box.width > 0 && box.height > 0 && box.bottom > 0 && box.top < window.innerHeight && box.right > 0,
        hasName: name !== "" || Boolean(labelled) || at.querySelector("img[alt], title") !== null,
        // A compartment is marked by its own stroke, whatever else by an outline.
        isMarked:
          (style.outlineStyle !== "none" && style.outlineWidth !== "0px") || at.closest("svg") !== null,
      });
    });
  });
  const atOnce = 50;
  for (let turn = 0; turn < most; turn += atOnce) {
    // The browser takes them one after the other, without waiting for us between them.
    await Promise.all(Array.from({ length: atOnce }, () => page.keyboard.press("Tab")));
    if (await page.evaluate(() => document.activeElement === document.body)) break;
    // Past the last stop the browser begins again at the first.
    const isRound = await page.evaluate(() => {
      const { stops } = window as unknown as { stops: Stop[] };
      return stops.slice(1).some(({ what }) => what === stops[0]?.what);
    });
    if (isRound) break;
  }
  return page.evaluate(() => {
    const { stops } = window as unknown as { stops: Stop[] };
    const again = stops.findIndex(({ what }, at) => at > 0 && what === stops[0]?.what);
    return again < 0 ? stops : stops.slice(0, again);
  });
}

/** By the rules of axe-core: what is wrong, and where. Our pages hold no frames, so one look at each is enough. */
export async function axeFaults(page: Page, rules: readonly string[] = []): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode(true);
  // Of what is right nothing need be told.
  axe.options({ resultTypes: ["violations"] });
  if (rules.length > 0) axe.withRules([...rules]);
  const { violations } = await axe.analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
  );
}
