import type { Family } from "../../records/family.ts";
import type { Item, PartLine } from "../../records/item.ts";
import type { Variant } from "../../records/variant.ts";
import { groupsInOrder } from "../words/groups-in-order.ts";
import { yamlLine } from "../writing/yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";

const beginning = explanation(
  "A line that begins with one # is not in use yet: remove the # and the space to use it. A line that begins with ## explains.",
);

const whenIssued = (example: string): string[] => [
  ...explanation("When it was issued, as EDTF: a year, or two years with a slash between them."),
  offer(`issued: ${example}`),
];

const numbers: readonly string[] = [
  ...explanation(
    "How many were made, if somebody recorded it; without it the number is estimated from the serials.",
  ),
  offer("made: { count: 0, source: …, page: 1 }"),
  ...explanation("Ranges of serials. Leave out an end that nobody knows."),
  offer("serials:"),
  offer("  - { prefix: A, from: 1, to: 100, source: … }"),
];

/** The numbers of the variant that another is begun from are not its own: they are taken away at once. */
const ownNumbers = (base: Variant): string[] => [
  ...explanation(`Without a line of its own it is taken to have been issued when ${base.id} was.`),
  offer(`issued: ${base.issued?.text ?? "1931/1938"}`),
  ...explanation(
    `How many were made, and which serials: not those of ${base.id}. Write, in place of null where it stands,`,
  ),
  ...explanation(
    "made: { count: 0, source: …, page: 1 } and serials: [{ prefix: A, from: 1, to: 100, source: … }]",
  ),
  ...(base.made ? ["made: null"] : [offer("made: …")]),
  ...(base.serials.length > 0 ? ["serials: null"] : [offer("serials: …")]),
];

/** A variant that stands on its own: one part to begin with, and every field that a part may have. */
export function variantScaffold(id: string, name: string, family: Family): string {
  const [group] = family.groups.keys();
  return [
    ...beginning,
    `id: ${id}`,
    `name: ${yamlLine(name)}`,
    ...whenIssued("1931/1938"),
    ...numbers,
    "",
    ...explanation("What tells it from the other variants. Write several values as a list, [one, other]."),
    "features:",
    ...[...family.features.values()].flatMap((feature) => [
      ...explanation(`${feature.name}. ${feature.look ?? ""}`.trim(), 2),
      ...feature.values.map((value) => offer(`${feature.id}: ${yamlLine(value)}`, 2)),
    ]),
    "",
    ...explanation("Every part, in the order in which lists should show them."),
    "parts:",
    "  case:",
    "    name: Case",
    ...(group === undefined ? [offer("group: …", 4)] : [`    group: ${group}`]),
    ...explanation(
      "core: the thing itself; issued: belongs to a complete outfit; consumable: was used up and",
      4,
    ),
    ...explanation("renewed; optional: issued to some.", 4),
    "    standing: core",
    ...explanation("How much it counts compared with the other parts.", 4),
    "    weight: 1",
    offer("quantity: 1", 4),
    ...explanation("Marks that a right one bears. {set} stands for the set's own number.", 4),
    offer('marks: ["{set}"]', 4),
    ...explanation("Where and how to look, as you would tell somebody who unpacks one.", 4),
    offer("look: …", 4),
    ...explanation(
      "What can hurt: ids of the hazard register, such as mercury, lead, flammable, asbestos.",
      4,
    ),
    offer("hazards: [mercury]", 4),
    ...explanation("Other models that count for something in its place.", 4),
    offer("accepts: [{ model: later-model, credit: 0.5 }]", 4),
    ...explanation("Serials of the part itself, with their dates.", 4),
    offer("serials: [{ from: 1, to: 900, made: 1929 }]", 4),
    ...explanation("Its compartment in the case: left, top, width, height, in any one unit.", 4),
    offer("plan: [0, 0, 10, 5]", 4),
    "",
    ...explanation("Levels of completeness, best first."),
    "levels:",
    "  - { id: as-issued, name: Complete as issued, needs: { standing: [core, issued, consumable] } }",
    "  - { id: less-consumables, name: Complete less consumables, needs: { standing: [core, issued] } }",
    "",
  ].join("\n");
}

