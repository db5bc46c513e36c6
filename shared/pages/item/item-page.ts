import { isMasked } from "../../publication/masked-sign.ts";
import type { PublishedItem, PublishedVariant } from "../../publication/published.ts";
import { itemFigures } from "../../words/figure-names.ts";
import type { Words } from "../../words/words.ts";
import { addresses } from "../addresses/addresses.ts";
import { hasDisplayCard } from "../addresses/has-display-card.ts";
import { type CiteView, citeView, dataLink } from "../citation/cite-view.ts";
import { citedIn } from "../citation/cited-pages.ts";
import { absoluteAddress, familyGroup, linkedData } from "../citation/linked-data.ts";
import { isoDate } from "../citation/plain-date.ts";
import { sourceLink } from "../citation/source-reference.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link, PageHead } from "../page.ts";
import { renderMarkdown } from "../prose/markdown.ts";
import {
  type ClassView,
  classView,
  countedInWords,
  inAddress,
  type LabelledFigure,
  survivorsInBrief,
  variantFigures,
} from "../variant/variant-rarity.ts";
import { type CompletenessView, completenessView } from "../views/completeness-view.ts";
import { levelPhrase, placePhrase } from "../views/completeness-words.ts";
import { datedInWords, datedUnits, isDoubtful } from "../views/dated-units.ts";
import { drawing, serialOfItem } from "../views/drawings.ts";
import { enquiryLink } from "../views/enquiry-link.ts";
import { figureView } from "../views/figure-view.ts";
import { type HazardView, hazardViews } from "../views/hazard-view.ts";
import { type PartGroup, partGroups } from "../views/item-parts.ts";
import { elseAmiss, missingParts } from "../views/missing-parts.ts";
import { isNoneIssued, noneMissing } from "../views/none-missing.ts";
import { planNote } from "../views/plan-note.ts";
import { type CompletingView, completingView, type NearestView, nearestView } from "./item-completing.ts";
import { type ConfidentialView, confidentialView } from "./item-confidential.ts";
import { type CustodyView, custodyView } from "./item-custody.ts";
import { type FateView, fateView } from "./item-fate.ts";
import { type FindingList, findingLists } from "./item-findings.ts";
import { type IdentityView, identityView } from "./item-identity.ts";
import { itemParticulars, type Particular } from "./item-particulars.ts";
import { type PhotoView, photoViews, placesSeen } from "./item-photographs.ts";
import { momentsOf, type RecordingView, recordingView } from "./item-recording.ts";
import { siblingsOf } from "./item-siblings.ts";
import { offSheet } from "./off-sheet.ts";

export interface ItemPage extends PageHead {
  readonly kind: "item";
  readonly id: string;
  readonly variant: Link;
  readonly family: Link;
  readonly fate: FateView | null;
  readonly particulars: readonly Particular[];
  /** Where to write about one that is offered, lost or stolen. */
  readonly enquiries: Link | null;
  readonly identity: IdentityView;
  readonly brief: {
    readonly complete: string | null;
    readonly level: string;
    readonly surviving: string;
    /** The range within `surviving`, which no line should part. */
    readonly survivingRange: string | null;
    readonly class: string | null;
    readonly rank: string | null;
    readonly missing: readonly Link[];
    /** What is said where none is. */
    readonly noneMissing: string;
    readonly more: string | null;
    readonly amiss: string | null;
  };
  readonly photos: readonly PhotoView[];
  readonly recording: RecordingView | null;
  /** SVG. */
  readonly plan: string | null;
  readonly planNote: string;
  readonly completeness: CompletenessView;
  readonly findings: readonly FindingList[];
  /** What is said in their place of one that was issued none of the parts; null of any other. */
  readonly noPartIssued: string | null;
  readonly rarity: {
    readonly here: readonly LabelledFigure[];
    readonly rank: string | null;
    readonly variant: readonly LabelledFigure[];
    readonly class: ClassView | null;
    /** What the figures are made from, and as of when; null where nothing is said of the variant. */
    readonly counted: string | null;
    readonly sightings: Link;
  };
  /** HTML: what its author wrote about it. */
  readonly text: string;
  readonly groups: readonly PartGroup[];
  readonly rateMethod: Link;
  readonly labels: readonly {
    readonly kind: string;
    readonly where: string | null;
    readonly text: readonly string[];
    readonly part: Link | null;
    readonly note: string | null;
  }[];
  readonly dating: {
    readonly issued: string | null;
    readonly serial: string | null;
    /** SVG; null where its serial is not told, or lies in no range. */
    readonly serialPlot: string | null;
    readonly parts: readonly {
      readonly part: Link;
      /** What each of its serials says, and of which units. */
      readonly dated: readonly {
        readonly units: string | null;
        readonly verdict: string;
        readonly doubt: boolean;
      }[];
    }[];
    readonly caveats: readonly string[];
  };
  readonly custody: CustodyView;
  readonly hazards: readonly HazardView[];
  readonly completing: CompletingView;
  readonly nearest: readonly NearestView[];
  /** The other outfits of its variant, each with where the two stand side by side; of many only the list. */
  readonly siblings: readonly {
    readonly outfit: Link;
    /** Where the evidence speaks against its label. */
    readonly verdict: string | null;
    readonly beside: Link;
  }[];
  readonly allSiblings: Link;
  readonly sources: readonly Link[];
  readonly cite: CiteView;
  readonly displayCard: Link | null;
  /** The photographs for other programs, where there are any. */
  readonly manifest: Link | null;
  /** What paper leaves out. */
  readonly offSheet: string | null;
  readonly confidential: ConfidentialView | null;
}

