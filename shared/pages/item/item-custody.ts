import type { PublishedEvent, PublishedItem } from "../../publication/published.ts";
import { gapLength, isWorthTelling } from "../../words/gap-length.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { drawing } from "../views/drawings.ts";

export interface CustodyView {
  readonly events: readonly {
    readonly date: string;
    readonly event: string;
    readonly people: string;
    readonly evidence: string | null;
    readonly source: Link | null;
    readonly price: string | null;
    readonly note: string | null;
  }[];
  readonly documented: string;
  readonly gaps: readonly string[];
  readonly caveats: readonly string[];
  /** SVG; null where nothing is dated. */
  readonly plot: string | null;
}

function peopleOf(event: PublishedEvent, { words }: CollectionIndex): string {
  const say = words.pages.item;
  return [
    event.holder,
    event.from === null ? null : say.from(event.from),
    event.to === null ? null : say.to(event.to),
    event.place === null ? null : say.at(event.place),
  ]
    .filter((text) => text !== null)
    .join(", ");
}

export function custodyView(item: PublishedItem, index: CollectionIndex): CustodyView {
  const { words } = index;
  const { item: say } = words.pages;
  const { numbers } = words;
  const { events, documentedYears, lifetimeYears, gaps, caveats } = item.provenance;
  return {
    events: events.map((event) => ({
      date: event.date === "" ? say.undated : words.date(event.date),
      event: event.event,
      people: peopleOf(event, index),
      evidence: event.evidence,
      source: event.source === null ? null : sourceLink(event.source, index),
      price: event.price && numbers.money(event.price.amount, event.price.currency),
      note: event.note,
    })),
    documented: say.documented(documentedYears, lifetimeYears),
    gaps: gaps
      .filter(isWorthTelling)
      .map((gap) => say.gap(String(gap.from), String(gap.to), gapLength(gap, numbers))),
    caveats,
    plot: drawing({ kind: "item", item, plot: "custody" }, index, { idPrefix: "custody" }),
  };
}
