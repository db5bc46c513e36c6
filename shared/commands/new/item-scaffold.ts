import type { Family } from "../../records/family.ts";
import type { Variant } from "../../records/variant.ts";
import { type Caution, cautionsAmong } from "../words/cautions.ts";
import { groupName, groupsInOrder } from "../words/groups-in-order.ts";
import { yamlLine } from "../writing/yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";
import { partScaffold } from "./part-scaffold.ts";
import { rangeWords } from "./range-words.ts";

export interface NewItem {
  readonly title: string;
  readonly serial: string | undefined;
  readonly set: string | undefined;
  /** The day of the examination, as EDTF. */
  readonly today: string;
}

/** An item's file with nothing claimed yet: every feature and part of its variant stands ready to be ticked. */
export function itemScaffold(
  { title, serial, set, today }: NewItem,
  variant: Variant,
  family: Family | undefined,
  cautions: ReadonlyMap<string, Caution>,
): string {
  const features = [...(family?.features.values() ?? [])].sort((a, b) => a.effort - b.effort);
  const groups = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? []);
  const dangers = cautionsAmong(cautions, variant.parts.values()).map(({ nameInText }) => nameInText);
  const lines = [
    "---",
    ...explanation(
      "A line that begins with one # is not in use yet: remove the # and the space to use it. A line that begins with " +
        "## explains. A part that you leave out counts as not examined, which is not the same as absent.",
    ),
    ...explanation(
      "States: present; absent; substitute (another model: add model: …); unverified (there, but you cannot tell " +
        "whether it is right); not-issued (this example never had it). More can be said in braces, " +
        "{ state: present, condition: fine, note: … }. Write what you read on a part, not what should be there.",
    ),
    ...(dangers.length > 0
      ? explanation(
          `BEFORE YOU BEGIN: this case may hold ${dangers.join(", ")}. Read the caution above each part first.`,
        )
      : []),
    `title: ${yamlLine(title)}`,
    `variant: ${variant.id}`,
    ...(variant.serials.length > 0 ? explanation(`Known serials: ${rangeWords(variant.serials)}.`) : []),
    serial === undefined ? offer('serial: "…"') : `serial: ${yamlLine(serial)}`,
    ...explanation("The set's own number, which its parts should bear."),
    set === undefined ? offer('set: "…"') : `set: ${yamlLine(set)}`,
    offer(`examined: ${today}`),
    offer("status: collection"),
  ];
  if (features.length > 0) {
    lines.push(
      "",
      ...explanation(
        "What tells the variants apart. For each feature, remove the # from the one line that you see.",
      ),
      "features:",
    );
    for (const feature of features) {
      const effort = ["a glance", "handling", "dismantling"][feature.effort - 1] ?? "";
      lines.push(...explanation(`${feature.name} (${effort}). ${feature.look ?? ""}`.trim(), 2));
      lines.push(...feature.values.map((value) => offer(`${feature.id}: ${yamlLine(value)}`, 2)));
    }
  }
  lines.push("", ...explanation("The parts, in the order of unpacking."), "parts:");
  for (const group of groups) {
    lines.push(`  ## ---- ${groupName(group, family)} ----`);
    lines.push(...group.flatMap((part) => partScaffold(part, set, cautions)));
  }
  lines.push(
    "",
    ...explanation("Things in the case that the reference does not list."),
    offer("extras:"),
    offer("  - { name: …, quantity: 1 }"),
    ...explanation("Labels, plates and papers, word for word."),
    offer("labels:"),
    offer("  - { where: lid, kind: plate, text: [first line, second line] }"),
    ...explanation(
      "Through whose hands it went. Who has had it since a date has no end to it (2001/..); 2001 alone says nothing " +
        "of the years after. What stands under private is never published.",
    ),
    offer("provenance:"),
    offer(
      `  - { date: ${today.slice(0, 4)}/.., event: acquired, from: …, evidence: receipt, private: [from] }`,
    ),
    ...explanation("What it is made of, and how large it is."),
    offer("materials: …"),
    offer('measurements: ["Case, closed: 310 × 240 × 120 mm"]'),
    ...explanation(
      "Photographs that lie beside this file. Callouts point parts out: at is how far from the left edge of the upright " +
        "picture and how far from its top, as shares of its width and height; [0.5, 0.5] is the middle.",
    ),
    offer("photos:"),
    offer("  - file: open-case.jpg"),
    offer("    alt: The open case from above."),
    ...[...variant.parts.keys()]
      .slice(0, 1)
      .map((part) => offer(`    callouts: [{ part: ${part}, at: [0.5, 0.5] }]`)),
    ...explanation("Never published:"),
    offer("distinguishing: [what tells this one from all others]"),
    offer("storage: …"),
    offer("paid: { amount: 0, currency: EUR }"),
    "---",
    "",
  );
  return lines.join("\n");
}
