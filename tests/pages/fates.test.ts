import { readFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import {
  type Files,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";
import { runHere } from "../commands/run-here.ts";

const picture = await sharp({ create: { width: 40, height: 30, channels: 3, background: "#a52" } })
  .png()
  .toBuffer();
const parts = "parts: { key: absent, tray: { state: present, quantity: 2 } }";
const fates = ["lost", "stolen", "destroyed"] as const;
const files = (language: string): Files => ({
  ...smallCollection("parts: { key: { name: Key }, tray: { name: Tray } }\n", {
    ...Object.fromEntries(
      fates.map((fate) => [
        `content/items/${fate}.md`,
        item(`status: ${fate}\nprice: { amount: 10, currency: EUR }\npublish: { price: shown }\n${parts}`),
      ]),
    ),
    "content/items/kept.md": item(parts),
    "content/items/fullest/index.md": item(
      "status: destroyed\nparts: { key: present, tray: present }\nphotos: [{ file: a.png, alt: Open }]",
    ),
    "content/items/fullest/a.png": picture,
    "content/articles/all.md": "---\ntitle: All\n---\n<table:items?status=stolen,lost&show=status>\n",
  }),
  "content/collection.yaml": `title: Chests\nurl: https://example.org/\nlanguage: ${language}\nenquiries: ${language === "en" ? "catalogue@example.org" : "https://example.org/write-to-us/"}\n`,
});

const built = async (collection: Files) => {
  const root = writeCollection(collection);
  expect((await runHere(["build", "--root", root], root)).code).toBe(0);
  return (file: string) => readFileSync(path.join(root, "_site", file), "utf8");
};
const words = (html: string) => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

describe("an outfit that is lost, stolen or destroyed", () => {
  let text: (file: string) => string;
  beforeAll(async () => {
    text = await built(files("en"));
  });
  const opening = (id: string) =>
    words(/<header class="opening">.*?<\/header>/s.exec(text(`items/${id}/index.html`))?.[0] ?? "");

  it("says so before its name", () => {
    expect(opening("lost")).toMatch(/Lost\. Where it is now is not known\..* A chest/);
    expect(opening("stolen")).toMatch(
      /Reported stolen If it is offered to you, please tell the police.* Object ID.* A chest/,
    );
    expect(opening("destroyed")).toMatch(
      /Destroyed or broken up\. It no longer exists as an outfit\..* A chest/,
    );
    expect(opening("kept")).not.toMatch(/Lost|stolen|Destroyed/);
    // RFC 6068, 2: mailto:ADDRESS?subject=, with %20 for a space.
    const letter = '<a href="mailto:catalogue@example.org?subject=A%20chest">catalogue@example.org</a>';
    for (const id of ["lost", "stolen"]) expect(text(`items/${id}/index.html`).split(letter)).toHaveLength(3);
    expect(text("items/kept/index.html").split(letter)).toHaveLength(2);
    // As prominently as evidence against a label.
    expect(text("items/stolen/index.html")).toContain(
      '<div class="foremost"><p class="headline">Reported stolen</p>',
    );
  });

  it("says so in German, too", async () => {
    const german = await built(files("de"));
    const first = (id: string) => words(german(`items/${id}/index.html`));
    expect(german("items/lost/index.html")).toContain(
      '<dt>Anfragen</dt><dd><a href="https://example.org/write-to-us/">example.org/write-to-us</a></dd>',
    );
    expect(first("lost")).toContain("Verschollen. Der Verbleib ist unbekannt.");
    expect(first("stolen")).toMatch(/Als gestohlen gemeldet Wird es Ihnen angeboten, .* die Polizei/);
    expect(first("destroyed")).toContain("Zerstört oder aufgelöst. Als Garnitur besteht es nicht mehr.");
    expect(words(german("items/index.html"))).toContain("als gestohlen gemeldet");
  });

  it("says so in lists, filters, tables and data", () => {
    const list = words(text("items/index.html"));
    for (const standing of ["lost", "reported stolen", "destroyed or broken up"])
      expect(list).toContain(standing);
    for (const fate of fates) expect(text("items/index.html")).toContain(`<option value="${fate}"`);
    expect(text("data/items.csv")).toMatch(/,stolen,/);
    expect(JSON.parse(text("data/items/stolen.json"))).toMatchObject({ status: "stolen" });
    expect(words(text("articles/all/index.html"))).toContain("2 outfits of this catalogue");
    expect(text("items/stolen/index.html")).toMatch(/<meta name="description" content="Reported stolen\. /);
  });

  it("is not laid open on the title page while there is another", () => {
    expect(text("index.html")).toContain('href="./items/kept/#part-tray"');
    expect(text("index.html")).not.toContain("/items/fullest/#part-");
  });

  it("is asked for no part, gives none, is not for sale, and has no card to stand beside it", () => {
    const wanted = [...text("wants/index.html").matchAll(/items\/(\w+)\/#part-/g)].map(([, id]) => id);
    expect(new Set(wanted)).toEqual(new Set(["kept"]));
    for (const fate of fates) {
      const page = text(`items/${fate}/index.html`);
      expect(page).not.toContain('id="completing"');
      expect(page).not.toContain('"@type":"Offer"');
      expect(page).not.toMatch(/<dt>Asked<\/dt>/);
      expect(JSON.parse(text(`data/items/${fate}.json`))).toMatchObject({ price: null });
      expect(() => text(`items/${fate}/card/index.html`)).toThrow();
    }
    expect(text("items/kept/index.html")).toContain('id="completing"');
  });
});

describe("survivors, where some examples are known to have been destroyed", () => {
  const rows = (...names: string[]) =>
    `seen,variant,kind,example\n${names.map((name, at) => `${2001 + at},chest-a,record,${name}\n`).join("")}`;
  const survivorsOf = (log: string, ...statuses: string[]) => {
    const root = writeCollection(
      smallCollection("parts: { key: { name: Key } }\n", {
        "content/sightings/log.csv": log,
        ...Object.fromEntries(
          statuses.map((status, at) => [
            `content/items/i-${at}.md`,
            item(`example: E${at}\nstatus: ${status}\nparts: { key: present }`),
          ]),
        ),
      }),
    );
    const [item0] = publishedIn(root).items;
    const [variant] = publishedIn(root).variants;
    return { variant: variant?.rarity.survivors, item: item0?.rarity.asCompleteSurvivors };
  };

  it("are less by those, and the figure says so", () => {
    // E0 is seen twice, A and E1 once. By hand (Chao 1987, bias-corrected): 3 + 2·1/(2·2) = 3.5 that were there to be seen.
    const { variant, item: own } = survivorsOf(rows("E0", "A"), "destroyed", "lost");
    expect(variant?.value).toBe(2.5);
    const counting = (text: string) => ({ says: "less-destroyed", text });
    const one = counting("Less the one that is known to have been destroyed or broken up since.");
    expect(variant?.caveats).toContainEqual(one);
    expect(own?.caveats).toContainEqual(one);
    const two = survivorsOf(rows("E0", "A"), "destroyed", "destroyed").variant;
    expect(two?.value).toBe(1.5);
    expect(two?.caveats).toContainEqual(
      counting("Less the 2 that are known to have been destroyed or broken up since."),
    );
    // What is lost or stolen may well be somewhere.
    const none = survivorsOf(rows("E0", "A"), "stolen", "lost").variant?.caveats;
    expect(none?.map(({ says }) => says)).not.toContain("less-destroyed");
  });

  it("does not count them among those that survive at the least", () => {
    const why = (log: string, ...statuses: string[]) => survivorsOf(log, ...statuses).variant?.insufficient;
    expect(why(rows("A", "B"), "destroyed")).toContain("at least 2 survive");
    expect(why(rows("A", "B"), "stolen")).toContain("at least 3 survive");
    expect(why(rows("A"), "destroyed")).toContain("at least 1 survives");
    expect(why("seen,variant,kind\n", "destroyed")).toMatch(/none of those known for certain survives\.$/);
  });

  it("are none on any page or scale where the only one is gone, however often it was seen", async () => {
    const text = await built({
      ...smallCollection("parts: { key: { name: Key } }\n"),
      "content/sightings/log.csv": rows("E0", "E0"),
      "content/items/gone.md": item("example: E0\nstatus: destroyed\nparts: { key: present }"),
    });
    // Three sightings of one example; D = 1 and T = 0: 1 to 1.5 were there to be seen (P = e^-3), and 0 to 0.5 are left.
    expect(words(text("variants/chest-a/index.html"))).toContain("0, 0 to 1");
    expect(text("variants/chest-a/index.html")).toContain("URS-0, none known");
    expect(words(text("items/gone/index.html"))).toContain("0, 0 to 1 survive");
  });
});
