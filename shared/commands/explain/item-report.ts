import { datedInWords, datedUnits } from "../../pages/views/dated-units.ts";
import { wrappedLines } from "../terminal/wrapped-lines.ts";
import { completenessLines } from "./completeness-lines.ts";
import type { Explained } from "./explained.ts";
import { labelled, methodLines, type Setting, sourceLines } from "./figure-lines.ts";
import { identificationLines } from "./identification-lines.ts";
import { partLines } from "./part-lines.ts";
import { provenanceLines } from "./provenance-lines.ts";
import { figuresOf, ownRarityLines, variantRarityLines } from "./rarity-lines.ts";

type Sections = readonly (readonly [title: string, lines: readonly string[]])[];

/** The whole assessment of one item, for reading in a terminal; a sentence where there is nothing to assess. */
export function itemReport(explained: Explained, setting: Setting): string {
  const heading = (text: string) => ["", setting.paint("bold", text.toUpperCase())];
  const printed = (sections: Sections) =>
    sections.flatMap(([title, lines]) => (lines.length === 0 ? [] : [...heading(title), ...lines]));
  return [
    ...head(explained, setting),
    ...printed([["Take care", hazards(explained, setting)]]),
    ...(isUntold(explained) ? ["", ...untold(explained, setting)] : printed(assessed(explained, setting))),
    ...printed([["Kept private", confidential(explained, setting)]]),
    "",
    setting.paint(
      "dim",
      "This is the owner's view: it shows serials, owners and prices that the public site may withhold.",
    ),
  ].join("\n");
}

/** Whether nothing is recorded by which it could be assessed. */
const isUntold = ({ item }: Explained): boolean =>
  item.serial === null &&
  item.features.every(({ value }) => value === null) &&
  item.parts.every(({ lines }) => lines.length === 0) &&
  item.completeness.extras.length + item.labels.length + item.provenance.events.length === 0;

const untold = ({ item }: Explained, { width }: Setting): string[] =>
  wrappedLines(
    `Nothing is recorded of it yet: no feature was looked at, no serial read, no part examined, and nothing is known of its custody. "fittedcase checklist ${item.id}" makes a sheet to go through it with.`,
    width,
  );

function assessed(explained: Explained, setting: Setting): Sections {
  const { item } = explained;
  const figures = figuresOf(explained);
  const cited = item.provenance.events.flatMap(({ source }) => source ?? []);
  return [
    ["Identification", identificationLines(explained, setting)],
    ["Completeness", completenessLines(explained, setting)],
    ["Part by part", partLines(explained.groups, setting)],
    ["Dating", dating(explained, setting)],
    ["Rarity of one as complete as this", ownRarityLines(explained, setting)],
    [`Rarity of ${item.variant.name}`, variantRarityLines(explained, setting)],
    ["Provenance", provenanceLines(explained, setting)],
    ["Methods", methodLines(figures, setting)],
    ["Sources", sourceLines([...figures, ...item.parts.map(({ rate }) => rate)], cited, setting)],
  ];
}

function head({ item }: Explained, { paint, words }: Setting): string[] {
  const facts = [
    item.serial && `serial ${item.serial}`,
    item.set && `set ${item.set}`,
    item.examined && `examined ${words.date(item.examined)}`,
    item.assembled.length > 0 ? `${item.status}, ${words.pages.assembled}` : item.status,
  ].filter(Boolean);
  return [
    paint("bold", item.title),
    `${item.variant.name} (${item.variant.id}), of ${item.family.name}`,
    facts.join("; "),
  ];
}

function hazards({ item }: Explained, setting: Setting): string[] {
  const nameOf = (id: string) => item.parts.find((part) => part.id === id)?.name ?? id;
  return item.hazards.flatMap(({ name, parts, extras, caution, source }) => [
    `  ${setting.paint("red", `${name}: ${[...parts.map(nameOf), ...extras].join(", ")}`)}`,
    ...labelled("caution", caution, setting, 4),
    ...labelled("source", source, setting, 4),
  ]);
}

const datingWords = {
  fits: "fits the issue",
  earlier: "earlier than the issue, as stock often is",
  later: "LATER than the issue: a strong doubt that it was issued with it",
  undated: "in no dated range",
  outside: "its serial is in NONE of the ranges known for the part",
} as const;

function dating({ item }: Explained, setting: Setting): string[] {
  const { issued, serial, caveats } = item.dating;
  const { words } = setting;
  return [
    ...labelled("issued", issued ? words.date(issued) : "not known", setting),
    ...labelled("by its serial", serial.made ? words.date(serial.made) : "not known", setting),
    ...item.parts.flatMap((part) =>
      datedUnits(part, words).flatMap((units) => {
        const told = [datedInWords(units, words), datingWords[units.verdict]].filter((each) => each !== null);
        return labelled("a part", `${part.name}: ${told.join(", ")}`, setting);
      }),
    ),
    ...caveats.flatMap((caveat) => labelled("bear in mind", caveat, setting)),
  ];
}

function confidential({ item }: Explained, setting: Setting): string[] {
  const kept = item.confidential;
  if (!kept) return [];
  const { money } = setting.words.numbers;
  const { distinguishing } = kept;
  return [
    ...(distinguishing.length > 0 ? labelled("tells it apart", distinguishing.join("; "), setting) : []),
    ...(kept.storage ? labelled("storage", kept.storage, setting) : []),
    ...(kept.paid ? labelled("paid", money(kept.paid.amount, kept.paid.currency), setting) : []),
    ...Object.entries(kept.fields).flatMap(([name, value]) =>
      labelled(name, typeof value === "string" ? value : JSON.stringify(value), setting),
    ),
  ];
}
