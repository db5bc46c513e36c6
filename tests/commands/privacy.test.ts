import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { type Files, smallCollection, writeCollection } from "../collections/collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { canary as madeCanary, webmFilm } from "../images/handmade-recordings.ts";
import { runHere } from "./run-here.ts";

/** A word that stands in one private place and nowhere else. */
const canaries = {
  storage: "Canary-Storage",
  distinguishing: "Canary-Distinguishing",
  paid: "987654",
  insured: "Canary-Insured",
  owner: "Canary-Owner",
  eventPrice: "876543",
  eventNote: "Canary-Event-Note",
  partNote: "Canary-Part-Note",
  labelText: "Canary-Label-Text",
  extraNote: "Canary-Extra-Note",
  extraName: "Canary-Extra-Name",
  keptDate: "1957",
  keptMark: "Canary-Mark",
  caption: "Canary-Caption",
  askingPrice: "765432",
  camera: "Canary-Camera-Owner",
  fileName: "canary-file-name",
  filmName: "canary-film-name",
  captionsName: "canary-captions-name",
  captionsHeading: "Canary-Captions-Heading",
  captionsNote: "Canary-Captions-Note",
  film: madeCanary,
} as const;

/** Serials that are masked: whole, they stand nowhere. */
const serials = ["H271828", "P314159"];

/** The serials of boxes that no record tells but one that all families share. */
const serialsInShared = {
  source: "Q161803",
  escaped: "Q141421",
  notice: "Q173205",
  rights: "Q223606",
  hazard: "Q244948",
  scale: "Q264575",
  article: "Q282842",
} as const;

/** The same of boxes whose serial is written as few would write it, and all of whose serials one article tells. */
const oddlyWritten = {
  "further in": ["R331662", "  title: One\n  variant: box-a\n  serial: R331662"],
  "in braces": ["R346410", "{ title: One, variant: box-a, serial: R346410 }"],
  "below a question mark": ["R360555", "title: One\nvariant: box-a\n? serial\n: R360555"],
  "on two lines": ["R 374165", "title: One\nvariant: box-a\nserial: R\n  374165"],
  "by an escape": ["R387298", 'title: One\nvariant: box-a\n"seri\\u0061l": R387298'],
  "below that of a part": [
    "R412310",
    "title: One\nvariant: box-a\nparts: { lid: { state: present,\nserial: R9\n} }\nserial: R412310",
  ],
  "below words in quotes": ["R424264", 'title: "One\nserial: R8\n"\nvariant: box-a\nserial: R424264'],
} as const;

const frontMatter = `---
title: The chest H271828
variant: chest-a
serial: H271828
set: "118"
examined: 2026-03-14
parts:
  sextant: { state: present, serial: P314159, marks: ["P 314159"], note: ${canaries.partNote}, private: [note] }
extras: [{ name: Strap, note: ${canaries.extraNote}, private: [note] }, { name: ${canaries.extraName}, hazards: [mercury], private: [name] }]
labels: [{ kind: plate, text: ["No. H 271828", ${canaries.labelText}] }, { kind: paper, text: [${canaries.labelText}], private: [text] }]
provenance:
  - { date: 2001, event: acquired, from: ${canaries.owner}, price: { amount: ${canaries.eventPrice}, currency: EUR }, private: [from] }
  - { date: 2003, event: mended, note: ${canaries.eventNote}, private: [note] }
  - { date: ${canaries.keptDate}, event: lent, evidence: slip, private: [date] }
photos: [{ file: ${canaries.fileName}.jpg, alt: The chest H271828 open, caption: ${canaries.caption}, private: [caption] }]
video: { src: ${canaries.filmName}.webm, captions: ${canaries.captionsName}.vtt, caption: The chest H271828 gone through, moments: [{ part: sextant, at: "0:01" }] }
storage: ${canaries.storage}
materials: Oak and brass, numbered H271828
measurements: ["310 × 240 × 120 mm"]
distinguishing: ["${canaries.distinguishing}: a burn in the lid"]
paid: { amount: ${canaries.paid}, currency: EUR }
private: { insured: ${canaries.insured} }
price: { amount: ${canaries.askingPrice}, currency: EUR }
---
It bears the serial h-271828, and its sextant P314159. On the base 271828 alone, or 271 828 and 314,159.
`.replace(`["No. H 271828", ${canaries.labelText}]`, '["No. H 271828"]');

