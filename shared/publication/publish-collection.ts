import type { Assessments } from "../assessments/assess-collection.ts";
import type { HazardFinding } from "../assessments/hazards.ts";
import { grouping } from "../lists/grouping.ts";
import type { Collection } from "../records/collection.ts";
import type { Variant } from "../records/variant.ts";
import type { Words } from "../words/words.ts";
import { type HiddenSerial, hiddenSerials, type Redact, type RedactAny, redactorOf } from "./masking.ts";
import { publishArticle } from "./publish-article.ts";
import { publishComparison } from "./publish-comparison.ts";
import { publishFamily } from "./publish-family.ts";
import { publishHazard } from "./publish-hazard.ts";
import { publishItem, publishTitle } from "./publish-item.ts";
import { publishScale, publishSettings } from "./publish-settings.ts";
import { publishSource } from "./publish-source.ts";
import { publishVariant } from "./publish-variant.ts";
import type { Audience, Named, PublishedCollection, PublishedItem } from "./published.ts";
import { sparingAddresses } from "./spared-addresses.ts";
import { withNamesFreed } from "./with-names-freed.ts";

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

  const variantsOf = grouping(variants, ({ family }) => family.id);
  const families = [...collection.families.values()].flatMap((family) => {
    const assessment = assessments.families.get(family.id);
    return assessment ? publishFamily(family, assessment, variantsOf.get(family.id) ?? [], shown, free) : [];
  });

  return {
    audience,
    settings: publishSettings(settings, shown, free),
    scale: publishScale(collection.scales.get(settings.scale), settings.language, shown, free),
    families,
    variants,
    items,
    comparisons: assessments.comparisons.map((comparison) => publishComparison(comparison, nameOf)),
    articles: [...collection.articles.values()].map((article) => publishArticle(article, shown, free)),
    sources: [...collection.sources.values()].map((source) => publishSource(source, free)),
  };
}
