import axeCore, { type RunOptions } from "axe-core";
import type { Page } from "playwright-core";

const { source } = axeCore;

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

/**
 * Marks one text of every look: of its colour, size and weight, and of all that lies behind its middle, as far as that is
 * painted. Of texts that look the same one is as easy or hard to read as the other.
 */
const markLooks = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const painted = (each: Element): string => {
      const { backgroundColor, backgroundImage, opacity, filter, mixBlendMode } = getComputedStyle(each);
      const own = [backgroundColor, backgroundImage, opacity, filter, mixBlendMode].join();
      return own === "rgba(0, 0, 0, 0),none,1,none,normal" ? "" : own;
    };
    const found = new Map<Element, string>();
    const ownText = (each: Element) =>
      [...each.childNodes].find(
        ({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim(),
      );
    const texts = [...document.querySelectorAll("body *")].flatMap((each) => {
      const text = ownText(each);
      if (!(text || each.matches("input, select, textarea")) || !each.checkVisibility()) return [];
      const range = document.createRange();
      range.selectNodeContents(text ?? each);
      const [line] = text ? range.getClientRects() : each.getClientRects();
      if (!line) return [];
      return { each, x: line.x + line.width / 2, y: line.y + line.height / 2 + window.scrollY };
    });
    const back = window.scrollY;
    texts.sort((a, b) => a.y - b.y);
    for (const { each, x, y } of texts) {
      // What lies at a point is known only of what is in the window.
      const isShown = y > window.scrollY && y < window.scrollY + window.innerHeight;
      if (!isShown) window.scrollTo({ top: y - window.innerHeight / 3, behavior: "instant" });
      const behind = document.elementsFromPoint(x, y - window.scrollY);
      const around: Element[] = [];
      for (let next: Element | null = each; next; next = next.parentElement) around.push(next);
      const { color, fontSize, fontWeight, textShadow } = getComputedStyle(each);
      const grounds = [behind, around].map((all) => all.map(painted).join(" "));
      found.set(each, [color, fontSize, fontWeight, textShadow, each.tagName, ...grounds].join(";"));
    }
    window.scrollTo({ top: back, behavior: "instant" });
    const looks = new Set<string>();
    for (const each of document.querySelectorAll("[data-look]")) each.removeAttribute("data-look");
    for (const [each, look] of found) {
      if (!looks.has(look)) each.setAttribute("data-look", "");
      looks.add(look);
    }
    return looks.size;
  });

/** By the rules of axe-core: what is wrong, and where. Our pages hold no frames, so one look at each is enough. */
async function faultsBy(page: Page, within: string, options: RunOptions): Promise<string[]> {
  // It is large, and stays in a page until another is loaded.
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(source);
  return page.evaluate(
    async ([where, given]) => {
      const { axe } = window as unknown as { axe: typeof import("axe-core") };
      // Of what is right nothing need be told, and of what is wrong its HTML will do.
      const { violations } = await axe.run(where, {
        ...given,
        resultTypes: ["violations"],
        selectors: false,
      });
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
      );
    },
    [within, options] as const,
  );
}

/** Texts that are too faint, of which axe-core is asked about one of every look: to ask about all takes seconds a page. */
export async function faintTexts(page: Page): Promise<string[]> {
  if ((await markLooks(page)) === 0) throw new Error("The page has no text.");
  return faultsBy(page, "[data-look]", { runOnly: ["color-contrast"] });
}

export const axeFaults = async (page: Page): Promise<string[]> => [
  ...(await faultsBy(page, "html", { rules: { "color-contrast": { enabled: false } } })),
  ...(await faintTexts(page)),
];
