import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { iiifManifest } from "../../shared/pages/data/iiif-manifest.ts";
import { publishCollection } from "../../shared/publication/publish-collection.ts";
import type { PublishedCollection } from "../../shared/publication/published.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { collectionMedia } from "../../shared/site/media/collection-media.ts";
import { english } from "../../shared/words/en/english.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { waveSound } from "../images/handmade-recordings.ts";
import { isObject, objects } from "./iiif-reading.ts";
import { faultsOf, rules } from "./iiif-rules.ts";

const variant = `parts:
  balance: { name: Balance, standing: core }
  weights: { name: "Weights <brass>", standing: issued, quantity: 3 }
`;
const url = "https://example.org/cases/";

interface Made {
  readonly root: string;
  readonly published: PublishedCollection;
  readonly manifests: ReadonlyMap<string, unknown>;
}

const picture = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: "#8a6f4d" } }).jpeg();

/** One outfit with two photographs and one without any, published as a reader gets them. */
async function made(settings = "", frontMatter = "", language = "en"): Promise<Made> {
  const root = writeCollection(
    smallCollection(variant, {
      "content/collection.yaml": `title: Cases\nurl: ${url}\nlanguage: ${language}\n${settings}`,
      "content/items/one/index.md": item(
        `serial: H271828
parts: { balance: present, weights: { state: present, quantity: 2 } }
photos:
  - { file: open.jpg, alt: The chest open., caption: As found., callouts: [{ part: balance, at: [0, 0] }, { part: weights, at: [1, 1] }, { part: balance, at: [0.31, 0.44] }] }
  - { file: turned.jpg, alt: The lid. }
${frontMatter}`,
      ),
      "content/items/one/open.jpg": await picture(1500, 1000).toBuffer(),
      "content/items/one/told.wav": waveSound(1),
      // As a camera held upright stores it: the longer side across, and a note to turn it.
      "content/items/one/turned.jpg": await picture(900, 600).withMetadata({ orientation: 6 }).toBuffer(),
      "content/items/two.md": item("parts: { balance: present }"),
    }),
  );
  const { sound, diagnostics } = checkCollection(root);
  if (!sound) throw new Error(JSON.stringify(diagnostics));
  const published = publishCollection(sound.collection, sound.assessments, "public", english);
  const { images, recordings, refused } = await collectionMedia(root, published, sound.collection, english);
  expect(refused).toEqual([]);
  const files = published.items.flatMap(
    (each) => iiifManifest(each, published, english, { images, recordings }) ?? [],
  );
  return {
    root,
    published,
    manifests: new Map(files.map(({ address, text }) => [address, JSON.parse(text)])),
  };
}

const manifestIn = ({ manifests }: Made) => manifests.get("/iiif/one/manifest.json");

const outfits: Readonly<Record<string, Promise<Made>>> = {
  "the least": made(),
  "a notice, a publisher and a licence": made(
    'notice: "<i>All invented</i>"\npublisher: The Circle\nrights: "CC BY 4.0, https://creativecommons.org/licenses/by/4.0/"\n',
  ),
  "rights in words": made(
    "rights: All rights reserved.\n",
    "price: { amount: 12, currency: EUR }\npublish: { price: shown, serial: hidden }\n",
  ),
};

describe.each(Object.entries(outfits))("a manifest with %s", (_, outfit) => {
  it.each(rules)("$section: $must", async ({ faults }) => {
    expect(faults(manifestIn(await outfit))).toEqual([]);
  });
});

