import { noCompleteness, unitsInWords } from "../../pages/views/completeness-words.ts";
import { shareBounds } from "../../words/share-bounds.ts";
import type { Explained } from "./explained.ts";
import { labelled, type Setting } from "./figure-lines.ts";

/** What of the outfit is there, for certain and at most. */
export function completenessLines({ item }: Explained, setting: Setting): string[] {
  const { completeness: found, parts, levels } = item;
  const { words } = setting;
  const partOf = new Map(parts.map((part) => [part.id, part]));
  const nameOf = (id: string) => partOf.get(id)?.name ?? id;
  const share = (bounds: { readonly low: number; readonly high: number }) => {
    const { certain, possible } = shareBounds(bounds, words.numbers);
    return possible === null
      ? `${certain}, with nothing uncertain`
      : `${certain} for certain, ${possible} at most`;
  };
  const level = (id: string | null) => levels.find((each) => each.id === id)?.name ?? "none";
  const short = (id: string) => {
    const part = partOf.get(id);
    return part ? `${part.name} (${part.units.absent} of ${part.units.expected} gone)` : id;
  };
  const list = (label: string, ids: readonly string[], name = nameOf) =>
    ids.length === 0 ? [] : labelled(label, ids.map(name).join("; "), setting);
  const { weighted, counted, consumable, optional } = found;
  const apart = (label: string, standing: typeof consumable) =>
    standing
      ? labelled(label, `${share(standing.weighted)}; ${unitsInWords(standing.counted, words)}`, setting)
      : [];
  return [
    ...(weighted
      ? labelled("by weight", `${share(weighted)}, of principal and issued parts`, setting)
      : labelled("by weight", noCompleteness(item, words), setting)),
    ...(counted ? labelled("in units", unitsInWords(counted, words), setting) : []),
    ...apart("consumables", consumable),
    ...apart("optional parts", optional),
    ...(levels.length > 0
      ? labelled(
          "level",
          found.level.sure === found.level.possible
            ? level(found.level.sure)
            : `${level(found.level.sure)} for certain, ${level(found.level.possible)} at best`,
          setting,
        )
      : []),
    ...list("missing", found.missing),
    ...list("partly gone", found.partial, short),
    ...list("substitutes", found.substitutes),
    ...list("unverified", found.unverified),
    ...list("not examined", found.unexamined),
    ...list("surplus", found.surplus),
    ...list("from elsewhere", item.assembled),
    ...(found.extras.length > 0
      ? labelled(
          "not listed",
          found.extras
            .map(
              ({ name, quantity, note }) =>
                `${quantity > 1 ? `${quantity} × ` : ""}${name}${note ? ` (${note})` : ""}`,
            )
            .join("; "),
          setting,
        )
      : []),
    ...labelled(
      "method",
      "Sums over the parts, each by its weight. What is unknown is neither counted nor struck out: the two ends are the worst and the best case (Manski 1989, Journal of Human Resources 24: 343–360).",
      setting,
    ),
  ];
}
