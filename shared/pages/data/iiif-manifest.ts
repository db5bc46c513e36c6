import type { ImageFile, ImageSet } from "../../images/image-set.ts";
import type { Media } from "../../images/media.ts";
import type { Recording } from "../../images/recordings/recording-set.ts";
import type { PublishedCollection, PublishedItem } from "../../publication/published.ts";
import { isSpoken } from "../../words/languages.ts";
import type { Words } from "../../words/words.ts";
import { addresses } from "../addresses/addresses.ts";
import { absoluteAddress } from "../citation/linked-data.ts";
import { itemParticulars } from "../item/item-particulars.ts";
import { shareInterval } from "../views/completeness-words.ts";
import { stateInWords } from "../views/item-parts.ts";
import { licenceAddress } from "./licence-address.ts";
import { jsonFile, type OutputFile } from "./output-file.ts";

type Photo = PublishedItem["photos"][number];

type LanguageMap = Readonly<Record<string, readonly string[]>>;

/** What the parts of a manifest need of one another. */
interface Frame {
  readonly item: PublishedItem;
  readonly words: Words;
  readonly absolute: (address: string) => string;
  /** A language map (4.4) of plain text, in the language of the records. */
  readonly text: (...values: readonly string[]) => LanguageMap;
  /** The same of the site's own words, which may be in another. */
  readonly said: (value: string) => LanguageMap;
  /** Of the records and, where it is another, of the site's own words. */
  readonly languages: readonly string[];
}

/** Plain text that begins and ends like markup is told from it by a space at its end (4.5). */
const plainText = (value: string): string => (/^<.*>$/s.test(value) ? `${value} ` : value);

/**
 * `/iiif/<id>/manifest.json`, for an item with photographs; null for one without.
 * Source  IIIF Presentation API 3.0; the sections are its own.
 */
export function iiifManifest(
  item: PublishedItem,
  collection: PublishedCollection,
  words: Words,
  { images, recordings }: Pick<Media, "images" | "recordings">,
): OutputFile | null {
  const photos = item.photos.flatMap((photo) => {
    const image = images.get(photo.original);
    return image ? [{ photo, image }] : [];
  });
  if (photos.length === 0) return null;
  return jsonFile(
    addresses.manifest(item.id),
    manifest(item, photos, recordings.get(item.id), collection, words),
  );
}

function manifest(
  item: PublishedItem,
  photos: readonly { readonly photo: Photo; readonly image: ImageSet }[],
  recording: Recording | undefined,
  { settings }: PublishedCollection,
  words: Words,
): unknown {
  const { item: say, photographs, verdicts } = words.pages;
  const { language } = settings;
  const absolute = (address: string) => absoluteAddress(settings.url, address);
  const text: Frame["text"] = (...values) => ({ [language]: values.map(plainText) });
  const ownLanguage = isSpoken(language) ? language : words.language;
  const said: Frame["said"] = (value) => ({ [ownLanguage]: [plainText(value)] });
  const languages = [...new Set([language, ownLanguage])];
  const frame: Frame = { item, words, absolute, text, said, languages };
  const { weighted } = item.completeness;
  const complete = weighted && shareInterval(weighted, words);
  const facts = [
    { label: say.heldToBe, value: item.variant.name, isOurs: false },
    ...itemParticulars(item, words),
    ...(complete === null ? [] : [{ label: say.howComplete, value: complete, isOurs: true }]),
  ];
  const rights = licenceAddress(settings.rights);
  const terms = [settings.rights, settings.notice].filter((line) => line !== null);
  const page = (address: string, name: string) => ({
    id: absolute(address),
    type: "Text",
    label: text(name),
    format: "text/html",
    language: [language],
  });
  return {
    "@context": "http://iiif.io/api/presentation/3/context.json",
    id: absolute(addresses.manifest(item.id)),
    type: "Manifest",
    label: text(item.title),
    summary: said(say.description(item.variant.name, verdicts[item.identification.verdict].short, complete)),
    metadata: facts.map(({ label, value, isOurs }) => ({
      label: said(words.pages.capital(label)),
      value: isOurs ? said(value) : text(value),
    })),
    ...(rights === null ? {} : { rights }),
    ...(terms.length === 0
      ? {}
      : { requiredStatement: { label: said(photographs.manifest.terms), value: text(...terms) } }),
    ...(settings.publisher === null
      ? {}
      : {
          provider: [
            {
              id: absolute(addresses.home),
              type: "Agent",
              label: text(settings.publisher),
              homepage: [page(addresses.home, settings.title)],
            },
          ],
        }),
    homepage: [page(addresses.item(item.id), item.title)],
    seeAlso: [
      {
        id: absolute(addresses.itemData(item.id)),
        type: "Dataset",
        label: said(photographs.manifest.data),
        format: "application/json",
      },
    ],
    // How long it is nobody has measured, and what has a duration is painted on no canvas without one (5.3).
    ...(recording
      ? {
          rendering: [
            {
              id: absolute(recording.address),
              type: recording.kind === "video" ? "Video" : "Sound",
              label: said(photographs.recording[recording.kind]),
              format: recording.type,
            },
          ],
        }
      : {}),
    thumbnail: photos.slice(0, 1).map(({ image }) => picture(jpegs(image)[0] ?? image.fallback, frame)),
    items: photos.map(({ photo, image }, at) => canvas(photo, image, at + 1, frame)),
  };
}