describe("what a manifest says", () => {
  it("there is one for every outfit with photographs, where its id says (3.2, id; 5.2)", async () => {
    const { manifests } = await made();
    expect([...manifests.keys()]).toEqual(["/iiif/one/manifest.json"]);
    for (const [address, manifest] of manifests)
      expect(manifest).toMatchObject({ id: `${url.slice(0, -1)}${address}` });
  });

  it("a canvas is as large as its picture, upright, and so is the file that it names", async () => {
    const outfit = await made();
    const manifest = manifestIn(outfit);
    const canvases = isObject(manifest) ? objects(manifest.items) : [];
    // As drawn above: 1500 by 1000; and 900 by 600 turned by a quarter.
    expect(canvases.map(({ width, height }) => [width, height])).toEqual([
      [1500, 1000],
      [600, 900],
    ]);
    for (const canvas of canvases) {
      const [annotation] = objects(canvas.items).flatMap((page) => objects(page.items));
      const body = annotation && isObject(annotation.body) ? annotation.body : {};
      expect(body).toMatchObject({ type: "Image", format: "image/jpeg" });
      const file = path.join(outfit.root, ".cache/fittedcase/site", String(body.id).slice(url.length));
      const { width, height, format } = await sharp(file).metadata();
      expect({ width, height, format }).toEqual({ width: body.width, height: body.height, format: "jpeg" });
      expect([width, height]).toEqual([canvas.width, canvas.height]);
    }
  });

  it("parts pointed out are annotations at their points, named with their state", async () => {
    const manifest = manifestIn(await made());
    const [first, second] = isObject(manifest) ? objects(manifest.items) : [];
    const annotations = objects(first?.annotations).flatMap((page) => objects(page.items));
    expect(annotations.map(({ body, motivation }) => [motivation, isObject(body) && body.value])).toEqual([
      ["commenting", "1. Balance: present"],
      ["commenting", "2. Weights <brass>: 2 present, 1 not examined"],
      ["commenting", "3. Balance: present"],
    ]);
    // 0.31 of 1500 and 0.44 of 1000.
    expect(annotations.map(({ target }) => isObject(target) && target.selector)).toEqual([
      { type: "PointSelector", x: 0, y: 0 },
      { type: "PointSelector", x: 1500, y: 1000 },
      { type: "PointSelector", x: 465, y: 440 },
    ]);
    expect(second).not.toHaveProperty("annotations");
  });

  it("a recording is another rendering of the outfit, not painted on a canvas (5.3)", async () => {
    const manifest = manifestIn(await made("", "video: { src: told.wav }"));
    expect(isObject(manifest) && manifest.rendering).toEqual([
      {
        id: expect.stringMatching(/^https:\/\/example\.org\/cases\/recordings\/[0-9a-f]{24}\.wav$/),
        type: "Sound",
        label: { en: [expect.any(String)] },
        format: "audio/wav",
      },
    ]);
    expect(faultsOf(manifest)).toEqual([]);
    expect(manifestIn(await made())).not.toHaveProperty("rendering");
  });

  it("where its language is not spoken here, the site's own words are said to be English", async () => {
    const outfit = await made("notice: Tout est inventé.\n", "materials: du laiton", "fr");
    const manifest = manifestIn(outfit);
    expect(manifest).toMatchObject({
      label: { fr: ["A chest"] },
      summary: { en: [expect.any(String)] },
      requiredStatement: { label: { en: [expect.any(String)] }, value: { fr: ["Tout est inventé."] } },
      seeAlso: [{ label: { en: [expect.any(String)] } }],
      homepage: [{ label: { fr: ["A chest"] }, language: ["fr"] }],
      items: [
        { label: { fr: ["As found."] }, summary: { fr: ["The chest open."] } },
        // Without a caption of its own a photograph is called by its number.
        { label: { en: ["Photograph 2"] }, summary: { fr: ["The lid."] } },
      ],
    });
    expect(isObject(manifest) && manifest.metadata).toEqual(
      expect.arrayContaining([
        { label: { en: ["Catalogued as"] }, value: { fr: ["Chest A"] } },
        { label: { en: ["Materials"] }, value: { fr: ["du laiton"] } },
        { label: { en: ["Standing"] }, value: { en: ["in the collection"] } },
      ]),
    );
    expect(faultsOf(manifest)).toEqual([]);
  });

  it("links to the page and to the record, and shows a thumbnail", async () => {
    expect(manifestIn(await made())).toMatchObject({
      homepage: [{ id: `${url}items/one/`, type: "Text", format: "text/html" }],
      seeAlso: [{ id: `${url}data/items/one.json`, type: "Dataset", format: "application/json" }],
      thumbnail: [{ type: "Image", format: "image/jpeg", width: 320, height: 213 }],
    });
  });

  it.each([
    ["https://creativecommons.org/licenses/by-sa/4.0/", "http://creativecommons.org/licenses/by-sa/4.0/"],
    [
      "CC0, http://creativecommons.org/publicdomain/zero/1.0",
      "http://creativecommons.org/publicdomain/zero/1.0/",
    ],
    [
      "https://creativecommons.org/licenses/by/3.0/de/deed.en",
      "http://creativecommons.org/licenses/by/3.0/de/",
    ],
    ["https://rightsstatements.org/vocab/InC/1.0/", "http://rightsstatements.org/vocab/InC/1.0/"],
    ["CC BY 4.0", undefined],
    ["https://example.org/licenses/by/4.0/", undefined],
  ])("rights of %j are %j to programs, and in words to readers", async (rights, expected) => {
    const manifest = manifestIn(await made(`rights: ${JSON.stringify(rights)}\n`));
    expect(isObject(manifest) && manifest.rights).toBe(expected);
    expect(JSON.stringify(isObject(manifest) && manifest.requiredStatement)).toContain(rights);
  });

  it("holds no path, no file name and no serial that is masked", async () => {
    const { manifests } = await made();
    const text = JSON.stringify([...manifests]);
    expect(text).not.toMatch(/open\.jpg|turned\.jpg|content\/items/);
    expect(text).not.toContain("H271828");
    expect(text).toContain("H2718");
  });
});

