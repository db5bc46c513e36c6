import { grouping } from "../../lists/grouping.ts";
import { casePlan } from "../../plots/case-plan/case-plan.ts";
import type { PublishedFamily, PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { isFate } from "../../terms/states.ts";
import { addresses } from "../addresses/addresses.ts";
import { citedByFamily } from "../citation/cited-pages.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { comparableVariant } from "../compare/comparisons-page.ts";
import { itemSummary, variantSummary } from "../data/collection-data.ts";
import { csvRow } from "../data/items-csv.ts";
import { renderMarkdown } from "../prose/markdown.ts";
import { classPlaces } from "../search/class-places.ts";
import { itemWords } from "../search/item-words.ts";
import { gatherWords } from "../search/word-files.ts";
import { logLine } from "../variant/sightings-page.ts";
import { reallocationView } from "../variant/variant-completing.ts";
import { survivorsInBrief } from "../variant/variant-rarity.ts";
import { shareInterval } from "../views/completeness-words.ts";
import { contradictionOf } from "../views/contradiction.ts";
import { stateWord } from "../views/drawings.ts";
import { entryView } from "../views/entry-view.ts";
import { fullestFirst } from "./fullest-first.ts";
import type { ListedFamily, ListedItem, ListedVariant, OpenedItem } from "./listed-family.ts";
import { methodExamples } from "./method-examples.ts";
import { searchedItem } from "./searched-item.ts";
import { spareParts, wantedParts } from "./wanted-parts.ts";

/** Every family of the index, as the pages of the whole collection are to see it. */
export function listFamilies(index: CollectionIndex): ListedFamily[] {
  const { collection } = index;
  const itemsOf = grouping(collection.items, ({ variant }) => variant.id);
  return collection.families.map((family) => {
    const variants = collection.variants.filter((variant) => variant.family.id === family.id);
    return listFamily(
      family,
      variants.map((variant) => ({ variant, items: itemsOf.get(variant.id) ?? [] })),
      index,
    );
  });
}

interface VariantItems {
  readonly variant: PublishedVariant;
  readonly items: readonly PublishedItem[];
}

function listFamily(
  family: PublishedFamily,
  found: readonly VariantItems[],
  index: CollectionIndex,
): ListedFamily {
  const { words } = index;
  const variants = found.map(({ variant }) => variant);
  const items = found.flatMap(({ items: of }) => of);
  return {
    id: family.id,
    name: family.name,
    maker: family.maker,
    text:
      family.description === null
        ? ""
        : renderMarkdown(family.description, {
            page: addresses.families,
            from: addresses.family(family.id),
            below: 2,
            index,
          }),
    variants: found.map(({ variant, items: of }) => listVariant(variant, of, index)),
    items: found.flatMap(({ variant, items: of }) => of.map((item) => listItem(item, variant, index))),
    words: gatherWords(items.map(itemWords)),
    opened: openedOf(items, index),
    wanted: wantedParts(items, words),
    spare: spareParts(items, words),
    cited: citedByFamily(family, variants, items, index),
    examples: methodExamples(variants, items, index),
  };
}

function listVariant(
  variant: PublishedVariant,
  items: readonly PublishedItem[],
  index: CollectionIndex,
): ListedVariant {
  const { words, collection } = index;
  const { survivors } = variant.rarity;
  return {
    id: variant.id,
    name: variant.name,
    issued: variant.issued,
    items: items.length,
    sightings: variant.sightings.length,
    survive: survivorsInBrief(survivors, words),
    log: logLine(variant, index),
    data: variantSummary(variant),
    searched: {
      id: variant.id,
      name: variant.name,
      classes: classPlaces(variant, collection.scale?.classes ?? []),
      survivors: survivors.value,
    },
    parts: variant.parts.map(({ id, name }) => ({ id, name })),
    compared: comparableVariant(variant, items, index),
    completed: reallocationView(variant, index),
  };
}

function listItem(item: PublishedItem, variant: PublishedVariant, index: CollectionIndex): ListedItem {
  const { sure } = item.completeness.level;
  return {
    id: item.id,
    title: item.title,
    variant: item.variant,
    entry: entryView(item, index),
    level: item.levels.find(({ id }) => id === sure) ?? null,
    status: item.status,
    verdict: item.identification.verdict,
    hazards: item.hazards.map(({ id, name }) => ({ id, name })),
    updated: item.updated,
    change: item.revisions.find(({ date }) => date === item.updated)?.note ?? null,
    formerly: item.formerly,
    row: csvRow(item),
    data: itemSummary(item),
    searched: searchedItem(item, variant.parts),
  };
}

/** The first of its photographs that can be shown. */
function photoOf({ photos }: PublishedItem, { images }: CollectionIndex): OpenedItem["photo"] {
  for (const { original, alt } of photos) {
    const image = images.get(original);
    if (image) return { image, alt };
  }
  return null;
}

/**
 * The fullest outfit whose evidence agrees with its label and whose parts came in its own case: it shows best what a
 * whole one is. One that has been photographed comes before any that has not, and what is gone comes last.
 */
function openedOf(items: readonly PublishedItem[], index: CollectionIndex): OpenedItem | null {
  const { pages } = index.words;
  const openable = items.map((of) => ({
    of,
    item: { address: addresses.item(of.id), name: of.title },
    photo: photoOf(of, index),
    isSound: of.identification.verdict !== "contradicted" && of.assembled.length === 0,
    isGone: isFate(of.status),
    certain: of.completeness.weighted?.low ?? 0,
  }));
  const [fullest] = openable.sort(fullestFirst);
  if (!fullest) return null;
  const { of, ...shown } = fullest;
  const { weighted, consumable } = of.completeness;
  const reserved = [
    contradictionOf(of, index.words),
    of.assembled.length === 0 ? null : pages.assembled,
  ].filter((word) => word !== null);
  const name = reserved.length === 0 ? of.title : `${of.title} (${reserved.join(", ")})`;
  return {
    ...shown,
    plan: casePlan(of.parts, {
      idPrefix: "opened",
      label: pages.item.planLabel(of.title),
      words: index.words,
      stateWord: stateWord(index.words),
      linkPrefix: `.${shown.item.address}#part-`,
    }),
    note: weighted
      ? pages.home.openNote(name, shareInterval(weighted, index.words), consumable !== null)
      : name,
  };
}
