import type { Part } from "../../../records/variant.ts";
import type { BenchWords } from "../../../words/en/bench.ts";

type Line = Readonly<Record<string, unknown>>;

/**
 * What a line can no longer say once its state is another one, with the reason, or none where nothing of the line is
 * left. The rest stays under whatever state: the schema lets it, and a tap that slips must not cost what was read.
 */
export function lostFields(
  line: Line,
  asked: string,
  part: Part,
  { saved: say }: BenchWords,
): ReadonlyMap<string, string> {
  if (asked === "")
    return new Map(
      Object.keys(line)
        .filter((field) => field !== "state")
        .map((field) => [field, ""]),
    );
  const lost = new Map<string, string>();
  if (asked === line.state) return lost;
  if (line.state === "substitute" && line.model !== undefined) lost.set("model", say.onlySubstitute);
  const isGone = asked === "absent" || asked === "not-issued";
  if (isGone && Number(line.quantity ?? 0) > part.quantity)
    lost.set("quantity", say.onlyIssued(part.quantity));
  return lost;
}
