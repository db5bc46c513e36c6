import type { HazardFinding } from "../assessments/hazards.ts";
import type { ItemAssessment } from "../assessments/item-assessment.ts";
import type { Likeness } from "../assessments/likeness.ts";
import type { Item } from "../records/item.ts";
import { lastChanged } from "../records/revision.ts";
import { isFate } from "../terms/states.ts";
import type { Words } from "../words/words.ts";
import { publishSerial, type Redact, redactorFor } from "./masking.ts";
import { publishCustody } from "./publish-custody.ts";
import { publishFigure } from "./publish-figure.ts";
import { datingOf, type PartsContext, publishItemParts } from "./publish-item-parts.ts";
import { publishRevisions } from "./publish-revisions.ts";
import type { Audience, PublishedHazard, PublishedItem, PublishedLikeness } from "./published.ts";
import { showing } from "./showing.ts";
import { sparingAddresses } from "./spared-addresses.ts";

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

interface ItemContext extends PartsContext {
  readonly nameOf: (variant: string) => string;
  readonly titleOf: (item: string) => string;
  readonly hazard: (finding: HazardFinding) => PublishedHazard;
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
  const figure = (each: (typeof rarity)["asComplete"]) => publishFigure(each, words);

  // Nothing is asked for what nobody can hand over.
  const isAsked = !isFate(item.status) && (audience === "private" || item.publish.price === "shown");
  const folder = item.document.file.slice(0, item.document.file.lastIndexOf("/") + 1);
  return {
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
    parts: publishItemParts(item, assessment, around, redact),
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
    provenance: publishCustody(item, assessment.provenance, around, redact),
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
