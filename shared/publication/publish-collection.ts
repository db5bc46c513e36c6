import type { Assessments } from "../assessments/assess-collection.ts";
import type { FamilyKey } from "../assessments/family-key.ts";
import type { HazardFinding } from "../assessments/hazards.ts";
import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import { lastChanged } from "../records/revision.ts";
import type { Source } from "../records/source.ts";
import type { Variant } from "../records/variant.ts";
import { nameInFull } from "../terms/person-name.ts";
import type { Words } from "../words/words.ts";
import { inLanguage } from "./in-language.ts";
import { type HiddenSerial, hiddenSerials, type Redact, type RedactAny, redactorOf } from "./masking.ts";
import { publishComparison } from "./publish-comparison.ts";
import { publishHazard } from "./publish-hazard.ts";
import { publishItem, publishTitle } from "./publish-item.ts";
import { publishRevisions } from "./publish-revisions.ts";
import { publishVariant } from "./publish-variant.ts";
import type { Audience, Named, PublishedCollection, PublishedItem, PublishedSource } from "./published.ts";
import { sparingAddresses } from "./spared-addresses.ts";
import { withNamesFreed } from "./with-names-freed.ts";

/** Whatever stands in it as text, however deep. */
function freeOf<Value>(value: Value, redact: Redact): Value {
  if (typeof value === "string") return redact(value) as Value;
  if (Array.isArray(value)) return value.map((each) => freeOf(each, redact)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, freeOf(each, redact)])) as Value;
}

/** Its id, by which everything refers to it, stays; and so does an address, which would lead nowhere. */
const publishSource = (source: Source, redact: Redact): PublishedSource => ({
  id: source.id,
  title: redact(source.title),
  type: source.type ?? null,
  authors: source.author.map((name) => redact(nameInFull(name))),
  editors: source.editor.map((name) => redact(nameInFull(name))),
  issued: source.issued ?? null,
  accessed: source.accessed === undefined ? null : redact(source.accessed),
  fields: Object.fromEntries(
    Object.entries(source.fields).map(([key, value]) => [
      key,
      key === "id" || key === "URL" || key === "DOI" ? value : freeOf(value, redact),
    ]),
  ),
});

const noKey: FamilyKey = {
  sets: [],
  effort: 0,
  proven: true,
  complete: true,
  unseparated: [],
  bySerial: false,
  key: { kind: "end", variants: [] },
};

/** A drawing of more outfits than these nobody would read. */
const spreadsShown = 24;

/**
 * The one door. What is private passes here or nowhere: pages, data files, feeds and pictures accept by type only
 * what this returns. `others`: serials of items that belong not to this collection but to the one from which it was
 * cut, and that its texts must not give away either.
 */
