import type { Part } from "../../records/variant.ts";
import { setPlace } from "../../terms/set-place.ts";
import type { Caution } from "../words/cautions.ts";
import { markWords } from "../words/mark-words.ts";
import { yamlLine } from "../writing/yaml-line.ts";
import { explanation, offer } from "./comment-lines.ts";
import { rangeWords } from "./range-words.ts";

/** In quotation marks, as it is to be written; without them where only what is to be written is said. */
const quotedMark = (mark: string, set: string | undefined) =>
  set === undefined && mark === setPlace ? markWords(mark, set) : `"${markWords(mark, set)}"`;

/** One part to tick: its caution first, then what to look for, then the line to bring in. */
export function partScaffold(
  part: Part,
  set: string | undefined,
  register: ReadonlyMap<string, Caution>,
): string[] {
  const cautions = part.hazards.flatMap((id) => register.get(id) ?? []);
  const quantity = part.quantity > 1 ? `, ${part.quantity} of them` : "";
  const facts = [
    part.look,
    part.marks.length > 0 && `Marks: ${part.marks.map((mark) => quotedMark(mark, set)).join(" and ")}.`,
    part.serials.length > 0 && `Serial of its own: ${rangeWords(part.serials)}.`,
    part.accepts.size > 0 &&
      `Known substitutes: ${[...part.accepts].map(([model, credit]) => `${model} (counts for ${credit})`).join(", ")}.`,
  ].filter((fact) => typeof fact === "string");
  const full = part.quantity > 1 ? yamlLine({ state: "present", quantity: part.quantity }) : "present";
  const fields = [
    part.quantity > 1 && `quantity: ${part.quantity - 1}, rest: absent`,
    part.serials.length > 0 && "serial: …",
    part.marks.length > 0 && "marks: […]",
  ].filter(Boolean);
  return [
    ...cautions.flatMap(({ nameInText, caution, source }) =>
      explanation(`CAUTION, ${nameInText}: ${caution} (${source})`, 2),
    ),
    ...explanation(`${part.name} (${part.standing}${quantity}). ${facts.join(" ")}`.trim(), 2),
    ...(fields.length > 0 ? explanation(`Or: { state: present, ${fields.join(", ")} }`, 2) : []),
    offer(`${part.id}: ${full}`, 2),
  ];
}