/** Texts about something else that tell the serial of the chest, in the words of whoever wrote them. */
const elsewhere: Files = {
  "content/collection.yaml": `title: Chests\ndescription: The best is H271828.\nscale: own\nnotice: ${serialsInShared.notice} is on loan.\nrights: In ${serialsInShared.rights} reserved.\n`,
  "content/articles/all.md":
    "---\ntitle: All of H271828\nabstract: On h 271828.\n---\nWe saw H-271828 and H 271828.\n",
  "content/items/two.md": "---\ntitle: Beside H271828\nvariant: chest-a\n---\nBought with h271828.\n",
  "content/sightings/log.csv":
    "seen,variant,kind,example,note\n2001,chest-a,record,A,with H.271828\n2002,box-a,record,B,beside H271828\n",
  "content/articles/of-boxes.md": `---\ntitle: Of boxes\nauthors: [Keeper of ${serialsInShared.article}]\n---\nWe saw ${serialsInShared.article}.\n`,
  "content/articles/of-more-boxes.md": `---\ntitle: Of more boxes\n---\nWe saw ${Object.values(oddlyWritten)
    .map(([serial]) => serial)
    .join(" and ")}.\n`,
  ...Object.fromEntries(
    Object.entries(oddlyWritten).map(([way, [, yaml]]) => [
      `content/items/${way.replaceAll(" ", "-")}.md`,
      `---\n${yaml}\n---\n`,
    ]),
  ),
  "content/sources.yaml": `- { id: letter, title: Letter on H 271828, author: [{ literal: Friend of H271828 }] }
- { id: deed, title: Deed of ${serialsInShared.source} }
- { id: slip, title: "Slip of Q\\u00a0${serialsInShared.escaped.slice(1)}" }
`,
  "schemas/hazards.yaml": `wax: { name: Wax, caution: "As in ${serialsInShared.hazard}.", source: A handbook }\n`,
  "schemas/scales/own.yaml": `id: own\nkind: rarity\nname: Own\nnote: Made for ${serialsInShared.scale}.\nclasses: [{ id: any, words: Any, low: 0 }]\n`,
  "content/items/dish.md":
    "---\ntitle: Dish\nvariant: dish-a\nparts: { cup: present }\n---\nA dish [@deed; @slip].\n",
  "schemas/reference/dish/family.yaml": "name: Dishes\n",
  "schemas/reference/dish/dish-a.yaml":
    "name: Dish A\nsources: [deed, slip]\nparts: { cup: { name: Cup, hazards: [wax] } }\n",
  ...Object.fromEntries(
    Object.entries(serialsInShared).map(([by, serial]) => [
      `content/items/told-by-${by}.md`,
      `---\ntitle: Told by ${by}\nvariant: box-a\nserial: ${serial}\n---\n`,
    ]),
  ),
  "schemas/reference/chest/family.yaml":
    "name: Chests\ndescription: As in H271828.\nfeatures:\n  lock: { name: Lock, values: [iron], look: See H271828., note: Not H271828. }\n",
  "schemas/reference/box/family.yaml": "name: Boxes\n",
  "schemas/reference/box/box-a.yaml":
    "name: Box A\nnote: Like H271828.\ndescription: Unlike H 271828.\nparts: { lid: { name: Lid, look: As H271828., note: Of H271828. } }\n",
  "content/items/four.md":
    "---\ntitle: Four\nvariant: box-a\nserial: K314\npublish: { serial: shown }\n---\nIts own is K314.\n",
  "content/items/five.md": "---\ntitle: Five\nvariant: chest-a\nserial: K314\n---\nIts own is K314, too.\n",
  "content/items/six.md": `---\ntitle: Six\nvariant: box-b\nserial: HP603\nset: "603"\nparts: { lid: { state: present, marks: ["603"] }, key: { state: present, marks: [B ${canaries.keptMark}], private: [marks] } }\nlabels: [{ kind: plate, text: ["No. 603"] }]\n---\nHP603A on a tag, and hp-603 below.\n`,
  "schemas/reference/box/box-b.yaml":
    'name: Box B\nparts: { lid: { name: Lid, marks: ["{set}"] }, key: { name: Key, marks: ["B {set}"] } }\n',
  "content/items/three.md":
    "---\ntitle: Three\nvariant: box-a\nparts: { lid: { state: present, note: From H271828. } }\n---\nOf another family, and found beside H 271828.\n",
};

