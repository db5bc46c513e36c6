import path from "node:path";
import type { Site } from "../../../templates/render-page.ts";
import { type Templates, templates } from "../../../templates/templates.ts";
import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import { checkSettings } from "../../publication/check-settings.ts";
import { type HiddenSerial, hiddenSerials } from "../../publication/masking.ts";
import { publishCollection } from "../../publication/publish-collection.ts";
import type { Audience, PublishedCollection } from "../../publication/published.ts";
import type { Collection } from "../../records/collection.ts";
import { collectionFrom } from "../../records/intake/collection-from.ts";
import type { SourceDocument } from "../../source/document.ts";
import { recordsIn } from "../../source/read-records.ts";
import type { CollectionTexts } from "../../source/read-texts.ts";
import { recordValidator } from "../../validation/record-validator.ts";
import { wordsFor } from "../../words/languages.ts";
import { type Assets, readAssets } from "../assets/assets.ts";
import { themeFiles } from "../assets/theme-files.ts";
import { refusedFiles } from "../checks/refused-files.ts";
import type { SharedContent } from "../groups/family-groups.ts";
import type { MentionedSerial } from "../groups/mentioned-serials.ts";
import { misplacedTemplates } from "../overrides/misplaced-templates.ts";
import { templateOverrides } from "../overrides/template-overrides.ts";

/** What every page of a site has in common, before any family is looked at. */
export interface SiteFrame {
  readonly root: string;
  readonly audience: Audience;
  /** Settings, articles, sources; no family and no item. */
  readonly collection: Collection;
  readonly settingsDocument: SourceDocument | undefined;
  readonly published: PublishedCollection;
  /** Serials that what all families share must not tell on their pages. */
  readonly hidden: readonly HiddenSerial[];
  /** The same, and those that articles must not tell. */
  readonly hiddenInArticles: readonly HiddenSerial[];
  readonly diagnostics: readonly Diagnostic[];
  /** Files of the theme that cannot be shown. */
  readonly refused: readonly Diagnostic[];
  readonly assets: Assets;
  /** For templates; without a search, which only the pages of the whole have. */
  readonly site: Site;
}

const nothingAssessed = {
  variants: new Map(),
  items: new Map(),
  families: new Map(),
  comparisons: [],
  watched: null,
};

/** Null where there are not even sound settings. */
export async function siteFrame(
  root: string,
  audience: Audience,
  texts: CollectionTexts,
  { shared, articles, serialsInShared, serialsInArticles, itemCount }: SharedContent,
): Promise<SiteFrame | null> {
  const own = [...shared, ...articles];
  const read = recordsIn({
    ...texts,
    texts: own,
    files: texts.files.filter(({ file }) => own.some((text) => text.file === file)),
  });
  const { collection, diagnostics } = collectionFrom(read, recordValidator(), itemCount);
  const found = [...read.diagnostics, ...diagnostics, ...misplacedTemplates(root)];
  if (!collection || found.some(isError)) return null;
  const settingsDocument = read.records.find(({ kind }) => kind === "collection")?.document;
  if (settingsDocument) found.push(...checkSettings(collection, settingsDocument));
  const words = wordsFor(collection.settings.language);
  const { publish } = collection.settings;
  const hiddenOf = (told: readonly MentionedSerial[]): HiddenSerial[] =>
    hiddenSerials(told.map((each) => ({ serial: each.serial, publish: { ...publish, ...each.publish } })));
  const hidden = hiddenOf(serialsInShared);
  const hiddenInArticles = [...hidden, ...hiddenOf(serialsInArticles)];
  const published = publishCollection(collection, nothingAssessed, audience, words, hiddenInArticles);
  const themed = await themeFiles(root, published.settings.theme);
  const refused = refusedFiles({ collection }, themed.refused);
  const assets = readAssets(root, published.settings.theme, words.language, themed);
  const withTheirs: Templates = { ...templates, ...(await templateOverrides(path.join(root, "templates"))) };
  return {
    root,
    audience,
    collection,
    settingsDocument,
    published,
    hidden,
    hiddenInArticles,
    diagnostics: found,
    refused,
    assets,
    site: {
      templates: withTheirs,
      words,
      settings: published.settings,
      audience,
      hasArticles: published.articles.length > 0,
      logo: themed.logo,
      assets: {
        style: assets.style,
        printStyle: assets.printStyle,
        scripts: assets.scripts,
        words: assets.words,
        preload: assets.preload,
        search: null,
      },
    },
  };
}