/** Every image has JPEGs, smallest first: what every client can show. */
const jpegs = (image: ImageSet): readonly ImageFile[] =>
  image.sources.find(({ type }) => type === "image/jpeg")?.files ?? [image.fallback];

const picture = ({ address, width, height }: ImageFile, { absolute }: Frame) => ({
  id: absolute(address),
  type: "Image",
  format: "image/jpeg",
  width,
  height,
});

/** A photograph (5.3), as large as its largest file. */
function canvas(photo: Photo, image: ImageSet, place: number, frame: Frame): unknown {
  const { absolute, text, said, words, item } = frame;
  const id = absolute(`/iiif/${item.id}/canvas/${place}`);
  const files = jpegs(image);
  const { photographs } = words.pages;
  return {
    id,
    type: "Canvas",
    label: photo.caption === null ? said(photographs.manifest.canvas(place)) : text(photo.caption),
    summary: text(photo.alt),
    height: image.height,
    width: image.width,
    thumbnail: files.slice(0, 1).map((file) => picture(file, frame)),
    items: [
      {
        id: `${id}/painting`,
        type: "AnnotationPage",
        items: [
          {
            id: `${id}/painting/1`,
            type: "Annotation",
            motivation: "painting",
            body: picture(files.at(-1) ?? image.fallback, frame),
            target: id,
          },
        ],
      },
    ],
    ...(photo.callouts.length === 0
      ? {}
      : {
          annotations: [
            {
              id: `${id}/parts`,
              type: "AnnotationPage",
              label: said(photographs.manifest.parts),
              items: photo.callouts.map((callout, at) => pointedOut(callout, at + 1, id, image, frame)),
            },
          ],
        }),
  };
}

/** A part pointed out (5.6): its name and its state, at a point of the canvas. */
function pointedOut(
  { part: id, at: [x, y] }: Photo["callouts"][number],
  place: number,
  canvasId: string,
  { width, height }: ImageSet,
  { item, words, languages }: Frame,
): unknown {
  const part = item.parts.find((each) => each.id === id);
  const name = part ? `${part.name}: ${stateInWords(part, words)}` : id;
  return {
    id: `${canvasId}/parts/${place}`,
    type: "Annotation",
    motivation: "commenting",
    body: {
      type: "TextualBody",
      value: `${place}. ${name}`,
      format: "text/plain",
      // The part's name is the record's, its state the site's (a body may have several languages).
      language: languages.length === 1 ? languages[0] : languages,
    },
    target: {
      id: `${canvasId}/parts/${place}/point`,
      type: "SpecificResource",
      source: canvasId,
      // Of the IIIF annex for annotations; a fragment would have to make up an extent.
      selector: { type: "PointSelector", x: Math.round(x * width), y: Math.round(y * height) },
    },
  };
}
