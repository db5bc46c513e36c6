import type { VariantAssessment } from "../assessments/assess-collection.ts";
import type { PartFinding } from "../assessments/completeness.ts";
import type { PartDating, SerialVerdict } from "../assessments/dating.ts";
import type { HazardFinding } from "../assessments/hazards.ts";
import type { ItemAssessment } from "../assessments/item-assessment.ts";
import type { Likeness } from "../assessments/likeness.ts";
import type { MarkFinding } from "../assessments/matching-numbers.ts";
import { assessProvenance, type Provenance } from "../assessments/provenance.ts";
import type { Family } from "../records/family.ts";
import type { CustodyEvent, Item, PartLine } from "../records/item.ts";
import { lastChanged } from "../records/revision.ts";
import type { Variant } from "../records/variant.ts";
import { markOfSet, setPlace } from "../terms/set-place.ts";
import { isFate } from "../terms/states.ts";
import type { Words } from "../words/words.ts";
import { publishSerial, type Redact, type RedactAny, redactorFor } from "./masking.ts";
import { publishFigure } from "./publish-figure.ts";
import { publishRevisions } from "./publish-revisions.ts";
import { publishPart } from "./publish-variant.ts";
import type {
  Audience,
  Named,
  PartSummary,
  PublishedEvent,
  PublishedHazard,
  PublishedItem,
  PublishedItemPart,
  PublishedLikeness,
  PublishedPartLine,
} from "./published.ts";
import { sparingAddresses } from "./spared-addresses.ts";

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

