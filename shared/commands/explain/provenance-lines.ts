import { gapLength, isWorthTelling } from "../../words/gap-length.ts";
import type { Explained } from "./explained.ts";
import { labelled, type Setting } from "./figure-lines.ts";

/** Through whose hands it went, and where nobody knows. */
export function provenanceLines({ item }: Explained, setting: Setting): string[] {
  const { events, documentedYears, lifetimeYears, gaps, caveats } = item.provenance;
  const { words } = setting;
  const eventText = (event: (typeof events)[number]) =>
    [
      event.event,
      event.holder && `held by ${event.holder}`,
      event.from && `from ${event.from}`,
      event.to && `to ${event.to}`,
      event.place,
      event.price && words.numbers.money(event.price.amount, event.price.currency),
      event.evidence ? `by ${event.evidence}` : event.source === null && "no evidence given",
      event.source && `[${event.source}]`,
      event.note,
    ]
      .filter(Boolean)
      .join("; ");
  return [
    ...events.flatMap((event) => [
      `  ${words.date(event.date)}`,
      ...labelled("", eventText(event), setting, 0),
    ]),
    ...labelled(
      "documented",
      lifetimeYears === null
        ? `${documentedYears} calendar years`
        : `${documentedYears} of ${lifetimeYears} calendar years since issue`,
      setting,
    ),
    ...gaps.filter(isWorthTelling).flatMap((gap, at) => {
      const length = words.plots.custody.gap(gapLength(gap, words.numbers));
      return labelled(at === 0 ? "gaps" : "", `${gap.from} to ${gap.to}: ${length}`, setting);
    }),
    ...caveats.flatMap((caveat) => labelled("bear in mind", caveat, setting)),
  ];
}
