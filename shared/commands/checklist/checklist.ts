import { writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { suggestion } from "../../diagnostics/nearest-name.ts";
import { stateOf } from "../../pages/views/item-parts.ts";
import type { Item, PartLine } from "../../records/item.ts";
import { benchWordsFor, wordsFor } from "../../words/languages.ts";
import { knownCollection } from "../collection/known-collection.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, UsageError } from "../command.ts";
import { cautionsOf } from "../words/cautions.ts";
import { lineRemarks } from "../words/line-remarks.ts";
import { refuseOutput, requireFolder } from "../writing/place-of-output.ts";
import { type ChecklistItem, checklistHtml } from "./checklist-html.ts";
import { familySheet } from "./family-sheet.ts";
import { browserNames, installedBrowser } from "./installed-browser.ts";
import { printPdf } from "./print-pdf.ts";
import type { SheetWords } from "./sheet-page.ts";

/** All that is recorded of a part: who ticks anew must not take what stands there for what does not. */
function lineWords(line: PartLine, lines: readonly PartLine[], { say, words }: SheetWords): string {
  // Where it is one of several lines, it speaks for one unit unless it says for how many.
  const units = line.quantity ?? (lines.length > 1 ? 1 : undefined);
  return [
    units === undefined ? stateOf(line.state, 1, words) : `${units} ${stateOf(line.state, units, words)}`,
    ...(line.rest === undefined ? [] : [say.sheet.rest(stateOf(line.rest, 2, words))]),
    ...lineRemarks(line, say).map((remark) => remark.replace(/\.$/, "")),
  ].join(", ");
}

const asChecklistItem = ({ title, serial, set, parts }: Item, words: SheetWords): ChecklistItem => ({
  title,
  serial,
  set,
  onRecord: (part) =>
    (parts.get(part) ?? []).map((line, _, lines) => lineWords(line, lines, words)).join("; "),
});

function browserForPrinting(): string {
  const browser = installedBrowser(process.env);
  if (browser !== undefined) return browser;
  const named = process.env.CHROME_PATH;
  throw new UsageError(
    named
      ? `Found no browser at "${named}", which CHROME_PATH names; expected one that can be run.`
      : `Found no browser that can print a PDF; expected one of ${browserNames.join(", ")} on PATH, or its file in ` +
          "CHROME_PATH. Without --pdf you get a page that any browser can print, on paper or as a PDF.",
  );
}

export const checklist: Command = {
  usage: "fittedcase checklist ITEM|VARIANT|FAMILY [--pdf] [--out FILE] [--root DIR]",
  help: [
    "Writes a sheet to print and tick at the bench: cautions first, the features to look at, then every part in the",
    "order of unpacking, with a box for each unit, what to look for, and room for marks, serial and condition. For an",
    "item it also says what is on record; for a variant it is blank. One HTML file, black on white, for A4: open it in",
    "a browser and print it. A sheet for an item shows serials in full. To tick on a phone instead, see: fittedcase serve",
    "For a family it is a sheet to tell the variants apart: every feature with its values, which variants each value",
    "means, where to look, and the serials of each variant.",
    "",
    "  --pdf       a PDF instead, printed by a browser on this machine: the one that CHROME_PATH names, or else Chromium,",
    "              Chrome or Edge, if installed",
    "  --out FILE  where the sheet goes (default: checklist-ID.html, or .pdf, in the current folder)",
    "  --root DIR  the collection's folder (default: the current one)",
    "",
    "Example: fittedcase checklist first-pattern",
    "Exit codes: 0 done; 1 the collection cannot be read; 2 there is no such id, or the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        root: { type: "string" },
        out: { type: "string" },
        pdf: { type: "boolean", default: false },
      },
    });
    const [id, ...more] = positionals;
    if (id === undefined || more.length > 0)
      throw new UsageError(`Found ${positionals.length} ids; expected one.`);
    const root = rootFolder(cwd, values.root);
    const known = knownCollection(root, err);
    if (!known) return 1;
    const { items, variants, families } = known.collection;
    const item = items.get(id);
    const variant = variants.get(item?.variant ?? id);
    const family = families.get(variant?.family ?? id);
    const { language } = known.collection.settings;
    const words: SheetWords = { say: benchWordsFor(language), words: wordsFor(language) };
    const cautions = cautionsOf(known.collection);
    const members = [...variants.values()].filter((each) => each.family === id);
    const sheet = variant
      ? checklistHtml(variant, family, cautions, words, item && asChecklistItem(item, words))
      : family && familySheet(family, members, cautions, words);
    if (sheet === undefined) {
      const hint = suggestion(id, [...items.values(), ...variants.values(), ...families.values()]) ?? "";
      throw new UsageError(
        `Found "${id}"; expected the id of an item, a variant or a family. ${hint}`.trimEnd(),
      );
    }
    const shown = values.out ?? `checklist-${id}.${values.pdf ? "pdf" : "html"}`;
    const target = path.resolve(cwd, shown);
    requireFolder(target, shown);
    refuseOutput(root, target, shown);
    if (values.pdf) {
      await printPdf(browserForPrinting(), sheet, target);
      out(`Wrote ${shown}.`);
      return 0;
    }
    writeFileSync(target, sheet);
    out(`Wrote ${shown}. Open it in a browser and print it.`);
    return 0;
  },
};