async function photograph(): Promise<Uint8Array> {
  return sharp({ create: { width: 640, height: 480, channels: 3, background: "#a08050" } })
    .withExif({
      IFD0: { Artist: canaries.camera, Copyright: canaries.camera },
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: "51/1 30/1 0/1",
        GPSLongitudeRef: "E",
        GPSLongitude: "7/1 0/1 0/1",
      },
    })
    .jpeg()
    .toBuffer();
}

const contains = (files: ReadonlyMap<string, Buffer>, word: string): string[] =>
  [...files].filter(([name, bytes]) => name.includes(word) || bytes.includes(word)).map(([name]) => name);

describe("what is private", () => {
  let publicSite: Map<string, Buffer>;
  let privateSite: Map<string, Buffer>;

  beforeAll(async () => {
    const files: Files = smallCollection(
      'serials: [{ prefix: H, from: 271001, to: 272000, made: 1931 }]\nparts:\n  sextant: { standing: core, marks: ["P31"], serials: [{ prefix: P, from: 1, made: 1931 }] }\n',
      {
        ...elsewhere,
        "content/items/one/index.md": frontMatter,
        [`content/items/one/${canaries.fileName}.jpg`]: await photograph(),
        [`content/items/one/${canaries.filmName}.webm`]: await webmFilm({ seconds: 2 }),
        [`content/items/one/${canaries.captionsName}.vtt`]: `WEBVTT ${canaries.captionsHeading}\n\nNOTE spoken by ${canaries.captionsNote}\n\n00:01.000 --> 00:02.000\nNumber h 271828, with its sextant P314159.\n\n00:02.000 --> 00:03.000\n<i>271</i>828 again.\n`,
      },
    );
    const root = writeCollection(files);
    const out = mkdtempSync(path.join(tmpdir(), "fittedcase-privacy-"));
    for (const [folder, ...flags] of [["public"], ["private", "--private"]]) {
      const built = await runHere(
        ["build", "--root", root, "--out", path.join(out, folder ?? ""), ...flags],
        root,
      );
      expect(built).toMatchObject({ code: 0, err: "" });
    }
    publicSite = siteFiles(path.join(out, "public"));
    privateSite = siteFiles(path.join(out, "private"));
  });

  it.each(Object.entries(canaries))("%s stands in no public file, by name or by content", (_, canary) => {
    expect(contains(publicSite, canary)).toEqual([]);
  });

  it.each(serials)("the masked serial %s stands in no public file, however it is spaced", (serial) => {
    const [prefix, digits] = [serial.slice(0, 1), serial.slice(1)];
    for (const spelt of [
      serial,
      serial.toLowerCase(),
      `${prefix} ${digits}`,
      `${prefix.toLowerCase()}-${digits}`,
      digits,
      `${digits.slice(0, 3)} ${digits.slice(3)}`,
      `${digits.slice(0, 3)},${digits.slice(3)}`,
    ]) {
      expect(contains(publicSite, spelt)).toEqual([]);
    }
    expect(contains(publicSite, serial.slice(0, -2)).length).toBeGreaterThan(0);
  });

  it("a masked serial is told by no text about something else, of whatever family", () => {
    const shown = [
      ["index.html", "The best is H2718"],
      ["articles/all/index.html", "We saw H2718"],
      ["items/two/index.html", "Bought with H2718"],
      ["sightings/chest-a/index.html", "with H2718"],
      ["families/chest/index.html", "As in H2718"],
      ["variants/box-a/index.html", "Unlike H2718"],
      ["items/three/index.html", "found beside H2718"],
      ["sightings/box-a/index.html", "beside H2718"],
      ["sources/index.html", "Letter on H2718"],
    ];
    for (const [file = "", words = ""] of shown) {
      expect(publicSite.get(file)?.toString(), file).toContain(`${words}••`);
      expect(privateSite.get(file)?.toString().toUpperCase(), file).toMatch(/H[ .-]?271828/);
    }
  });

  it.each(Object.entries(serialsInShared))(
    "a masked serial that nothing tells but a %s stands masked on every page",
    (_, serial) => {
      const digits = serial.slice(1);
      for (const spelt of [serial, digits]) expect(contains(publicSite, spelt)).toEqual([]);
      expect(contains(privateSite, digits)).not.toEqual([]);
      expect(contains(publicSite, digits.slice(0, 4)).length).toBeGreaterThan(1);
    },
  );

  it.each(Object.entries(oddlyWritten))(
    "a masked serial that its record has %s stands masked on every page",
    (_, [serial]) => {
      const digits = serial.replace(/^R ?/, "");
      expect(contains(publicSite, digits)).toEqual([]);
      expect(contains(privateSite, digits)).toContain("articles/of-more-boxes/index.html");
      expect(publicSite.get("articles/of-more-boxes/index.html")?.toString()).toContain(
        `${digits.slice(0, 4)}••`,
      );
    },
  );

  it("what all families share is read on their pages without serials", () => {
    const dish = publicSite.get("variants/dish-a/index.html")?.toString();
    expect(dish).toContain("Deed of Q1618••");
    expect(dish).toContain("Slip of Q");
    expect(dish).toContain("1414••");
    expect(dish).toContain("Q1732•• is on loan.");
    expect(dish).toContain("In Q2236•• reserved.");
    expect(publicSite.get("items/dish/index.html")?.toString()).toContain("As in Q2449••.");
  });

  it("a masked serial is not told by the set's number, by marks, nor with a letter behind it", () => {
    for (const file of ["items/six/index.html", "data/items/six.json", "items/index.html"])
      expect(publicSite.get(file)?.toString(), file).not.toMatch(/(?<![\d•.])603/);
    expect(publicSite.get("data/items/six.json")?.toString()).toContain('"B 6••"');
    expect(publicSite.get("items/six/index.html")?.toString()).toContain("HP6••A on a tag");
    expect(privateSite.get("items/six/index.html")?.toString()).toContain("HP603A on a tag");
    const searched = [...publicSite].filter(([name]) => name.includes("/search/"));
    expect(searched.length).toBeGreaterThan(0);
    for (const [name, bytes] of searched) expect(bytes.toString(), name).not.toContain("hp603");
  });

  it("two of one serial each show it or not, as each says", () => {
    expect(publicSite.get("items/four/index.html")?.toString()).toContain("Its own is K314.");
    expect(publicSite.get("items/five/index.html")?.toString()).toContain("Its own is K3••, too.");
  });

  it("captions have no serial that their markup parts", () => {
    const captions = [...publicSite].find(([name]) => name.includes("one-captions"))?.[1].toString();
    expect(captions).toContain("\n2718•• again.");
  });

  it("no picture carries a profile of its camera or place", async () => {
    const pictures = [...publicSite].filter(([name]) => /\.(?:jpe?g|webp|avif|png)$/.test(name));
    expect(pictures.length).toBeGreaterThan(0);
    for (const [, bytes] of pictures) {
      const { exif, xmp, iptc } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc]).toEqual([undefined, undefined, undefined]);
    }
  });

  // The canaries would prove nothing if the private build did not hold them either.
  it.each([
    canaries.storage,
    canaries.distinguishing,
    canaries.insured,
    canaries.owner,
    canaries.eventNote,
    canaries.partNote,
    canaries.labelText,
    canaries.extraNote,
    canaries.caption,
    canaries.paid,
    canaries.eventPrice,
    canaries.askingPrice,
    ...serials,
  ])("%s stands in the owner's own build", (canary) => {
    expect(contains(privateSite, canary).length).toBeGreaterThan(0);
  });

  it("the owner's build asks every search engine to stay out", () => {
    const pages = [...privateSite].filter(([name]) => name.endsWith(".html"));
    for (const [, bytes] of pages) expect(bytes.toString()).toMatch(/name="robots" content="noindex/);
    expect(privateSite.get("robots.txt")?.toString()).toContain("Disallow: /");
  });
});
