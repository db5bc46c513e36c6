import type { PublishedSerialRange, PublishedVariant } from "../../publication/published.ts";
import type { variantPlots } from "../../publication/references/plot-at.ts";
import { markOfSet } from "../../terms/set-place.ts";
import { addresses } from "../addresses/addresses.ts";
import { entriesOnPage } from "../addresses/pager.ts";
import { type CiteView, citeView, dataLink } from "../citation/cite-view.ts";
import { citedIn } from "../citation/cited-pages.ts";
import { familyGroup, linkedData } from "../citation/linked-data.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { comparedPlace } from "../compare/comparisons-page.ts";
import type { Link, PageHead } from "../page.ts";
import { renderMarkdown } from "../prose/markdown.ts";
import type { Named } from "../search/search-index.ts";
import { drawing } from "../views/drawings.ts";
import { type EntryView, entryView } from "../views/entry-view.ts";
import { type HazardView, hazardViews, namedHazards } from "../views/hazard-view.ts";
import { groupParts, plain, type RateView, rateView } from "../views/item-parts.ts";
import { planNote } from "../views/plan-note.ts";
import { type ReallocationView, reallocationView } from "./variant-completing.ts";
import {
  type ClassView,
  classView,
  conflictWithMade,
  countedInWords,
  type LabelledFigure,
  levelFigures,
  variantFigures,
} from "./variant-rarity.ts";

export interface VariantPage extends PageHead {
  readonly kind: "variant";
  readonly id: string;
  readonly family: Link;
  readonly extends: Link | null;
  readonly issued: string | null;
  /** HTML. */
  readonly text: string;
  readonly figures: readonly LabelledFigure[];
  readonly class: ClassView | null;
  /** Where more are known, or estimated to survive, than were made. */
  readonly conflict: string | null;
  readonly sightings: {
    /** How many, and which of them count. */
    readonly counted: readonly string[];
    readonly log: Link;
    /** SVG; null where there is none. */
    readonly plot: string | null;
  };
  readonly hazards: readonly HazardView[];
  readonly features: readonly {
    readonly name: string;
    readonly found: string;
    readonly look: string | null;
  }[];
  /** SVG. */
  readonly plan: string | null;
  readonly planNote: string;
  readonly partsNote: string;
  readonly groups: readonly {
    readonly name: string | null;
    readonly parts: readonly {
      readonly id: string;
      readonly name: string;
      readonly quantity: string;
      readonly standing: string;
      readonly weight: string;
      readonly marks: readonly string[];
      readonly look: string | null;
      readonly note: string | null;
      readonly hazards: readonly Named[];
      readonly rate: RateView;
    }[];
  }[];
  /** SVG. */
  readonly rates: string | null;
  readonly rateMethod: Link;
  readonly serials: readonly SerialRow[];
  /** Of the parts that bear a serial of their own. */
  readonly partSerials: readonly { readonly part: string; readonly ranges: readonly SerialRow[] }[];
  /** SVG. */
  readonly serialPlot: string | null;
  readonly levels: readonly {
    readonly name: string;
    readonly needs: string;
    readonly figures: readonly LabelledFigure[];
    readonly parts: readonly Link[];
  }[];
  /** As many as a page of a list has, with where the others are. */
  readonly entries: readonly EntryView[];
  readonly allEntries: Link | null;
  /** Where its examples stand side by side. */
  readonly comparisons: Link | null;
  /** SVG. */
  readonly likeness: string | null;
  readonly likenessMethod: Link;
  readonly reallocation: ReallocationView | null;
  readonly siblings: readonly Link[];
  readonly sources: readonly Link[];
  readonly cite: CiteView;
}

export interface SerialRow {
  readonly range: string;
  readonly made: string | null;
  readonly source: Link | null;
  readonly page: string | null;
  readonly remarks: string;
}

function serialRow(range: PublishedSerialRange, index: CollectionIndex): SerialRow {
  const { words } = index;
  const say = words.pages.variant;
  return {
    range: say.rangeFrom(range.prefix, range.from, range.to),
    made: range.made && words.date(range.made),
    source: range.source === null ? null : sourceLink(range.source, index),
    page: range.page === null ? null : say.page(range.page),
    remarks: [range.skipped ? say.skipped : null, range.note].filter((text) => text !== null).join("; "),
  };
}

/** New offers of the log of which it is not certain that they lie within the years watched. */
function offersNotCounted({ sightings, rarity: { appearance } }: PublishedVariant): number {
  const { offers } = appearance.inputs;
  if (appearance.value === null || typeof offers !== "number") return 0;
  return sightings.filter(({ kind, relisted }) => kind === "offer" && !relisted).length - offers;
}

