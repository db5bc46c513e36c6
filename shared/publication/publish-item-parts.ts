import type { VariantAssessment } from "../assessments/assess-collection.ts";
import type { PartFinding } from "../assessments/completeness.ts";
import type { PartDating, SerialVerdict } from "../assessments/dating.ts";
import type { ItemAssessment } from "../assessments/item-assessment.ts";
import type { MarkFinding } from "../assessments/matching-numbers.ts";
import type { Family } from "../records/family.ts";
import type { Item, PartLine } from "../records/item.ts";
import type { Part, Variant } from "../records/variant.ts";
import { markOfSet, setPlace } from "../terms/set-place.ts";
import type { Words } from "../words/words.ts";
import { publishSerial, type Redact, type RedactAny } from "./masking.ts";
import { publishPart } from "./publish-variant.ts";
import type { Audience, Named, PartSummary, PublishedItemPart, PublishedPartLine } from "./published.ts";
import { showing } from "./showing.ts";

/** What the parts of an item are published with. */
export interface PartsContext {
  readonly variant: Variant;
  readonly family: Family | undefined;
  /** The item of the same family with this set number. */
  readonly setNamed: (set: string) => Named | null;
  readonly ofVariant: VariantAssessment;
  readonly audience: Audience;
  readonly words: Words;
  /** Takes the serials of whatever item out of a text. */
  readonly redactAny: RedactAny;
}

/** What stands first in a reader's mind about a part: a doubt before a loss, a loss before what is there. */
function summaryOf(finding: PartFinding): PartSummary {
  if (finding.expected === 0) return "not-issued";
  if (finding.absent >= finding.expected) return "absent";
  if (finding.present >= finding.expected) return "present";
  if (finding.unexamined >= finding.expected) return "unexamined";
  if (finding.unverified > 0) return "unverified";
  if (finding.substitute > 0) return "substitute";
  return finding.absent > 0 ? "incomplete" : "partly-examined";
}

function publishLine(
  line: PartLine,
  dating: PartDating | undefined,
  item: Item,
  audience: Audience,
  redact: Redact,
): PublishedPartLine {
  const show = showing(line, audience, redact);
  const how = audience === "private" ? "shown" : item.publish.serial;
  return {
    state: line.state,
    quantity: line.quantity ?? null,
    rest: line.rest ?? null,
    serial: show.kept("serial") ? null : publishSerial(line.serial, how),
    marks: show.list("marks", line.marks),
    condition: show.text("condition", line.condition),
    packed: show.text("packed", line.packed),
    repairs: show.list("repairs", line.repairs),
    belongs: line.belongs ?? null,
    model: show.text("model", line.model),
    evidence: show.text("evidence", line.evidence),
    note: show.text("note", line.note),
    dating: dating ? { made: dating.made, verdict: dating.verdict } : null,
  };
}

const gravest: readonly SerialVerdict[] = ["later", "outside", "undated", "earlier", "fits"];

/** Of several units of a part, the one that raises the gravest doubt speaks for it. */
export function datingOf(units: readonly PartDating[] | undefined): PublishedItemPart["dating"] {
  const worst = gravest.flatMap((verdict) => units?.find((unit) => unit.verdict === verdict) ?? [])[0];
  if (!worst) return null;
  return { made: worst.made, verdict: worst.verdict === "outside" ? "undated" : worst.verdict };
}

/** Of marks that are kept nothing is told, neither whether they agree. */
function matchingOf(
  finding: MarkFinding | undefined,
  lines: readonly PartLine[],
  redact: Redact,
  { setNamed, audience }: PartsContext,
): PublishedItemPart["matching"] {
  const isKept = audience === "public" && lines.some((line) => line.private.includes("marks"));
  if (!finding || isKept) return null;
  const { verdict, otherSet } = finding;
  return {
    verdict,
    otherSet: otherSet && redact(otherSet),
    otherItem: otherSet === null ? null : setNamed(otherSet),
  };
}

/** A part of which one word was written, the same in every example that it was written of, is published once. */
const plainParts = new WeakMap<
  PartFinding,
  { readonly ofVariant: VariantAssessment; readonly words: Words; readonly published: PublishedItemPart }
>();

/** Whether nothing but one word is said of a part, and nothing is found of it but what that word says. */
function isPlain(part: Part, item: Item, { dating, marks }: ItemAssessment): boolean {
  const lines = item.parts.get(part.id) ?? [];
  return (
    lines.every((line) => Object.isFrozen(line)) &&
    lines.length < 2 &&
    part.marks.length === 0 &&
    !dating.parts.has(part.id) &&
    !marks.has(part.id) &&
    !item.assembled.includes(part.id)
  );
}

/** The parts of the variant, each as it is published of every item, with what is written and found of this one's. */
export function publishItemParts(
  item: Item,
  assessment: ItemAssessment,
  around: PartsContext,
  redact: Redact,
): PublishedItemPart[] {
  const { ofVariant, words } = around;
  return [...around.variant.parts.values()].flatMap((part) => {
    const finding = assessment.completeness.parts.get(part.id);
    if (!finding) return [];
    if (!isPlain(part, item, assessment)) return [itemPart(part, finding, item, assessment, around, redact)];
    const known = plainParts.get(finding);
    if (known?.ofVariant === ofVariant && known.words === words) return [known.published];
    const published = itemPart(part, finding, item, assessment, around, redact);
    plainParts.set(finding, { ofVariant, words, published });
    return [published];
  });
}

function itemPart(
  part: Part,
  finding: PartFinding,
  item: Item,
  { dating, marks }: ItemAssessment,
  around: PartsContext,
  redact: Redact,
): PublishedItemPart {
  const { expected, present, substitute, unverified, absent, unexamined, notIssued, surplus } = finding;
  const lines = item.parts.get(part.id) ?? [];
  const datings = dating.parts.get(part.id);
  const published = publishPart(part, around.family, around.ofVariant, around.words, (text) =>
    text === undefined ? null : around.redactAny(text),
  );
  return {
    ...published,
    marks: published.marks.map((mark) => redact(markOfSet(mark, item.set ?? setPlace))),
    summary: summaryOf(finding),
    units: { expected, present, substitute, unverified, absent, unexamined, notIssued, surplus },
    share: finding.share,
    lines: lines.map((line, at) => {
      const dated = datings?.find((each) => each.line === at);
      return publishLine(line, dated, item, around.audience, redact);
    }),
    dating: datingOf(datings),
    matching: matchingOf(marks.get(part.id), lines, redact, around),
    assembled: item.assembled.includes(part.id),
  };
}