/** Published check values, B11: the least that is a manifest. */
const least = () => ({
  "@context": "http://iiif.io/api/presentation/3/context.json",
  id: "https://example.org/iiif/1/manifest",
  type: "Manifest",
  label: { en: ["One"] } as unknown,
  items: [
    {
      id: "https://example.org/iiif/1/canvas/1",
      type: "Canvas",
      height: 1000,
      width: 750,
      items: [
        {
          id: "https://example.org/iiif/1/page/1",
          type: "AnnotationPage",
          items: [
            {
              id: "https://example.org/iiif/1/page/1/1",
              type: "Annotation",
              motivation: "painting",
              body: { id: "https://example.org/images/1.jpg", type: "Image", format: "image/jpeg" },
              target: "https://example.org/iiif/1/canvas/1",
            },
          ],
        },
      ],
    },
  ],
});

type Loose = Record<string, unknown>;
const inside = (value: unknown, ...way: readonly (string | number)[]): Loose =>
  way.reduce<unknown>((at, step) => (at as Loose)[step], value) as Loose;
const canvasOf = (it: Loose) => inside(it, "items", 0);
const annotationOf = (it: Loose) => inside(it, "items", 0, "items", 0, "items", 0);

/** What to do to the least manifest, and the section of the rule that it then breaks. */
const spoiled: readonly (readonly [what: string, section: string, spoil: (it: Loose) => void])[] = [
  // B11, "must fail".
  ["no label", "3.1 label", (it) => delete it.label],
  ["no items", "3.4 items; 5.2", (it) => delete it.items],
  ["label a string", "3.1 label, summary; 4.4", (it) => Object.assign(it, { label: "One" })],
  ["a canvas without height", "3.2 height, width", (it) => delete canvasOf(it).height],
  ["a relative id", "3.2 id", (it) => Object.assign(it, { id: "/iiif/1/manifest" })],
  ["no id", "3.2 id", (it) => delete it.id],
  ["duration 0", "3.2 duration", (it) => Object.assign(canvasOf(it), { duration: 0 })],
  ["summary a string", "3.1 label, summary; 4.4", (it) => Object.assign(it, { summary: "Short" })],
  [
    "a metadata entry without value",
    "3.1 metadata, requiredStatement",
    (it) => Object.assign(it, { metadata: [{ label: { en: ["Maker"] } }] }),
  ],
  ["navDate without time zone", "3.1 navDate", (it) => Object.assign(it, { navDate: "2010-01-01T00:00:00" })],
  // Beyond what a schema checks.
  ["an empty label", "3.1 label", (it) => Object.assign(it, { label: { en: [] } })],
  [
    "a language that is none",
    "3.1 label, summary; 4.4",
    (it) => Object.assign(it, { label: { "not a language": ["One"] } }),
  ],
  [
    "a licence by its https address",
    "3.1 rights",
    (it) => Object.assign(it, { rights: "https://creativecommons.org/licenses/by/4.0/" }),
  ],
  ["rights in words", "3.1 rights", (it) => Object.assign(it, { rights: "CC BY 4.0" })],
  [
    "a provider without label",
    "3.1 provider",
    (it) => Object.assign(it, { provider: [{ id: "https://example.org/", type: "Agent" }] }),
  ],
  [
    "a thumbnail without type",
    "3.1 thumbnail; 3.3.1 seeAlso; 3.3.2 partOf",
    (it) => Object.assign(it, { thumbnail: [{ id: "https://example.org/1.jpg" }] }),
  ],
  ["one id twice", "3.2 id", (it) => Object.assign(annotationOf(it), { id: canvasOf(it).id })],
  ["a type in small letters", "3.2 type; 4.1", (it) => Object.assign(it, { type: "manifest" })],
  ["a format on a canvas", "3.2 format", (it) => Object.assign(canvasOf(it), { format: "image/jpeg" })],
  [
    "a language that is no array",
    "3.2 language",
    (it) => Object.assign(inside(annotationOf(it), "body"), { language: "en" }),
  ],
  ["a width of a half pixel", "3.2 height, width", (it) => Object.assign(canvasOf(it), { width: 750.5 })],
  ["a size on the manifest", "3.2 height, width", (it) => Object.assign(it, { height: 1, width: 1 })],
  [
    "a home page without label",
    "3.3.1 homepage, rendering",
    (it) => Object.assign(it, { homepage: [{ id: "https://example.org/", type: "Text" }] }),
  ],
  [
    "an image in place of a page",
    "3.4 items, annotations; 5.5",
    (it) => Object.assign(canvasOf(it), { items: [{ id: "https://example.org/1.jpg", type: "Image" }] }),
  ],
  ["items on an annotation", "3.4 items", (it) => Object.assign(annotationOf(it), { items: [] })],
  [
    "painting among the annotations",
    "3.4 annotations",
    (it) => Object.assign(canvasOf(it), { annotations: canvasOf(it).items }),
  ],
  [
    "a thumbnail that is no array",
    "4.3",
    (it) => Object.assign(it, { thumbnail: { id: "https://example.org/1.jpg", type: "Image" } }),
  ],
  ["markup in a label", "4.5", (it) => Object.assign(it, { label: { en: ["<b>One</b>"] } })],
  ["no context", "4.6", (it) => delete it["@context"]],
  [
    "a context on a canvas",
    "4.6",
    (it) => Object.assign(canvasOf(it), { "@context": "http://iiif.io/api/presentation/3/context.json" }),
  ],
  ["@graph", "4.6", (it) => Object.assign(it, { "@graph": [] })],
  ["@id", "4.8", (it) => Object.assign(canvasOf(it), { "@id": "https://example.org/iiif/1/canvas/1" })],
  [
    "a canvas with a fragment",
    "5.3",
    (it) => Object.assign(canvasOf(it), { id: "https://example.org/iiif/1/manifest#1" }),
  ],
  [
    "a canvas without an extent",
    "5.3",
    (it) => {
      delete canvasOf(it).width;
      delete canvasOf(it).height;
    },
  ],
  ["a comment in items", "5.3", (it) => Object.assign(annotationOf(it), { motivation: "commenting" })],
  [
    "a place beyond the edge",
    "5.3",
    (it) =>
      Object.assign(annotationOf(it), { target: "https://example.org/iiif/1/canvas/1#xywh=700,0,100,10" }),
  ],
  ["a film on a still", "5.3", (it) => Object.assign(inside(annotationOf(it), "body"), { duration: 3 })],
  [
    "a target that is another canvas",
    "5.6",
    (it) => Object.assign(annotationOf(it), { target: "https://example.org/iiif/1/canvas/2" }),
  ],
  [
    "a text by language in a body",
    "5.6",
    (it) => Object.assign(annotationOf(it), { body: { type: "TextualBody", value: { en: ["One"] } } }),
  ],
  ["an image without an address", "5.7", (it) => delete inside(annotationOf(it), "body").id],
  [
    "a space in an address",
    "6.1",
    (it) => Object.assign(canvasOf(it), { id: "https://example.org/iiif/1/canvas 1" }),
  ],
];

describe("the rules are rules", () => {
  it("the least manifest keeps them all", () => {
    expect(faultsOf(least())).toEqual([]);
  });

  it.each(spoiled)("%s breaks %s", (_, section, spoil) => {
    const manifest = least();
    spoil(manifest);
    const broken = rules.filter((rule) => rule.faults(manifest).length > 0).map((rule) => rule.section);
    expect(broken).toContain(section);
  });

  it("none of them is without an example that breaks it", () => {
    const unbroken = rules.filter(
      ({ faults }) =>
        !spoiled.some(([, , spoil]) => {
          const manifest = least();
          spoil(manifest);
          return faults(manifest).length > 0;
        }),
    );
    expect(unbroken.map(({ section, must }) => `${section}: ${must}`)).toEqual([]);
  });
});
