import { reportAsText } from "../../../diagnostics/report.ts";
import { groupsInOrder } from "../../groups-in-order.ts";
import { type BenchReference, benchRecord, problemsOf, recordVersion, writeRecord } from "./bench-record.ts";
import { editedRecord } from "./edited-record.ts";
import type { Change } from "./edited-yaml.ts";
import { savedWords } from "./saved-words.ts";
import { askedPart, fieldChanges, partChanges, shownValue } from "./submitted-changes.ts";

export interface Saved {
  /** As HTTP has it: 200, 404 no such item, 409 first read what is said, 422 it would not be sound. */
  readonly status: 200 | 404 | 409 | 422;
  readonly said: string;
  /** Of the file as it stands now, where the page may go on from it. */
  readonly version: string;
  /** What would no longer be on record; a form that sends it back as `confirmed` means it. */
  readonly asks?: string;
  /** True where the page still shows what is on record no longer. */
  readonly isStale?: boolean;
}

/** The item's own fields that the page asks for, in the order in which they stand in a file. */
export const itemFields = ["serial", "set", "examined"] as const;
const fieldOrder = ["title", "variant", ...itemFields];

/** Puts what one form of the bench page says into the item's file: only there, and only if the file is still the same. */
export function saveForm(root: string, reference: BenchReference, id: string, form: URLSearchParams): Saved {
  const record = benchRecord(root, reference, id);
  if (!record) return { status: 404, said: "There is no such item.", version: "" };
  const { text, data, version, problems, file } = record;
  const refuse = (status: 409 | 422, said: string): Saved => ({ status, said, version });
  if (form.get("version") !== version)
    return refuse(
      409,
      "Not saved: the file was changed elsewhere meanwhile. Load the page again to see what it says now.",
    );
  if (problems.length > 0)
    return refuse(422, `Not saved: the file has errors.\n\n${reportAsText(problems, 1)}`);
  const variant = reference.collection?.variants.get(shownValue(data.variant));
  if (!variant) return refuse(422, "Not saved: the item's variant has no reference.");
  const family = reference.collection?.families.get(variant.family);
  const order = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? [])
    .flat()
    .map((part) => part.id);
  const within = (name: string, key: string): unknown => {
    const map = data[name];
    return typeof map === "object" && map !== null && Object.hasOwn(map, key)
      ? (map as Readonly<Record<string, unknown>>)[key]
      : undefined;
  };

  const [part, feature] = [
    variant.parts.get(form.get("part") ?? ""),
    family?.features.get(form.get("feature") ?? ""),
  ];
  let ways: readonly (readonly Change[])[];
  let done: () => Pick<Saved, "said" | "isStale"> = () => ({ said: "Saved." });
  if (part) {
    const raw = within("parts", part.id);
    const asked = askedPart(part, raw, form);
    const asks = asked.lost.join("; ");
    if (asks !== "" && form.get("confirmed") !== asks)
      return {
        ...refuse(409, `Not saved yet: this would no longer be on record: ${asks.replace(/\.$/, "")}.`),
        asks,
      };
    ways = partChanges(part, raw, asked, order);
    const isFewer = asked.before.length > 1 && asked.after.length < asked.before.length;
    done = () => ({
      said: savedWords(part, asked),
      ...(asks !== "" || isFewer ? { isStale: true } : {}),
    });
  } else if (feature)
    ways = fieldChanges(["features", feature.id], within("features", feature.id), form.get("value"), [
      ...(family?.features.keys() ?? []),
    ]);
  else if (form.get("part") === null && form.get("feature") === null) {
    const all = itemFields.flatMap((name) => fieldChanges([name], data[name], form.get(name), fieldOrder));
    ways = all.length === 0 ? [] : [all.flat()];
  } else return refuse(422, "Not saved: the reference does not list that part or feature.");

  if (ways.length === 0) return { status: 200, said: "Nothing to save.", version };
  for (const changes of ways) {
    const edited = editedRecord(text, changes);
    if (edited === null) continue;
    const wrong = problemsOf(reference, file, edited);
    if (wrong.length > 0) return refuse(422, `Not saved. ${wrong.map(({ message }) => message).join(" ")}`);
    if (!writeRecord(root, record, edited))
      return refuse(409, "Not saved: the file was changed elsewhere meanwhile.");
    return { status: 200, ...done(), version: recordVersion(edited) };
  }
  return refuse(
    422,
    `Not saved: this is written in a form that can only be changed in the file itself, ${file.file}.`,
  );
}
