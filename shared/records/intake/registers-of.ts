import { within } from "../../source/read-records.ts";
import { type Hazard, hazardFrom, type Scale, scaleFrom } from "../register.ts";
import { type Source, sourceFrom, unsoundSource } from "../source.ts";
import { entriesOf } from "./entries-of.ts";
import type { Intake } from "./intake.ts";

export function hazardsOf({ recordsOf, validator, report, isSound }: Intake): ReadonlyMap<string, Hazard> {
  const hazards = new Map<string, Hazard>();
  for (const record of recordsOf("hazards")) {
    for (const [id, data] of entriesOf(record, report)) {
      const document = within(record.document, id, data);
      if (isSound(document, validator.of("hazard")))
        hazards.set(String(id), hazardFrom(String(id), document));
    }
  }
  return hazards;
}

export const scalesOf = ({ recordsOf, validator, isSound }: Intake): ReadonlyMap<string, Scale> =>
  new Map(
    recordsOf("scale")
      .filter(({ document }) => isSound(document, validator.of("scale")))
      .map(({ id, document }) => [id, scaleFrom(id, document)]),
  );

export function bibliographyFrom({
  recordsOf,
  validator,
  report,
  isSound,
}: Intake): ReadonlyMap<string, Source> {
  const sources = new Map<string, Source>();
  for (const record of recordsOf("sources")) {
    for (const [key, data] of entriesOf(record, report)) {
      const withId =
        typeof key === "string" && typeof data === "object" && data !== null ? { id: key, ...data } : data;
      const document = within(record.document, key, withId);
      if (!isSound(document, validator.of("source"))) {
        const { id } = Object(withId) as { id?: unknown };
        if (typeof id === "string" && !sources.has(id)) sources.set(id, unsoundSource(id));
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
  }
  return sources;
}