const shownInBrief = 6;

/** The numbers of an interval alone, as the phrase of the figure has them. */
function rangeOf(
  figure: PublishedVariant["rarity"]["survivors"] | undefined,
  { interval, numbers }: Words,
): string | null {
  if (!figure || figure.low === null || figure.high === null) return null;
  return interval(numbers.count(figure.low), numbers.count(figure.high));
}

/** schema.org; null where it is not to be had, or nobody says for how much. */
const offerOf = ({ status, price }: PublishedItem, url: string) =>
  status === "offered" && price
    ? {
        "@type": "Offer",
        url,
        price: price.amount,
        priceCurrency: price.currency,
        availability: "https://schema.org/InStock",
      }
    : null;

export function itemPage(item: PublishedItem, index: CollectionIndex): ItemPage {
  const { collection, words, variants } = index;
  const { pages } = words;
  const say = pages.item;
  const address = addresses.item(item.id);
  const variant = variants.get(item.variant.id);
  const completeness = completenessView(item, index);
  const findings = findingLists(item, words);
  const identity = identityView(item, index);
  const { rank } = item.rarity;
  const placed = rank && placePhrase(rank, words);
  const classed = variant ? classView(variant, collection, pages.variant) : null;
  const nameOf = (part: string) => item.parts.find(({ id }) => id === part)?.name ?? part;
  const partLink = (part: string): Link => ({ address: `#part-${part}`, name: nameOf(part) });
  const photos = photoViews(item, index.images, partLink);
  const recording = recordingView(item, index.recordings, partLink);
  const card = index.previewPictures.get(item.id);
  const missing = missingParts(item, words);
  const fate = fateView(item, words);
  const summary = say.description(
    item.variant.name,
    pages.verdicts[item.identification.verdict].short,
    completeness.weighted,
  );
  const description = fate ? `${fate.headline}. ${summary}` : summary;
  const dateModified = isoDate(item.updated);
  const completing = completingView(item, index);
  const figure = (id: string, label: string, of: PublishedItem["rarity"]["asComplete"]) => ({
    id,
    label,
    figure: figureView(of, index),
  });

  return {
    kind: "item",
    address,
    title: item.title,
    description,
    trail: [
      { address: addresses.home, name: collection.settings.title },
      { address: addresses.items, name: pages.catalogue.title },
    ],
    linkedData: linkedData(collection, "IndividualProduct", address, {
      name: item.title,
      description,
      sku: item.id,
      image:
        photos.length === 0
          ? null
          : photos.map(({ largest }) => absoluteAddress(collection.settings.url, largest)),
      category: item.variant.name,
      serialNumber: item.serial === null || isMasked(item.serial) ? null : item.serial,
      isVariantOf: familyGroup(collection, item.family),
      offers: offerOf(item, absoluteAddress(collection.settings.url, address)),
      subjectOf: {
        "@type": "Dataset",
        name: item.title,
        description,
        ...(dateModified === null ? {} : { dateModified }),
        distribution: {
          "@type": "DataDownload",
          contentUrl: absoluteAddress(collection.settings.url, addresses.itemData(item.id)),
          encodingFormat: "application/json",
        },
      },
    }),
    preview: card ? { ...card, alt: pages.photographs.card.alt(item.title, completeness.weighted) } : null,
    id: item.id,
    variant: { address: addresses.variant(item.variant.id), name: item.variant.name },
    family: { address: addresses.family(item.family.id), name: item.family.name },
    fate,
    particulars: itemParticulars(item, words),
    enquiries:
      item.status === "offered" || item.status === "lost" || item.status === "stolen"
        ? enquiryLink(collection.settings.enquiries, item.title)
        : null,
    identity,
    brief: {
      complete: completeness.weighted,
      level: `${pages.completeness.level}: ${levelPhrase(item, words)}`,
      surviving: pages.capital(survivorsInBrief(variant?.rarity.survivors, words)),
      survivingRange: rangeOf(variant?.rarity.survivors, words),
      class: classed?.named ?? null,
      rank: placed,
      missing: missing
        .slice(0, shownInBrief)
        .map(({ part, name }) => ({ address: partLink(part).address, name })),
      noneMissing: noneMissing(item, words),
      more: missing.length > shownInBrief ? say.andMore(missing.length - shownInBrief) : null,
      amiss: elseAmiss(item, words),
    },
    photos,
    recording,
    plan: drawing({ kind: "item", item, plot: "case-plan" }, index, { idPrefix: "plan" }),
    planNote: planNote(item.parts, words),
    completeness,
    findings,
    noPartIssued: isNoneIssued(item) && findings.length === 0 ? say.noPartIssued : null,
    rarity: {
      here: itemFigures.map((name) => figure(inAddress(name), words.figures.item[name], item.rarity[name])),
      rank: placed,
      variant: variant ? variantFigures(variant, index) : [],
      class: classed,
      counted: variant ? countedInWords(variant, index) : null,
      sightings: { address: addresses.sightingsOf(item.variant.id), name: pages.variant.seeLog },
    },
    text: renderMarkdown(item.description, { page: address, below: 2, index }),
    groups: partGroups(item, words, placesSeen(photos, words), momentsOf(recording, words)),
    rateMethod: { address: addresses.method("wilson"), name: words.methods.wilson.name },
    labels: item.labels.map((label) => ({
      ...label,
      part: label.part === null ? null : partLink(label.part),
    })),
    dating: {
      issued: item.dating.issued && words.date(item.dating.issued),
      serial: item.dating.serial.made && words.date(item.dating.serial.made),
      serialPlot: serialOfItem(item, index),
      parts: item.parts
        .filter(({ dating }) => dating !== null)
        .map((part) => ({
          part: partLink(part.id),
          dated: datedUnits(part, words).map((units) => ({
            units: datedInWords(units, words),
            verdict: say.datingVerdicts[units.verdict],
            doubt: isDoubtful(units),
          })),
        })),
      caveats: item.dating.caveats,
    },
    custody: custodyView(item, index),
    hazards: hazardViews(item.hazards, item.parts),
    completing,
    nearest: nearestView(item, index),
    siblings: siblingsOf(item, index),
    allSiblings: { address: addresses.itemsOfVariant(item.variant.id), name: say.allOfVariant },
    sources: sourcesOfEntry(item, variant?.sources ?? []).map((id) => sourceLink(id, index)),
    cite: citeView(
      {
        id: item.id,
        title: item.title,
        authors: [],
        updated: item.updated,
        revisions: item.revisions,
        address,
        data: [dataLink(addresses.itemData(item.id)), dataLink(addresses.variantData(item.variant.id))],
      },
      index,
    ),
    displayCard: hasDisplayCard(item, index)
      ? { address: addresses.displayCard(item.id), name: pages.displayCard.link }
      : null,
    manifest:
      photos.length === 0
        ? null
        : { address: addresses.manifest(item.id), name: pages.photographs.manifest.link },
    offSheet: offSheet(
      {
        photographs: photos.length,
        isRecorded: recording !== null,
        features: identity.observed.length,
        isCompletable: completing.wants.length + completing.spares.length > 0,
        others: item.nearest.length,
        revisions: item.revisions.length,
      },
      words,
    ),
    confidential: confidentialView(item, index),
  };
}

/** Everything that the entry rests on: its custody, its figures, its variant. */
function sourcesOfEntry(item: PublishedItem, ofVariant: readonly string[]): string[] {
  const { events } = item.provenance;
  return [
    ...new Set([
      ...events.flatMap(({ source }) => (source === null ? [] : [source])),
      ...ofVariant,
      ...citedIn(item.description),
      ...Object.values(item.rarity).flatMap((figure) =>
        figure && "sources" in figure ? figure.sources : [],
      ),
    ]),
  ];
}
