import { isLeftOut } from "../../source/document.ts";
import { within } from "../../source/read-records.ts";
import type { Collection } from "../collection.ts";
import { type Hazard, hazardFrom, type Scale, scaleFrom } from "../register.ts";
import { type Source, sourceFrom, unsoundSource } from "../source.ts";
import { entriesOf, hasEntries } from "./entries-of.ts";
import type { Intake } from "./intake.ts";

type Hazards = Pick<Collection, "hazards" | "isMissingHazards">;
type Sources = Pick<Collection, "sources" | "isMissingSources">;

export function hazardsOf({ recordsOf, unreadOf, validator, report, fitting, unsound }: Intake): Hazards {
  let isMissingHazards = unreadOf("hazards").length > 0;
  const hazards = new Map<string, Hazard>();
  for (const record of recordsOf("hazards")) {
    for (const [id, data] of entriesOf(record, report)) {
      const document = fitting(within(record.document, id, data), validator.of("hazard"));
      const hazard = hazardFrom(String(id), document);
      hazards.set(String(id), hazard);
      if (document.leftOut) unsound.add(hazard);
    }
    isMissingHazards ||= !hasEntries(record);
  }
  return { hazards, isMissingHazards };
}

export function scalesOf({ recordsOf, validator, fitting, unsound }: Intake): ReadonlyMap<string, Scale> {
  const scales = new Map<string, Scale>();
  for (const { id, document: written } of recordsOf("scale")) {
    const document = fitting(written, validator.of("scale"));
    const scale = scaleFrom(id, document);
    scales.set(id, scale);
    if (document.leftOut) unsound.add(scale);
  }
  return scales;
}

export function bibliographyFrom({ recordsOf, unreadOf, validator, report, fitting }: Intake): Sources {
  let isMissingSources = unreadOf("sources").length > 0;
  const sources = new Map<string, Source>();
  for (const record of recordsOf("sources")) {
    for (const [key, data] of entriesOf(record, report)) {
      const withId =
        typeof key === "string" && typeof data === "object" && data !== null ? { id: key, ...data } : data;
      const document = fitting(within(record.document, key, withId), validator.of("source"));
      if (document.leftOut) {
        const { id } = Object(withId) as { id?: unknown };
        if (typeof id === "string" && !sources.has(id)) sources.set(id, unsoundSource(id));
        isMissingSources ||= isLeftOut(document, "id");
        continue;
      }
      const source = sourceFrom(document);
      if (sources.has(source.id)) {
        report("duplicate-id", document, ["id"], {
          found: `"${source.id}" a second time`,
          expected: "each source once",
        });
      } else sources.set(source.id, source);
    }
    isMissingSources ||= !hasEntries(record);
  }
  return { sources, isMissingSources };
}
