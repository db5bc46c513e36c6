import { type Files, writeCollection } from "../collections/collection.ts";

/** Examples of one variant: 9 seen once, 6 twice and 6 three times, so that D = 21, f1 = 9, f2 = 6. */
function log(): string {
  const rows = ["seen,variant,serial,source,kind"];
  const seen = (from: number, count: number, times: number) => {
    for (let at = from; at < from + count; at++) {
      for (let time = 0; time < times; time++)
        rows.push(`${1990 + time},pilot-mk2,H${at},works-ledger,record`);
    }
  };
  seen(2001, 9, 1);
  seen(2020, 6, 2);
  seen(2040, 6, 3);
  return `${rows.join("\n")}\n`;
}

/** An invented collection in the terms of the contract's own examples: one family, two variants, one item. */
export const pilotage: Files = {
  "content/collection.yaml": "title: Pilotage outfits\nwatching: 1981/2000\n",
  "content/sources.yaml": "- { id: works-ledger, title: Ledger of finished sets }\n",
  "schemas/reference/pilot/family.yaml": `name: Ebbholm Pilotage outfits
groups: { instrument: Instrument, optics: Optics, bottles: Bottles }
features:
  arc: { name: Arc, values: [silver, platinum], look: Breathe on it. }
  plate: { name: Plate, values: ["57", "112"], effort: 2 }
`,
  "schemas/reference/pilot/pilot-mk1.yaml": `name: Ebbholm Pilotage outfit, Mark I
issued: 1922/1930
features: { arc: silver, plate: "57" }
parts:
  sextant: { name: Sextant, group: instrument, standing: core, weight: 10, marks: ["{set}"] }
`,
  "schemas/reference/pilot/pilot-mk2.yaml": `name: Ebbholm Pilotage outfit, Mark II
issued: 1931/1938
made: { count: 412, source: works-ledger, page: 31 }
serials:
  - { prefix: H, from: 2001, to: 2412, made: 1931/1938, source: works-ledger }
features: { arc: platinum, plate: "112" }
parts:
  mercury-bottle: { name: Mercury bottle, group: bottles, weight: 2, hazards: [mercury] }
  sextant: { name: Sextant, group: instrument, standing: core, weight: 10, marks: ["{set}"], look: "Look below the arc: a number." }
  shade: { name: Horizon shade, group: optics, quantity: 4, marks: [P31] }
  oil-bottle: { name: Oil bottle, group: bottles, standing: consumable, accepts: [{ model: later-tin, credit: 0.5 }] }
levels:
  - { id: whole, name: Complete, needs: { standing: [core, issued] } }
  - { id: instrument-only, name: Instrument only, needs: { parts: [sextant] } }
`,
  "content/items/river-office/index.md": `---
title: The river office outfit
variant: pilot-mk2
serial: H2118
set: "118"
examined: 2026-03-14
census: false
features: { arc: platinum }
parts:
  sextant: { state: present, marks: ["118"] }
  shade: { state: present, quantity: 3, marks: [P31] }
  mercury-bottle: absent
provenance:
  - { date: 1931/1960, event: in service, holder: River Office, evidence: stamp }
  - { date: 2001, event: acquired, from: I. Venn, evidence: receipt, private: [from] }
storage: Cupboard 2
distinguishing: [A burn in the lid]
paid: { amount: 310, currency: EUR }
---

It lay in the river office.
`,
  "content/sightings/log.csv": log(),
};

export const pilotageFolder = (more: Files = {}): string => writeCollection({ ...pilotage, ...more });
