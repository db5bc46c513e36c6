import type { Collection } from "../../../shared/records/collection.ts";
import type { Family } from "../../../shared/records/family.ts";
import type { Item } from "../../../shared/records/item.ts";
import type { Sighting } from "../../../shared/records/sighting.ts";
import type { Variant } from "../../../shared/records/variant.ts";
import type { SourceDocument } from "../../../shared/source/document.ts";

const document = {} as SourceDocument;

export const item = (id: string, more: Partial<Item> = {}): Item => ({
  id,
  title: id,
  variant: "a",
  serial: undefined,
  set: undefined,
  examined: undefined,
  features: new Map(),
  parts: new Map(),
  extras: [],
  labels: [],
  provenance: [],
  photos: [],
  video: undefined,
  status: "collection",
  example: undefined,
  census: true,
  assembled: [],
  updated: undefined,
  revisions: [],
  materials: undefined,
  measurements: [],
  distinguishing: [],
  storage: undefined,
  paid: undefined,
  private: undefined,
  price: undefined,
  publish: { serial: "masked", price: "hidden" },
  formerly: [],
  description: "",
  document,
  ...more,
});

const byId = <Value extends { readonly id: string }>(values: readonly Value[] = []) =>
  new Map(values.map((value) => [value.id, value]));

/** One family, "chest", unless others are given; nothing watched for, the scale that a collection has by default. */
export const collection = ({
  families = [],
  variants,
  items = [],
  sightings = [],
  ...more
}: Partial<Omit<Collection, "families" | "variants" | "items">> & {
  readonly families?: readonly Pick<Family, "id" | "features">[];
  readonly variants: readonly Variant[];
  readonly items?: readonly Item[];
  readonly sightings?: readonly Sighting[];
}): Collection => ({
  settings: {
    title: "T",
    url: "https://example.org/",
    language: "en",
    confidence: 0.95,
    watching: undefined,
    scale: "universal",
    publish: { serial: "masked", price: "hidden" },
    theme: {},
    description: undefined,
    notice: undefined,
    publisher: undefined,
    enquiries: undefined,
    rights: undefined,
    fieldReference: false,
    document,
  },
  families: byId(
    families.map((family) => ({
      name: family.id,
      maker: undefined,
      description: undefined,
      groups: new Map(),
      sources: [],
      formerly: [],
      revisions: [],
      document,
      ...family,
    })),
  ),
  variants: byId(variants),
  items: byId(items),
  sightings,
  articles: new Map(),
  sources: new Map(),
  isMissingSources: false,
  isMissingHazards: false,
  hazards: new Map(),
  scales: new Map(),
  ...more,
});