export function publishCollection(
  asWritten: Collection,
  assessments: Assessments,
  audience: Audience,
  words: Words,
  others: readonly HiddenSerial[] = [],
): PublishedCollection {
  const { settings } = asWritten;
  const redact: RedactAny =
    audience === "private"
      ? (text) => text
      : sparingAddresses(redactorOf([...hiddenSerials(asWritten.items.values()), ...others]));
  /** Of what no item bears. */
  const free: Redact = (text) => redact(text);
  const collection = audience === "private" ? asWritten : withNamesFreed(asWritten, free);
  const nameOf = (id: string) => collection.variants.get(id)?.name ?? id;
  const hazard = (finding: HazardFinding) => publishHazard(finding, settings.language, free);
  const shown = (text: string | undefined): string | null => (text === undefined ? null : redact(text));
  const titleOf = (id: string) => {
    const item = collection.items.get(id);
    return item ? redact(publishTitle(item, audience), item.serial) : id;
  };
  const bearersOf = grouping(
    [...collection.items.values()].filter(({ set }) => set !== undefined),
    ({ variant, set }) => `${collection.variants.get(variant)?.family} ${set}`,
  );
  /** The outfit with this set number: one of the same variant, else one of the family; none where it may be several. */
  const setNamed =
    ({ id: variant, family }: Variant) =>
    (set: string): Named | null => {
      const bearers = bearersOf.get(`${family} ${set}`) ?? [];
      const own = bearers.filter((item) => item.variant === variant);
      const [bearer, ...others] = own.length > 0 ? own : bearers;
      return bearer && others.length === 0 ? { id: bearer.id, name: titleOf(bearer.id) } : null;
    };

  const items: PublishedItem[] = [...collection.items.values()].flatMap((item) => {
    const assessment = assessments.items.get(item.id);
    const variant = collection.variants.get(item.variant);
    const ofVariant = assessments.variants.get(item.variant);
    if (!assessment || !variant || !ofVariant) return [];
    const family = collection.families.get(variant.family);
    return [
      publishItem(item, assessment, {
        variant,
        family,
        nameOf,
        titleOf,
        setNamed: setNamed(variant),
        ofVariant,
        audience,
        words,
        hazard,
        redactAny: redact,
      }),
    ];
  });

  const sightingsOf = grouping(collection.sightings, ({ variant }) => variant);
  const itemsOf = grouping(items, ({ variant }) => variant.id);
  const variants = [...collection.variants.values()].flatMap((variant) => {
    const assessment = assessments.variants.get(variant.id);
    if (!assessment) return [];
    const here = itemsOf.get(variant.id) ?? [];
    return [
      publishVariant(variant, assessment, {
        family: collection.families.get(variant.family),
        nameOf,
        sightings: sightingsOf.get(variant.id) ?? [],
        items: here.map(({ id, title }) => ({ id, name: title })),
        likenesses: here.slice(0, spreadsShown).flatMap(({ id, nearest: [nearest] }) => {
          const spread = assessments.items.get(id)?.likenesses;
          if (!spread) return [];
          return [
            {
              item: id,
              ...spread,
              nearest: nearest ? { name: nearest.name, likeness: nearest.likeness } : null,
            },
          ];
        }),
        words,
        hazard,
        shown,
      }),
    ];
  });

  const families = [...collection.families.values()].map((family) => ({
    id: family.id,
    name: family.name,
    maker: family.maker ?? null,
    description: shown(family.description),
    features: [...family.features.values()].map(({ id, name, values, look, effort, note }) => ({
      id,
      name,
      values,
      look: shown(look),
      effort,
      note: shown(note),
    })),
    variants: variants
      .filter((variant) => variant.family.id === family.id)
      .map(({ id, name }) => ({ id, name })),
    comparison: (assessments.families.get(family.id)?.comparison.rows ?? []).map((row) => ({
      ...row,
      name: free(row.name),
    })),
    key: assessments.families.get(family.id)?.key ?? noKey,
    sources: family.sources,
    formerly: family.formerly,
    revisions: publishRevisions(family.revisions, free),
  }));

  const scale = collection.scales.get(settings.scale);
  return {
    audience,
    settings: {
      title: redact(settings.title),
      url: settings.url,
      language: settings.language,
      confidence: settings.confidence,
      watching: settings.watching?.text ?? null,
      description: shown(settings.description),
      notice: shown(settings.notice),
      publisher: shown(settings.publisher),
      rights: shown(settings.rights),
      fieldReference: settings.fieldReference,
      theme: settings.theme,
    },
    scale: scale
      ? {
          id: scale.id,
          name: redact(scale.name),
          citation: shown(scale.citation),
          note: shown(scale.note),
          classes: scale.classes.map(({ id, words, translated }) => ({
            id,
            words: shown(inLanguage(translated, settings.language) ?? words),
          })),
        }
      : null,
    families,
    variants,
    items,
    comparisons: assessments.comparisons.map((comparison) => publishComparison(comparison, nameOf)),
    articles: [...collection.articles.values()].map((article) => ({
      id: article.id,
      title: redact(article.title),
      authors: freeOf(article.authors, free),
      updated: lastChanged(article.updated, article.revisions)?.text ?? null,
      revisions: publishRevisions(article.revisions, free),
      abstract: shown(article.abstract),
      formerly: article.formerly,
      text: redact(article.text),
    })),
    sources: [...collection.sources.values()].map((source) => publishSource(source, free)),
  };
}