/** Only fields that may be shown pass: those that the entry itself does not keep, with serials taken out. */
function showing(entry: { readonly private: readonly string[] }, audience: Audience, redact: Redact) {
  const kept = (field: string) => audience === "public" && entry.private.includes(field);
  return {
    text: (field: string, value: string | undefined): string | null =>
      value === undefined || kept(field) ? null : redact(value),
    list: (field: string, values: readonly string[]): readonly string[] =>
      kept(field) ? [] : values.map(redact),
    kept,
  };
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

function publishEvent(event: CustodyEvent, audience: Audience, redact: Redact): PublishedEvent {
  const show = showing(event, audience, redact);
  return {
    date: show.kept("date") ? "" : event.date.text,
    event: show.text("event", event.event) ?? "",
    from: show.text("from", event.from),
    to: show.text("to", event.to),
    holder: show.text("holder", event.holder),
    place: show.text("place", event.place),
    evidence: show.text("evidence", event.evidence),
    source: show.kept("source") ? null : (event.source ?? null),
    // What an owner paid is never published, marked or not.
    price: audience === "private" ? (event.price ?? null) : null,
    note: show.text("note", event.note),
  };
}

const gravest: readonly SerialVerdict[] = ["later", "outside", "undated", "earlier", "fits"];

/** Of several units of a part, the one that raises the gravest doubt speaks for it. */
function datingOf(units: readonly PartDating[] | undefined): PublishedItemPart["dating"] {
  const worst = gravest.flatMap((verdict) => units?.find((unit) => unit.verdict === verdict) ?? [])[0];
  if (!worst) return null;
  return { made: worst.made, verdict: worst.verdict === "outside" ? "undated" : worst.verdict };
}

/** Of marks that are kept nothing is told, neither whether they agree. */
function matchingOf(
  finding: MarkFinding | undefined,
  lines: readonly PartLine[],
  redact: Redact,
  { setNamed, audience }: ItemContext,
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

/** Custody as it may be shown: where a date is kept, the gaps beside it would tell it. */
function shownCustody(
  { provenance, examined }: Item,
  assessed: Provenance,
  issued: Variant["issued"],
  audience: Audience,
): Provenance {
  const shown = provenance.filter((event) => audience === "private" || !event.private.includes("date"));
  if (shown.length === provenance.length) return assessed;
  return { ...assessProvenance(issued, shown, examined), gaps: [] };
}

/** An example of the log is named as the log names it; its serial is left to the log. */
function publishLikeness(near: Likeness, titleOf: (item: string) => string, words: Words): PublishedLikeness {
  const [item] = near.example.items;
  const row = near.example.rows.find(({ example }) => example !== undefined) ?? near.example.rows[0];
  return {
    name: item === undefined ? (row?.example ?? words.seen(row?.seen.text ?? "")) : titleOf(item),
    item: item ?? null,
    likeness: near.likeness,
    compared: near.compared,
  };
}

/** A part of which one word was written is the same in every example that it was written of. */
const plainParts = new WeakMap<
  PartFinding,
  { readonly ofVariant: VariantAssessment; readonly words: Words; readonly part: PublishedItemPart }
>();

interface ItemContext {
  readonly variant: Variant;
  readonly family: Family | undefined;
  readonly nameOf: (variant: string) => string;
  readonly titleOf: (item: string) => string;
  /** The item of the same family with this set number. */
  readonly setNamed: (set: string) => Named | null;
  readonly ofVariant: VariantAssessment;
  readonly audience: Audience;
  readonly words: Words;
  readonly hazard: (finding: HazardFinding) => PublishedHazard;
  /** Takes the serials of whatever item out of a text. */
  readonly redactAny: RedactAny;
}

/** Takes out of a text about an item whatever this audience is not to read in it. */
export const redactFor = (item: Item, audience: Audience): Redact =>
  audience === "private" ? (text) => text : redactorFor(item);

export const publishTitle = (item: Item, audience: Audience): string => redactFor(item, audience)(item.title);

export function publishItem(item: Item, assessment: ItemAssessment, around: ItemContext): PublishedItem {
  const { variant, family, audience, words } = around;
  const redactOwn = redactFor(item, audience);
  const redact: Redact = sparingAddresses((text) => around.redactAny(redactOwn(text), item.serial));
  const { completeness, identification, dating, rarity } = assessment;
  const provenance = shownCustody(item, assessment.provenance, variant.issued, audience);
  const figure = (each: (typeof rarity)["asComplete"]) => publishFigure(each, words);

  const parts: PublishedItemPart[] = [...variant.parts.values()].flatMap((part) => {
    const finding = completeness.parts.get(part.id);
    if (!finding) return [];
    const { expected, present, substitute, unverified, absent, unexamined, notIssued, surplus } = finding;
    const own = item.parts.get(part.id) ?? [];
    const isPlain =
      own.every((line) => Object.isFrozen(line)) &&
      own.length < 2 &&
      part.marks.length === 0 &&
      !dating.parts.has(part.id) &&
      !assessment.marks.has(part.id) &&
      !item.assembled.includes(part.id);
    const before = isPlain ? plainParts.get(finding) : undefined;
    if (before?.ofVariant === around.ofVariant && before.words === words) return [before.part];
    const published = publishPart(part, family, around.ofVariant, words, (text) =>
      text === undefined ? null : around.redactAny(text),
    );
    const made: PublishedItemPart[] = [
      {
        ...published,
        marks: published.marks.map((mark) => redact(markOfSet(mark, item.set ?? setPlace))),
        summary: summaryOf(finding),
        units: { expected, present, substitute, unverified, absent, unexamined, notIssued, surplus },
        share: finding.share,
        lines: own.map((line, at) => {
          const dated = dating.parts.get(part.id)?.find((each) => each.line === at);
          return publishLine(line, dated, item, audience, redact);
        }),
        dating: datingOf(dating.parts.get(part.id)),
        matching: matchingOf(assessment.marks.get(part.id), own, redact, around),
        assembled: item.assembled.includes(part.id),
      },
    ];
    const [only] = made;
    if (isPlain && only) plainParts.set(finding, { ofVariant: around.ofVariant, words, part: only });
    return made;
  });

  // Nothing is asked for what nobody can hand over.
  const isAsked = !isFate(item.status) && (audience === "private" || item.publish.price === "shown");
  const folder = item.document.file.slice(0, item.document.file.lastIndexOf("/") + 1);
  const published = {
    id: item.id,
    title: redact(item.title),
    variant: { id: variant.id, name: variant.name },
    family: { id: variant.family, name: family?.name ?? variant.family },
    serial: publishSerial(item.serial, audience === "private" ? "shown" : item.publish.serial),
    set: item.set === undefined ? null : redact(item.set),
    examined: item.examined?.text ?? null,
    updated: lastChanged(item.updated, item.revisions, item.examined)?.text ?? null,
    revisions: publishRevisions(item.revisions, redact),
    status: item.status,
    materials: item.materials === undefined ? null : redact(item.materials),
    measurements: item.measurements.map(redact),
    features: [...(family?.features.values() ?? [])].map(({ id, name }) => ({
      id,
      name,
      value: item.features.get(id) ?? null,
    })),
    identification: {
      verdict: identification.verdict,
      candidates: identification.candidates.map(({ variant: id, contradictions, unobserved }) => ({
        variant: id,
        name: around.nameOf(id),
        contradictions,
        unobserved,
      })),
      lookNext: identification.lookNext,
      caveats: identification.caveats.map(words.statement),
    },
    completeness: {
      weighted: completeness.main?.weighted ?? null,
      counted: completeness.main?.counted ?? null,
      consumable: completeness.consumable,
      optional: completeness.optional,
      level: completeness.level,
      missing: completeness.missing,
      partial: completeness.partial,
      substitutes: completeness.substitutes,
      unverified: completeness.unverified,
      unexamined: completeness.unexamined,
      surplus: completeness.surplus,
      extras: completeness.extras.map((extra) => {
        const show = showing(extra, audience, redact);
        return {
          name: show.text("name", extra.name) ?? "",
          quantity: extra.quantity,
          note: show.text("note", extra.note),
        };
      }),
    },
    levels: variant.levels.map(({ id, name }) => ({ id, name })),
    parts,
    dating: {
      issued: dating.issued,
      serial: dating.serial,
      parts: Object.fromEntries(
        [...dating.parts].flatMap(([id, units]) => {
          const worst = datingOf(units);
          return worst ? [[id, worst]] : [];
        }),
      ),
      caveats: dating.caveats.map(words.statement),
    },
    rarity: {
      asComplete: figure(rarity.asComplete),
      asCompleteSurvivors: figure(rarity.asCompleteSurvivors),
      asCompleteWait: figure(rarity.asCompleteWait),
      rank: rarity.rank,
    },
    provenance: {
      events: item.provenance.map((event) => publishEvent(event, audience, redact)),
      documentedYears: provenance.documentedYears,
      lifetimeYears: provenance.lifetimeYears,
      gaps: provenance.gaps,
      caveats: provenance.caveats.map(words.statement),
    },
    wants: assessment.wants,
    spares: assessment.spares,
    nearest: assessment.nearest.map((near) => publishLikeness(near, around.titleOf, words)),
    hazards: assessment.hazards.map((finding) => {
      const extras = item.extras
        .filter(({ hazards }) => hazards.includes(finding.hazard.id))
        .flatMap((extra) => showing(extra, audience, redact).text("name", extra.name) ?? []);
      return around.hazard({ ...finding, extras });
    }),
    labels: item.labels.map((label) => {
      const show = showing(label, audience, redact);
      return {
        kind: show.text("kind", label.kind) ?? "",
        where: show.text("where", label.where),
        text: show.list("text", label.text),
        part: show.kept("part") ? null : (label.part ?? null),
        note: show.text("note", label.note),
      };
    }),
    photos: item.photos.map((photo) => {
      const show = showing(photo, audience, redact);
      return {
        original: `${folder}${photo.file}`,
        alt: redact(photo.alt),
        caption: show.text("caption", photo.caption),
        callouts: show.kept("callouts") ? [] : photo.callouts,
      };
    }),
    video: item.video
      ? {
          original: `${folder}${item.video.src}`,
          captions: item.video.captions === undefined ? null : `${folder}${item.video.captions}`,
          caption: item.video.caption === undefined ? null : redact(item.video.caption),
          moments: [...item.video.moments].sort((a, b) => a.seconds - b.seconds),
        }
      : null,
    assembled: item.assembled,
    price: isAsked ? (item.price ?? null) : null,
    formerly: item.formerly,
    description: redact(item.description),
  };
  return {
    ...published,
    confidential:
      audience === "private"
        ? {
            distinguishing: item.distinguishing,
            maker: family?.maker ?? null,
            storage: item.storage ?? null,
            paid: item.paid ?? null,
            fields: item.private ?? {},
          }
        : null,
  };
}
