import type { OpenCatalogue } from "../../../shared/pages/search/open-catalogue.ts";
import { shareOfStep } from "../../../shared/pages/search/share-steps.ts";
import { standingInWords } from "../../../shared/pages/views/standing-words.ts";
import { statuses } from "../../../shared/terms/states.ts";
import { verdicts } from "../../../shared/terms/verdicts.ts";
import type { Words } from "../../../shared/words/words.ts";

function completeness({ columns }: OpenCatalogue, entry: number, words: Words): string {
  const [low, high] = [columns.low[entry] ?? 0, columns.high[entry] ?? 0];
  if (low === 0 || high === 0) return "—";
  const { share } = words.numbers;
  return words.interval(share(shareOfStep(low - 1)), share(shareOfStep(high - 1)));
}

/** The row of an entry, as the lists that were built have it, made from the index. */
export function foundRow(
  template: HTMLTemplateElement,
  catalogue: OpenCatalogue,
  entry: number,
  words: Words,
): DocumentFragment {
  const { index, columns, titles, ids, serials } = catalogue;
  const row = template.content.cloneNode(true) as DocumentFragment;
  const put = (field: string, text: string) => {
    const place = row.querySelector<HTMLElement>(`[data-field="${field}"]`);
    if (place) place.textContent = text;
    return place;
  };
  const { pages } = words;
  const title = titles[entry] ?? "";
  const id = ids[entry] ?? "";
  const verdict = verdicts[columns.verdict[entry] ?? -1] ?? "consistent";
  const status = statuses[columns.status[entry] ?? -1] ?? "collection";
  const place = columns.place[entry] ?? 0;
  put("title", title)?.setAttribute("href", `${encodeURIComponent(id)}/`);
  put("serial", serials[entry] ?? "");
  put("verdict", pages.verdicts[verdict].short)?.classList.add(`verdict-${verdict}`);
  put("complete", completeness(catalogue, entry, words));
  put("level", index.levels[(columns.level[entry] ?? 0) - 1]?.name ?? "—");
  put("rank", place === 0 ? "—" : pages.catalogue.rankOf(place, columns.of[entry] ?? 0));
  put("status", standingInWords({ status, assembled: columns.assembled[entry] === 1 }, words));
  put("tick", pages.finder.tick(title));
  const tick = row.querySelector<HTMLInputElement>(".tick-box");
  if (tick) tick.value = id;
  return row;
}
