import { readFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { benchItem } from "../../shared/commands/serve/bench/bench-html.ts";
import { benchRecord, benchReference } from "../../shared/commands/serve/bench/bench-record.ts";
import { pilotageFolder } from "./pilotage.ts";
import { runHere } from "./run-here.ts";

/** A register of which one entry has words in German, and one has none. */
const register = `mercury:
  name: Mercury
  caution: Keep it closed.
  in: { de: { name: Quecksilber, caution: Geschlossen halten. } }
  source: An invented leaflet
flammable:
  name: Flammable
  caution: Keep it from fire.
  source: An invented leaflet
`;

describe.each([
  ["de", "Vorsicht", "Quecksilber", "Quecksilber", "Geschlossen halten.", ' lang="de"'],
  ["de-AT", "Vorsicht", "Quecksilber", "Quecksilber", "Geschlossen halten.", ' lang="de-AT"'],
  ["en", "Caution", "Mercury", "mercury", "Keep it closed.", null],
])("in a collection in %s, a caution at the bench", (language, beware, name, inText, caution, lang) => {
  let root: string;
  const spoken = (text: string) => (lang === null ? text : `<span${lang}>${text}</span>`);

  beforeAll(() => {
    root = pilotageFolder({
      "content/collection.yaml": `title: Pilotage outfits\nlanguage: ${language}\n`,
      "schemas/hazards.yaml": register,
    });
  });

  it("is in that language on the sheet of paper", async () => {
    expect((await runHere(["checklist", "pilot-mk2"], root)).code).toBe(0);
    const html = readFileSync(path.join(root, "checklist-pilot-mk2.html"), "utf8");
    expect(html).toContain(`<dt>${spoken(name)}: Mercury bottle</dt><dd>${spoken(caution)} `);
    expect(html).toContain(`${beware}: ${spoken(inText)}.`);
  });

  it("is in that language in the file of a new item", async () => {
    expect((await runHere(["new", "item", "anew", "--variant", "pilot-mk2"], root)).code).toBe(0);
    const text = readFileSync(path.join(root, "content/items/anew/index.md"), "utf8");
    expect(text).toContain(`## CAUTION, ${inText}: ${caution} (An invented leaflet)\n`);
    expect(text).toContain(`this case may hold ${inText}`);
  });

  it("is in that language on the page for the phone", () => {
    const reference = benchReference(root);
    const record = benchRecord(root, reference, "river-office");
    if (!record) throw new Error("The item is not there.");
    const html = benchItem(reference, record, "key", null);
    expect(html).toContain(`<dt>${spoken(name)}: Mercury bottle</dt><dd>${spoken(caution)} `);
    expect(html).toContain(`<strong>${beware}: ${spoken(inText)}.</strong> ${spoken(caution)} `);
  });
});

it("a caution is as the register has it, where that has no words in the collection's language", async () => {
  const root = pilotageFolder({
    "content/collection.yaml": "title: Pilotage outfits\nlanguage: de\n",
    "schemas/hazards.yaml": register,
    "schemas/reference/pilot/pilot-mk3.yaml":
      "name: Mark III\nparts: { lamp: { name: Lamp, hazards: [flammable] } }\n",
  });
  expect((await runHere(["checklist", "pilot-mk3"], root)).code).toBe(0);
  const html = readFileSync(path.join(root, "checklist-pilot-mk3.html"), "utf8");
  expect(html).toContain("<dt>Flammable: Lamp</dt><dd>Keep it from fire. ");
});
