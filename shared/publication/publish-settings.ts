import type { Collection } from "../records/collection.ts";
import type { Scale } from "../records/register.ts";
import { inLanguage } from "./in-language.ts";
import type { Redact } from "./masking.ts";
import type { Shown } from "./publish-variant.ts";
import type { PublishedCollection } from "./published.ts";

export const publishSettings = (
  settings: Collection["settings"],
  shown: Shown,
  free: Redact,
): PublishedCollection["settings"] => ({
  title: free(settings.title),
  url: settings.url,
  language: settings.language,
  confidence: settings.confidence,
  watching: settings.watching?.text ?? null,
  description: shown(settings.description),
  notice: shown(settings.notice),
  publisher: shown(settings.publisher),
  enquiries: shown(settings.enquiries),
  rights: shown(settings.rights),
  fieldReference: settings.fieldReference,
  theme: settings.theme,
});

/** The scale that rarity is told by. */
export const publishScale = (
  scale: Scale | undefined,
  language: string,
  shown: Shown,
  free: Redact,
): PublishedCollection["scale"] =>
  scale
    ? {
        id: scale.id,
        name: free(scale.name),
        citation: shown(scale.citation),
        note: shown(scale.note),
        classes: scale.classes.map(({ id, words, translated }) => ({
          id,
          words: shown(inLanguage(translated, language) ?? words),
        })),
      }
    : null;