/** A variant begun from another: it takes everything of it, and says where it differs. */
export function variantFromVariant(
  id: string,
  name: string,
  base: Variant,
  family: Family | undefined,
): string {
  return [
    ...beginning,
    `id: ${id}`,
    `name: ${yamlLine(name)}`,
    ...explanation(`It takes over everything from ${base.id}; write here only where it differs.`),
    `extends: ${base.id}`,
    ...ownNumbers(base),
    "",
    "features:",
    ...[...base.features].flatMap(([feature, values]) => [
      ...explanation(
        `${family?.features.get(feature)?.name ?? feature}: ${values.join(" or ")} in ${base.id}.`,
        2,
      ),
      ...(family?.features.get(feature)?.values ?? [])
        .filter((value) => !values.includes(value))
        .map((value) => offer(`${feature}: ${yamlLine(value)}`, 2)),
    ]),
    "",
    ...explanation("Parts: null removes one; a part with fields changes those fields, or adds a new part."),
    "parts:",
    ...groupsInOrder(base.parts.values(), family?.groups.keys() ?? []).flatMap((group) =>
      group.flatMap((part) => [
        ...explanation(`${part.name} (${part.standing}, ${part.quantity} issued with ${base.id})`, 2),
        offer(`${part.id}: null`, 2),
      ]),
    ),
    "",
  ].join("\n");
}

const only = (lines: readonly PartLine[], state: PartLine["state"]) =>
  lines.length > 0 && lines.every((line) => line.state === state);

const idOf = (name: string) =>
  name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "") || "new-part";

/** A variant begun from an item that does not fit the one it is held to be: what was seen in it is taken over. */
export function variantFromItem(
  id: string,
  name: string,
  item: Item,
  base: Variant,
  family: Family | undefined,
): string {
  const differing = [...item.features].filter(
    ([feature, value]) => !base.features.get(feature)?.includes(value),
  );
  const parts = [...item.parts].flatMap(([part, lines]) => {
    const known = base.parts.get(part);
    if (!known) return [];
    if (only(lines, "not-issued"))
      return [...explanation(`${known.name} was never issued to ${item.id}.`, 2), `  ${part}: null`];
    if (only(lines, "absent")) {
      return [
        ...explanation(
          `${known.name} is absent from ${item.id}: lost, or never there? Remove the # if it was never there.`,
          2,
        ),
        offer(`${part}: null`, 2),
      ];
    }
    const model = lines.find((line) => line.state === "substitute")?.model;
    return model === undefined
      ? []
      : [
          ...explanation(
            `${item.id} has ${model} in place of ${known.name}. Was that what this variant had?`,
            2,
          ),
          offer(`${part}: { name: ${yamlLine(model.replaceAll("-", " "))}, accepts: [] }`, 2),
        ];
  });
  const extras = item.extras.flatMap((extra) => [
    ...explanation(`${extra.name} lay in ${item.id}. Does it belong to this variant?`, 2),
    offer(
      `${idOf(extra.name)}: { name: ${yamlLine(extra.name)}, standing: issued, quantity: ${extra.quantity} }`,
      2,
    ),
  ]);
  return [
    ...beginning,
    `id: ${id}`,
    `name: ${yamlLine(name)}`,
    ...explanation(
      `Started from ${item.id}. It takes over everything from ${base.id} except what was seen to differ.`,
    ),
    `extends: ${base.id}`,
    ...ownNumbers(base),
    "",
    "features:",
    ...differing.flatMap(([feature, value]) => [
      ...explanation(`${family?.features.get(feature)?.name ?? feature}, as seen on ${item.id}.`, 2),
      `  ${feature}: ${yamlLine(value)}`,
    ]),
    "",
    "parts:",
    ...parts,
    ...extras,
    "",
  ].join("\n");
}
