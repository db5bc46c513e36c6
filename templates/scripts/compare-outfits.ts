import { type ComparedOutfit, compareTable } from "../../shared/pages/compare/compare-rows.ts";
import { contrastUnits, contrastValues } from "../../shared/publication/unit-contrast.ts";
import type { Words } from "../../shared/words/words.ts";
import { answered, answering, unanswered } from "./asked/answer.ts";
import { besideTables } from "./beside/beside-table.ts";
import { readOutfit, unitsOf } from "./beside/read-outfit.ts";
import { siteWords } from "./words/site-words.ts";

/** As many columns as anybody can read. */
const most = 12;

const asked = (): string[] => [
  ...new Set(
    (new URLSearchParams(location.search).get("items") ?? "")
      .split(",")
      .map((id) => id.trim())
      .filter((id) => id !== ""),
  ),
];

interface AskedOutfit {
  readonly outfit: ComparedOutfit;
  /** Every name by which the address asks for it: its former ids lead to it as well. */
  readonly ids: readonly string[];
}

function eachOnce(
  read: readonly { readonly id: string; readonly outfit: ComparedOutfit | null }[],
): AskedOutfit[] {
  const found = new Map<string, AskedOutfit>();
  for (const { id, outfit } of read) {
    if (outfit) found.set(outfit.id, { outfit, ids: [...(found.get(outfit.id)?.ids ?? []), id] });
  }
  return [...found.values()];
}

/** Any outfits that the address names, side by side, from the data files of the catalogue. */
function compose(section: HTMLElement): void {
  const told = section.querySelector<HTMLOutputElement>(".told-composed");
  const place = section.querySelector<HTMLElement>(".composed-tables");
  const home = new URL(section.dataset.home ?? "", location.href);
  let turn = 0;
  if (!told || !place) return;

  const columnHead = ({ outfit, ids }: AskedOutfit, canGo: boolean, words: Words): Node => {
    const head = document.createElement("span");
    const link = document.createElement("a");
    link.href = new URL(`items/${encodeURIComponent(outfit.id)}/`, home).href;
    link.textContent = outfit.title;
    head.append(link);
    if (!canGo) return head;
    const out = document.createElement("button");
    out.type = "button";
    out.className = "take-out";
    out.textContent = words.pages.compare.takeOut;
    out.setAttribute("aria-label", words.pages.compare.remove(outfit.title));
    out.addEventListener("click", () => {
      const left = asked().filter((id) => !ids.includes(id));
      history.pushState(null, "", `?items=${left.map(encodeURIComponent).join(",")}`);
      void show().then(() => section.focus());
    });
    head.append(" ", out);
    return head;
  };

  const show = async () => {
    const mine = ++turn;
    const ids = asked();
    section.hidden = ids.length === 0;
    if (ids.length === 0) {
      answered();
      return place.replaceChildren();
    }
    try {
      const words = await siteWords();
      const say = words.pages.compare;
      told.value = say.loading;
      const read = await Promise.all(
        ids.slice(0, most).map(async (id) => ({
          id,
          outfit: await readOutfit(new URL(`data/items/${encodeURIComponent(id)}.json`, home)),
        })),
      );
      if (mine !== turn) return;
      const columns = eachOnce(read);
      const outfits = columns.map(({ outfit }) => outfit);
      const missing = read.flatMap(({ id, outfit }) => (outfit ? [] : [id]));
      const table = compareTable(
        outfits,
        (kind, id) =>
          kind === "part"
            ? contrastUnits(outfits.map((outfit) => unitsOf(outfit, id)))
            : contrastValues(
                outfits.map(({ features }) => features.find((feature) => feature.id === id)?.value ?? null),
              ),
        words,
      );
      // One way out of each is enough: in the first table, and while two are left.
      const names = (isFirst: boolean) =>
        columns.map((column) => columnHead(column, isFirst && columns.length > 2, words));
      place.replaceChildren(...(outfits.length < 2 ? [] : besideTables(table, names, words)));
      told.value = [
        outfits.length < 2 ? say.tooFew : say.shown(outfits.length),
        ...(missing.length > 0 ? [say.notFound(words.pages.list(missing))] : []),
        ...(ids.length > most ? [say.most(most)] : []),
      ].join(" ");
      answered();
    } catch {
      if (mine !== turn) return;
      section.hidden = true;
      unanswered();
    }
  };

  answering();
  window.addEventListener("popstate", () => void show());
  void show();
}

const section = document.querySelector<HTMLElement>(".composed");
if (section) compose(section);
