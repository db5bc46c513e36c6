import type { ComparisonRow, PublishedFamily, PublishedHazard } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import { type CiteView, citeView, dataLink } from "../citation/cite-view.ts";
import { citedIn } from "../citation/cited-pages.ts";
import { linkedData } from "../citation/linked-data.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import type { Link, PageHead } from "../page.ts";
import { plainText, renderMarkdown } from "../prose/markdown.ts";
import { serialsOfFamily } from "../views/drawings.ts";
import { type FigureView, figureView } from "../views/figure-view.ts";
import { type HazardView, hazardViews } from "../views/hazard-view.ts";
import { plain } from "../views/item-parts.ts";
import { type FamilyKeyView, familyKeyView } from "./family-key-view.ts";

export interface ComparisonTable {
  readonly features: readonly ComparisonLine[];
  readonly parts: readonly ComparisonLine[];
}

export interface ComparisonLine {
  readonly name: string;
  readonly cells: readonly string[];
}

export interface KnownVariant {
  readonly variant: Link;
  readonly issued: string | null;
  readonly made: FigureView;
  readonly survivors: FigureView;
  readonly sightings: Link;
  readonly here: string;
}

export interface FamilyPage extends PageHead {
  readonly kind: "family";
  readonly id: string;
  readonly maker: string | null;
  /** HTML. */
  readonly text: string;
  readonly variants: readonly Link[];
  readonly known: readonly KnownVariant[];
  readonly differing: ComparisonTable;
  readonly common: ComparisonTable;
  /** Null where they have nothing in common. */
  readonly commonTitle: string | null;
  readonly key: FamilyKeyView | null;
  /** SVG; null where no range of serials is known. */
  readonly serialPlot: string | null;
  readonly hazards: readonly HazardView[];
  readonly features: readonly {
    readonly id: string;
    readonly name: string;
    readonly values: string;
    readonly look: string | null;
    readonly effort: string;
    readonly note: string | null;
  }[];
  readonly sources: readonly Link[];
  readonly cite: CiteView;
}

export interface FamiliesPage extends PageHead {
  readonly kind: "families";
  readonly families: readonly {
    readonly id: string;
    readonly family: Link;
    readonly maker: string | null;
    /** HTML. */
    readonly text: string;
    readonly variants: readonly { readonly variant: Link; readonly issued: string | null }[];
  }[];
}

export function familyPage(family: PublishedFamily, index: CollectionIndex): FamilyPage {
  const { collection, words, variants } = index;
  const { pages } = words;
  const say = pages.family;
  const address = addresses.family(family.id);
  const description =
    family.description === null ? say.description : plainText(family.description, { index });
  const table = (differs: boolean): ComparisonTable =>
    comparisonTable(
      family.comparison.filter((row) => row.differs === differs),
      index,
    );
  const common = table(false);
  const inCommon = common.features.length + common.parts.length;
  const members = family.variants.flatMap(({ id }) => variants.get(id) ?? []);
  return {
    kind: "family",
    address,
    title: family.name,
    description: firstSentence(description),
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.families, name: say.title },
    ],
    linkedData: linkedData(collection, "ProductGroup", address, {
      name: family.name,
      description: firstSentence(description),
      productGroupID: family.id,
      manufacturer: family.maker === null ? null : { "@type": "Organization", name: family.maker },
    }),
    id: family.id,
    maker: family.maker,
    text:
      family.description === null
        ? ""
        : renderMarkdown(family.description, { page: address, below: 2, index }),
    variants: family.variants.map(({ id, name }) => ({ address: addresses.variant(id), name })),
    known: members.map((variant) => ({
      variant: { address: addresses.variant(variant.id), name: variant.name },
      issued: variant.issued && words.date(variant.issued),
      made: figureView(variant.rarity.made, index),
      survivors: figureView(variant.rarity.survivors, index),
      sightings: {
        address: addresses.sightingsOf(variant.id),
        name: words.numbers.count(variant.rarity.sightings),
      },
      here: words.numbers.count(variant.items.length),
    })),
    differing: table(true),
    common,
    key: familyKeyView(family, index),
    serialPlot: serialsOfFamily(family, members, index),
    commonTitle: inCommon > 0 ? say.rest(inCommon) : null,
    hazards: hazardViews(
      mergeHazards(members.map(({ hazards }) => hazards)),
      members.flatMap(({ parts }) => parts),
    ).map((hazard) => ({ ...hazard, concerns: hazard.concerns.map(({ name }) => ({ name, address: "" })) })),
    features: family.features.map((feature) => ({
      ...feature,
      values: pages.list(feature.values.map(plain)),
      effort: pages.efforts[feature.effort] ?? "",
    })),
    // What its variants rest on is told here too: their ranges and numbers stand on this page.
    sources: [
      ...new Set([
        ...family.sources,
        ...citedIn(family.description),
        ...members.flatMap(({ sources }) => sources),
      ]),
    ].map((id) => sourceLink(id, index)),
    cite: citeView(
      {
        id: family.id,
        title: family.name,
        authors: [],
        updated: family.revisions[0]?.date ?? null,
        revisions: family.revisions,
        address,
        data: [
          dataLink(addresses.familyData(family.id)),
          ...members.map(({ id }) => dataLink(addresses.variantData(id))),
        ],
      },
      index,
    ),
  };
}

export function comparisonTable(rows: readonly ComparisonRow[], index: CollectionIndex): ComparisonTable {
  const lines = (kind: ComparisonRow["kind"]) =>
    rows.filter((row) => row.kind === kind).map((row) => comparisonLine(row, index));
  return { features: lines("feature"), parts: lines("part") };
}

function comparisonLine({ kind, name, cells }: ComparisonRow, { words }: CollectionIndex): ComparisonLine {
  const { pages, numbers } = words;
  const say = pages.family;
  return {
    name,
    cells: cells.map((cell) => {
      if (cell === null) return kind === "feature" ? say.unstated : say.none;
      if ("values" in cell) return cell.values.map(plain).join(pages.item.or);
      const standing = cell.standing === "issued" ? "" : pages.standings[cell.standing];
      return say.cell(numbers.count(cell.quantity), standing);
    }),
  };
}

/** The same hazard in several variants is one caution, with the parts of all. */
function mergeHazards(lists: readonly (readonly PublishedHazard[])[]): PublishedHazard[] {
  const merged = new Map<string, PublishedHazard>();
  for (const hazard of lists.flat()) {
    const known = merged.get(hazard.id);
    merged.set(hazard.id, {
      ...hazard,
      parts: [...new Set([...(known?.parts ?? []), ...hazard.parts])],
      extras: [],
    });
  }
  return [...merged.values()];
}

export const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text;

export function familiesPage({ collection, words, listed }: CatalogueIndex): FamiliesPage {
  const say = words.pages.family;
  return {
    kind: "families",
    address: addresses.families,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.families, {
      name: say.title,
      description: say.description,
    }),
    families: listed.map(({ id, name, maker, text, variants }) => ({
      id,
      family: { address: addresses.family(id), name },
      maker,
      text,
      variants: variants.map((variant) => ({
        variant: { address: addresses.variant(variant.id), name: variant.name },
        issued: variant.issued && words.date(variant.issued),
      })),
    })),
  };
}