export function variantPage(variant: PublishedVariant, index: CollectionIndex): VariantPage {
  const { collection, words, families, items } = index;
  const { numbers, pages } = words;
  const say = pages.variant;
  const address = addresses.variant(variant.id);
  const issued = variant.issued && words.date(variant.issued);
  const family = families.get(variant.family.id);
  const { rarity } = variant;
  const offersLeft = offersNotCounted(variant);
  const markdown = (text: string | null) =>
    text === null ? "" : renderMarkdown(text, { page: address, below: 2, index });
  const draw = (plot: keyof typeof variantPlots, idPrefix: string) =>
    drawing({ kind: "variant", variant, plot }, index, { idPrefix });

  return {
    kind: "variant",
    address,
    title: variant.name,
    description: say.description(variant.name, issued),
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.families, name: pages.family.title },
      { address: addresses.family(variant.family.id), name: variant.family.name },
    ],
    linkedData: linkedData(collection, "ProductModel", address, {
      name: variant.name,
      description: say.description(variant.name, issued),
      manufacturer: family?.maker ? { "@type": "Organization", name: family.maker } : null,
      isVariantOf: familyGroup(collection, variant.family),
    }),
    id: variant.id,
    family: { address: addresses.family(variant.family.id), name: variant.family.name },
    extends: variant.extends && {
      address: addresses.variant(variant.extends.id),
      name: variant.extends.name,
    },
    issued,
    text: markdown(variant.description) + markdown(variant.note),
    figures: variantFigures(variant, index),
    class: classView(variant, collection, say),
    conflict: conflictWithMade(rarity.survivors),
    sightings: {
      counted: [
        countedInWords(variant, index),
        ...(rarity.sightings > 0 ? [pages.sightings.counted] : []),
        ...(offersLeft > 0 ? [say.offersLeft(offersLeft)] : []),
      ],
      log: { address: addresses.sightingsOf(variant.id), name: say.seeLog },
      plot: draw("sightings", "sightings"),
    },
    hazards: hazardViews(variant.hazards, variant.parts),
    features: variant.features.map(({ id, name, values }) => ({
      name,
      found: values.map(plain).join(pages.item.or),
      look: family?.features.find((feature) => feature.id === id)?.look ?? null,
    })),
    plan: draw("case-plan", "plan"),
    planNote: planNote(variant.parts, words),
    partsNote: say.partsNote(
      variant.parts.reduce((total, { quantity }) => total + quantity, 0),
      variant.parts.length,
    ),
    groups: groupParts(variant.parts).map(({ name, parts }) => ({
      name,
      parts: parts.map((part) => ({
        id: part.id,
        name: part.name,
        quantity: numbers.count(part.quantity),
        standing: pages.standings[part.standing],
        weight: numbers.quantity(part.weight),
        marks: part.marks.map((mark) => markOfSet(mark, `(${pages.nameInText(pages.item.set)})`)),
        look: part.look,
        note: part.note,
        hazards: namedHazards(part.hazards, variant.hazards),
        rate: rateView(part.rate, words),
      })),
    })),
    rates: draw("parts", "rates"),
    rateMethod: { address: addresses.method("wilson"), name: words.methods.wilson.name },
    serials: variant.serials.map((range) => serialRow(range, index)),
    partSerials: variant.parts
      .filter((part) => part.serials.length > 0)
      .map((part) => ({ part: part.name, ranges: part.serials.map((range) => serialRow(range, index)) })),
    serialPlot: draw("serials", "serials"),
    levels: variant.levels.map(({ id: level, name, parts }) => ({
      name,
      needs: say.levelNeeds(parts.length),
      figures: levelFigures(variant, level, index),
      parts: parts.map((id) => ({
        address: `#part-${id}`,
        name: variant.parts.find((part) => part.id === id)?.name ?? id,
      })),
    })),
    allEntries:
      variant.items.length > entriesOnPage
        ? { address: addresses.itemsOfVariant(variant.id), name: pages.finder.ofVariant(variant.name) }
        : null,
    comparisons:
      variant.items.length > 1
        ? { address: `${addresses.comparisons}#${comparedPlace(variant.id)}`, name: pages.compare.sideBySide }
        : null,
    likeness: draw("likeness", "likeness"),
    likenessMethod: { address: addresses.method("likeness"), name: pages.methods.title },
    entries: variant.items.slice(0, entriesOnPage).flatMap(({ id }) => {
      const item = items.get(id);
      return item ? [entryView(item, index)] : [];
    }),
    reallocation: reallocationView(variant, index),
    siblings: (family?.variants ?? [])
      .filter(({ id }) => id !== variant.id)
      .map(({ id, name }) => ({ address: addresses.variant(id), name })),
    sources: [
      ...new Set([
        ...variant.sources,
        ...rarity.made.sources,
        ...[...variant.serials, ...variant.parts.flatMap(({ serials }) => serials)].flatMap(
          ({ source }) => source ?? [],
        ),
        ...citedIn(variant.description),
        ...citedIn(variant.note),
      ]),
    ].map((id) => sourceLink(id, index)),
    cite: citeView(
      {
        id: variant.id,
        title: variant.name,
        authors: [],
        updated: variant.revisions[0]?.date ?? null,
        revisions: variant.revisions,
        address,
        data: [dataLink(addresses.variantData(variant.id))],
      },
      index,
    ),
  };
}
