/** A manifest as it was read back from JSON, walked without knowing what wrote it. */
export type Json = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);
export const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
export const objects = (value: unknown): readonly Json[] => listed(value).filter(isObject);
export const has = (value: Json, name: string): boolean => Object.hasOwn(value, name);

/** What to say of it, if something is wrong. */
export const fault = (wrong: boolean, what: string): readonly string[] => (wrong ? [what] : []);

export interface Found {
  readonly path: string;
  readonly value: Json;
  /** The property that holds it. */
  readonly key: string;
}

/** Every object of a manifest, itself included. */
export function* everyObject(value: unknown, path = "manifest", key = ""): Generator<Found> {
  if (Array.isArray(value)) {
    for (const [at, each] of value.entries()) yield* everyObject(each, `${path}[${at}]`, key);
  } else if (isObject(value)) {
    yield { path, value, key };
    for (const [name, below] of Object.entries(value)) yield* everyObject(below, `${path}.${name}`, name);
  }
}

type Check<Of> = (of: Of) => readonly string[];

export const everywhere =
  (check: Check<Found>): Check<unknown> =>
  (manifest) =>
    [...everyObject(manifest)].flatMap((found) => check(found).map((what) => `${found.path}: ${what}`));

export const onCanvases =
  (check: Check<Json>): Check<unknown> =>
  (manifest) =>
    isObject(manifest) ? objects(manifest.items).flatMap(check) : [];

export const annotationsIn = (...pages: readonly unknown[]): readonly Json[] =>
  pages.flatMap(objects).flatMap((page) => objects(page.items));

export const isUri = (value: unknown): value is string =>
  typeof value === "string" && /^https?:\/\//.test(value) && URL.canParse(value);

/** Well-formed by BCP 47 (RFC 5646, 2.1), as the platform reads it, or "none". */
export function isLanguage(tag: string): boolean {
  if (tag === "none") return true;
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}

export function languageMapFaults(value: unknown): readonly string[] {
  if (!isObject(value)) return ["not a JSON object by language"];
  return Object.entries(value).flatMap(([language, texts]) => [
    ...fault(!isLanguage(language), `"${language}" is no BCP 47 code and not "none"`),
    ...fault(
      !Array.isArray(texts) || texts.some((text) => typeof text !== "string"),
      "not an array of strings",
    ),
  ]);
}

export const hasNoEntry = (value: unknown): boolean =>
  !isObject(value) || Object.values(value).every((texts) => listed(texts).length === 0);

/** Where on what an annotation stands, by a selector of the annex or by a media fragment. */
export function targetOf({ target }: Json): {
  readonly source: unknown;
  readonly points: readonly (readonly [number, number])[];
} {
  if (typeof target === "string") {
    const [source, fragment] = target.split("#");
    const numbers = /xywh=(?:pixel:)?([\d.,]+)/
      .exec(fragment ?? "")?.[1]
      ?.split(",")
      .map(Number);
    const [x = Number.NaN, y = Number.NaN, w = 0, h = 0] = numbers ?? [];
    return {
      source,
      points:
        fragment === undefined
          ? []
          : [
              [x, y],
              [x + w, y + h],
            ],
    };
  }
  if (!isObject(target)) return { source: undefined, points: [] };
  const source = isObject(target.source) ? target.source.id : (target.source ?? target.id);
  const { selector } = target;
  return {
    source,
    points:
      isObject(selector) && selector.type === "PointSelector"
        ? [[Number(selector.x), Number(selector.y)]]
        : [],
  };
}
