import { reportAsText } from "../../../diagnostics/report.ts";
import { markdownRecord } from "../../../source/record-file.ts";
import { groupsInOrder } from "../../words/groups-in-order.ts";
import { benchFrame } from "./bench-html.ts";
import {
  type BenchRecord,
  type BenchReference,
  benchRecord,
  problemsOf,
  valueVersion,
  writeRecord,
} from "./bench-record.ts";
import { editedRecord } from "./edited-record.ts";
import type { Change } from "./edited-yaml.ts";
import { savedWords } from "./saved-words.ts";
import {
  askedPart,
  fieldChanges,
  itemFields,
  itemValue,
  partChanges,
  shownValue,
} from "./submitted-changes.ts";

export interface Saved {
  /** As HTTP has it: 200, 404 no such item, 409 first read what is said, 422 it would not be sound, 503 try again. */
  readonly status: 200 | 404 | 409 | 422 | 503;
  readonly said: string;
  /** Of what the file says of it now, where the form may go on from that. */
  readonly version: string;
  /** What would no longer be on record; a form that sends it back as `confirmed` means it. */
  readonly asks?: string;
  /** True where the page still shows what is on record no longer. */
  readonly isStale?: boolean;
}

const fieldOrder = ["title", "variant", ...itemFields];

/**
 * Puts what one form of the bench page says into the item's file: only there, and only if what the file says of that is
 * still what the page showed. Several people may be at one case, each at a part of it.
 */
export function saveForm(root: string, reference: BenchReference, id: string, form: URLSearchParams): Saved {
  const { say } = benchFrame(reference);
  const record = benchRecord(root, reference, id);
  if (!record) return { status: 404, said: say.refused.noItem, version: "" };
  const { text, data, problems, file } = record;
  const refuse = (status: 409 | 422 | 503, said: string): Saved => ({ status, said, version: "" });
  if (problems.length > 0) return refuse(503, `${say.refused.errors}\n\n${reportAsText(problems, 1)}`);
  const variant = reference.collection?.variants.get(shownValue(data.variant));
  if (!variant) return refuse(422, say.refused.noReference);
  const family = reference.collection?.families.get(variant.family);
  const order = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? [])
    .flat()
    .map((part) => part.id);
  const within = (map: unknown, key: string): unknown => {
    return typeof map === "object" && map !== null && Object.hasOwn(map, key)
      ? (map as Readonly<Record<string, unknown>>)[key]
      : undefined;
  };

  const [part, feature] = [
    variant.parts.get(form.get("part") ?? ""),
    family?.features.get(form.get("feature") ?? ""),
  ];
  const saidIn = (of: BenchRecord["data"]): unknown =>
    part ? within(of.parts, part.id) : feature ? within(of.features, feature.id) : itemValue(of);
  const raw = saidIn(data);
  let ways: readonly (readonly Change[])[];
  let asks = "";
  let done: () => Pick<Saved, "said" | "isStale"> = () => ({ said: say.saved.saved });
  if (part) {
    const asked = askedPart(part, raw, form, say);
    asks = asked.lost.join("; ");
    ways = partChanges(part, raw, asked, order);
    const isFewer = asked.before.length > 1 && asked.after.length < asked.before.length;
    done = () => ({
      said: savedWords(part, asked, say),
      ...(asked.isLess || isFewer ? { isStale: true } : {}),
    });
  } else if (feature)
    ways = fieldChanges(["features", feature.id], raw, form.get("value"), [
      ...(family?.features.keys() ?? []),
    ]);
  else if (form.get("part") === null && form.get("feature") === null) {
    const all = itemFields.flatMap((name) => fieldChanges([name], data[name], form.get(name), fieldOrder));
    ways = all.length === 0 ? [] : [all.flat()];
  } else return refuse(422, say.refused.unknown);

  // Where somebody else wrote the same, or a first answer was lost on the way, nothing stands against it.
  if (ways.length === 0) return { status: 200, said: say.saved.nothing, version: valueVersion(raw) };
  if (form.get("version") !== valueVersion(raw)) return refuse(409, say.refused.elsewhere);
  if (asks !== "" && form.get("confirmed") !== asks)
    return {
      ...refuse(409, say.refused.lost(asks.replace(/\.$/, ""))),
      asks,
    };
  for (const changes of ways) {
    const edited = editedRecord(text, changes);
    if (edited === null) continue;
    const wrong = problemsOf(reference, file, edited);
    if (wrong.length > 0)
      return refuse(422, say.refused.unsound(wrong.map(({ message }) => message).join(" ")));
    if (!writeRecord(root, record, edited)) return refuse(503, say.refused.justNow);
    const { document } = markdownRecord(file.file, edited);
    return {
      status: 200,
      ...done(),
      version: valueVersion(saidIn((document?.data ?? {}) as BenchRecord["data"])),
    };
  }
  return refuse(422, say.refused.byHand(file.file));
}
