import { assessProvenance, type Provenance } from "../assessments/provenance.ts";
import type { CustodyEvent, Item } from "../records/item.ts";
import type { Variant } from "../records/variant.ts";
import type { Words } from "../words/words.ts";
import type { Redact } from "./masking.ts";
import type { Audience, PublishedEvent, PublishedItem } from "./published.ts";
import { showing } from "./showing.ts";

function publishEvent(event: CustodyEvent, audience: Audience, redact: Redact): PublishedEvent {
  const show = showing(event, audience, redact);
  return {
    date: show.kept("date") ? "" : event.date.text,
    event: show.text("event", event.event) ?? "",
    from: show.text("from", event.from),
    to: show.text("to", event.to),
    holder: show.text("holder", event.holder),
    place: show.text("place", event.place),
    evidence: show.text("evidence", event.evidence),
    source: show.kept("source") ? null : (event.source ?? null),
    // What an owner paid is never published, marked or not.
    price: audience === "private" ? (event.price ?? null) : null,
    note: show.text("note", event.note),
  };
}

/** Custody as it may be shown: where a date is kept, the gaps beside it would tell it. */
function shownCustody(
  { provenance, examined }: Item,
  assessed: Provenance,
  issued: Variant["issued"],
  audience: Audience,
): Provenance {
  const shown = provenance.filter((event) => audience === "private" || !event.private.includes("date"));
  if (shown.length === provenance.length) return assessed;
  return { ...assessProvenance(issued, shown, examined), gaps: [] };
}

export function publishCustody(
  item: Item,
  assessed: Provenance,
  {
    variant,
    audience,
    words,
  }: { readonly variant: Variant; readonly audience: Audience; readonly words: Words },
  redact: Redact,
): PublishedItem["provenance"] {
  const custody = shownCustody(item, assessed, variant.issued, audience);
  return {
    events: item.provenance.map((event) => publishEvent(event, audience, redact)),
    documentedYears: custody.documentedYears,
    lifetimeYears: custody.lifetimeYears,
    gaps: custody.gaps,
    caveats: custody.caveats.map(words.statement),
  };
}
