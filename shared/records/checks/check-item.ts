import { isMistyped, suggestion } from "../../diagnostics/nearest-name.ts";
import { isLeftOut, type Path } from "../../source/document.ts";
import { unitsOfLine } from "../../terms/units-of-line.ts";
import type { Collection } from "../collection.ts";
import type { Item } from "../item.ts";
import type { Report } from "../report.ts";
import { bestCredit, type Part } from "../variant.ts";
import { checkNotBefore, checkSerial } from "./check-against-variant.ts";
import { checkHazard, checkSource } from "./check-named.ts";

const known = new WeakMap<ReadonlySet<string>, ReadonlySet<string>>();

/** Whether a file is there, its name written with letters and accents as one (NFC) or apart (NFD). */
function isThere(files: ReadonlySet<string>, file: string): boolean {
  if (files.has(file)) return true;
  const normal = known.get(files) ?? new Set([...files].map((each) => each.normalize("NFC")));
  known.set(files, normal);
  return normal.has(file.normalize("NFC"));
}

const shortest = 5;

/**
 * The model that was meant, where the reference accepts it: each of its words is mistyped at most. A different word,
 * as for a different material, makes another model, and so does a different number; and short words soon become
 * others.
 */
function misspelt(model: string, { accepts }: Part): string | undefined {
  if (accepts.has(model)) return undefined;
  const words = model.split("-");
  const isMeant = (word: string, other: string) =>
    word === other || (other.length >= shortest && !/\d/.test(word + other) && isMistyped(word, other));
  return [...accepts.keys()].find((accepted) => {
    const others = accepted.split("-");
    if (others.length !== words.length) return others.join("") === words.join("");
    return words.every((word, at) => isMeant(word, others[at] ?? ""));
  });
}

/** An item against its variant, and what lies beside it. */
export function checkItem(collection: Collection, files: ReadonlySet<string>, report: Report, item: Item) {
  const { document } = item;
  for (const [at, event] of item.provenance.entries()) {
    checkSource(collection, report, document, ["provenance", at, "source"], event.source);
  }
  for (const [at, extra] of item.extras.entries()) {
    for (const [index, hazard] of extra.hazards.entries()) {
      checkHazard(collection, report, document, ["extras", at, "hazards", index], hazard);
    }
  }
  const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
  const beside = (path: Path, file: string | undefined) => {
    if (file === undefined || isThere(files, `${folder}${file.replace(/^\.\//, "")}`)) return;
    const leaves = file.startsWith("/") || file.split(/[\\/]/).includes("..");
    report(leaves ? "outside-root" : "missing-file", document, path, {
      found: `"${file}"`,
      expected: leaves ? "a file beside the item" : "a file of this name beside the item",
      remedy:
        suggestion(
          file,
          [...files].filter((each) => each.startsWith(folder)).map((each) => each.slice(folder.length)),
        ) ?? (leaves ? undefined : `Put it into ${folder} first.`),
    });
  };
  for (const [at, photo] of item.photos.entries()) beside(["photos", at, "file"], photo.file);
  beside(["video", "src"], item.video?.src);
  beside(["video", "captions"], item.video?.captions);

  const variant = collection.variants.get(item.variant);
  if (!variant) return;
  for (const [at, { date }] of item.provenance.entries())
    checkNotBefore(report, document, variant, date, ["provenance", at, "date"]);
  checkNotBefore(report, document, variant, item.examined, ["examined"]);
  checkSerial(report, document, variant, item.serial);
  for (const [at, id] of item.assembled.entries()) {
    if (!item.parts.get(id)?.every(({ state }) => state === "absent")) continue;
    if (isLeftOut(document, "parts", id)) continue;
    report("wrong-value", document, ["assembled", at], {
      found: `"${id}" both absent and from another case`,
      expected: "a part that is there",
    });
  }
  for (const [id, lines] of item.parts) {
    const part = variant.parts.get(id);
    if (!part) continue;
    const place = (at: number): Path => ["parts", id, ...(lines.length > 1 ? [at] : [])];
    const isKnown = (field: "accepts" | "quantity" | "serials") => !isLeftOut(variant, "parts", id, field);
    for (const [at, { state, serial }] of lines.entries()) {
      if (!isKnown("serials") || (state !== "present" && state !== "unverified")) continue;
      checkSerial(report, document, part, serial, [...place(at), "serial"]);
    }
    for (const [at, { state, rest, model }] of lines.entries()) {
      if (!isKnown("accepts")) break;
      if (model === undefined && (state === "substitute" || rest === "substitute") && bestCredit(part) > 0) {
        report("unaccepted-model", document, place(at), {
          found: "a substitute without a model, so that none of it is certain to count",
          expected: `its "model"; the reference accepts ${[...part.accepts.keys()].map((each) => `"${each}"`).join(", ")}`,
        });
      }
      const meant = state === "substitute" && model !== undefined ? misspelt(model, part) : undefined;
      if (meant === undefined) continue;
      report("unaccepted-model", document, [...place(at), "model"], {
        found: `"${model}", which counts for nothing`,
        expected: "a model that the reference accepts, or one with a clearly different name",
        remedy: `Did you mean "${meant}"?`,
      });
    }
    const units = lines.reduce((sum, line) => sum + unitsOfLine(line, lines, part), 0);
    // A unit said to be spare is meant to be more than the case needs.
    if (units > part.quantity && isKnown("quantity") && !lines.some(({ belongs }) => belongs === "spare")) {
      report(
        "too-many-units",
        document,
        ["parts", id],
        { found: `${units} units`, expected: `at most ${part.quantity}` },
        "key",
      );
    }
  }
}
