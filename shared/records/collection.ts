import type { EdtfDate } from "../dates/edtf-interval.ts";
import type { SourceDocument } from "../source/document.ts";
import type { Article } from "./article.ts";
import type { Family } from "./family.ts";
import type { Item } from "./item.ts";
import type { Hazard, Scale } from "./register.ts";
import type { Sighting } from "./sighting.ts";
import type { Source } from "./source.ts";
import { asDate } from "./text.ts";
import type { Variant } from "./variant.ts";
import { publishing } from "./written-item.ts";

export interface Settings {
  readonly title: string;
  readonly url: string;
  readonly language: string;
  readonly confidence: number;
  readonly watching: EdtfDate | undefined;
  readonly scale: string;
  readonly publish: Item["publish"];
  readonly theme: Theme;
  readonly description: string | undefined;
  readonly notice: string | undefined;
  readonly publisher: string | undefined;
  /** An e-mail address, or the address of a page. */
  readonly enquiries: string | undefined;
  readonly rights: string | undefined;
  readonly fieldReference: boolean;
  readonly document: SourceDocument;
}

/** The name of a family of type, or files. */
export type ThemeType =
  | string
  | { readonly regular: string; readonly italic?: string; readonly bold?: string };

/** What of the look is chosen, as the schema describes it. */
export interface Theme {
  readonly paper?: string;
  readonly ink?: string;
  readonly "ink-soft"?: string;
  readonly accent?: string;
  readonly "paper-dark"?: string;
  readonly "ink-dark"?: string;
  readonly "ink-soft-dark"?: string;
  readonly "accent-dark"?: string;
  readonly reading?: ThemeType;
  readonly data?: ThemeType;
  readonly logo?: string;
  readonly "logo-dark"?: string;
}

interface RawSettings {
  title: string;
  url?: string;
  language?: string;
  confidence?: number;
  watching?: string | number;
  scale?: string;
  publish?: Partial<Item["publish"]>;
  theme?: Settings["theme"];
  description?: string;
  notice?: string;
  publisher?: string;
  enquiries?: string;
  rights?: string;
  "field-reference"?: boolean;
}

/** Everything that was read and resolved; nothing in it changes after this. */
export interface Collection {
  readonly settings: Settings;
  readonly families: ReadonlyMap<string, Family>;
  readonly variants: ReadonlyMap<string, Variant>;
  readonly items: ReadonlyMap<string, Item>;
  readonly sightings: readonly Sighting[];
  readonly articles: ReadonlyMap<string, Article>;
  readonly sources: ReadonlyMap<string, Source>;
  /** Where a bibliography, or the id of a source, could not be read: it may list whatever is not known otherwise. */
  readonly isMissingSources: boolean;
  readonly hazards: ReadonlyMap<string, Hazard>;
  /** The same of the hazard register. */
  readonly isMissingHazards: boolean;
  readonly scales: ReadonlyMap<string, Scale>;
}

const publishedUnlessSaid: Item["publish"] = { serial: "masked", price: "hidden" };

export function settingsFrom(document: SourceDocument): Settings {
  const raw = document.data as RawSettings;
  return {
    title: raw.title,
    url: (raw.url ?? "http://localhost/").replace(/\/*$/, "/"),
    language: raw.language ?? "en",
    confidence: raw.confidence ?? 0.95,
    watching: asDate(raw.watching),
    scale: raw.scale ?? "universal",
    publish: publishing(document, raw.publish, publishedUnlessSaid),
    theme: raw.theme ?? {},
    description: raw.description,
    notice: raw.notice,
    publisher: raw.publisher,
    enquiries: raw.enquiries,
    rights: raw.rights,
    fieldReference: raw["field-reference"] ?? false,
    document,
  };
}
