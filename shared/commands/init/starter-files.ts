import { yamlLine } from "../writing/yaml-line.ts";
import { starterItem } from "./starter-item.ts";

export interface Choices {
  readonly title: string;
  readonly language: string;
}

const collection = ({ title, language }: Choices) => `title: ${yamlLine(title)}
## The address at which the site will be. Feeds and links need it.
url: https://example.org/
## Language of the site's own words (BCP 47).
language: ${language}
## The years in which you watched for offers, first and last. "Offers a year" is counted over them.
watching: 2005/2024
## The confidence of the intervals.
confidence: 0.95
## What everybody may see: serials shown, masked in their last digits, or hidden; prices shown or hidden.
publish: { serial: masked, price: hidden }
## A line at the foot of every page. Remove it with the last of the invented records.
notice: The records in this catalogue are invented, to begin with. They will give way to real ones.
`;

const family = `## An invented family, to show what goes where: no such maker, office or case ever was.
id: grain-case
name: Tarn & Hobbelin Grain Case
maker: Tarn & Hobbelin, Wendle Ferry
description: >-
  A case of instruments with which the inspectors of the Corn Office of the Wendle Marches sampled, sieved and weighed
  grain on the quay.
## In the order of unpacking.
groups:
  case: The case
  tools: Sampling and sieving
  balance: Balance
  papers: Papers
features:
  lid-label:
    name: Label in the lid
    values: [paper, brass]
    look: Open the lid and look at its middle. Two pin holes in bare wood mean that a brass label is gone.
    effort: 1
  probe-tip:
    name: Tip of the probe
    values: [plain, slotted]
    look: Draw the probe out of its clips. A slot cut later has sharp edges.
    effort: 2
sources: [inspectors-handbook]
`;

const first = `## Invented. A variant says what was issued: every part, how many, and what a right one bears.
id: grain-case-first
name: Grain Case, First Issue
issued: 1911/1919
## If nobody recorded how many were made, leave this out: it is then estimated from the serials.
made: { count: 160, source: corn-register, page: 12 }
serials:
  - { prefix: G, from: 1, to: 160, made: 1911/1919, source: corn-register }
features:
  lid-label: paper
  probe-tip: plain
parts:
  case:
    name: Case
    group: case
    ## core: the thing itself; issued: belongs to a complete outfit; consumable: was used up; optional: issued to some.
    standing: core
    ## How much it counts compared with the other parts.
    weight: 5
    ## {set} stands for the set's own number.
    marks: ["{set}"]
    look: The set number is stamped on the front edge, to the left of the lock.
  probe:
    name: Sampling probe
    group: tools
    standing: core
    weight: 4
    look: Brass, in one piece, as long as the case.
  sieve:
    name: Sieve
    group: tools
    standing: issued
    quantity: 4
    weight: 2
    marks: ["{set}"]
    accepts:
      - { model: tin-sieve, credit: 0.5 }
    look: Four brass rings that stand in one another. A ring of tin is a later one and counts for half.
  lens:
    name: Folding lens
    group: tools
    standing: issued
    look: Horn sides. It lies in a pocket of the lid and stays there when the case is emptied.
  balance:
    name: Hand balance
    group: balance
    standing: core
    weight: 6
    marks: ["{set}"]
    look: Number on the beam, to the right of the pointer.
  weights:
    name: Weight
    group: balance
    standing: issued
    quantity: 6
    weight: 2
    look: Six, in a block of beech.
  spirit-lamp:
    name: Spirit lamp
    group: balance
    standing: consumable
    hazards: [flammable]
    look: For drying a sample. Smell the cap, not the font.
  table:
    name: Table of measures
    group: papers
    standing: issued
    look: A printed card in the lid, behind the label.
## Levels of completeness, best first.
levels:
  - { id: as-issued, name: Complete as issued, needs: { standing: [core, issued, consumable] } }
  - { id: less-consumables, name: Complete less consumables, needs: { standing: [core, issued] } }
  - { id: instruments, name: Case and instruments, needs: { parts: [case, probe, balance] } }
sources: [corn-register]
`;

const second = `## Invented. A variant that takes over everything from another and says only where it differs.
id: grain-case-second
name: Grain Case, Second Issue
extends: grain-case-first
issued: 1920/1932
## Nobody recorded how many: the number is estimated from the serials that were seen.
made: null
serials:
  ## 'to' is left out: nobody knows where the numbers end.
  - { prefix: G, from: 161, made: 1920/1932, source: inspectors-handbook }
features:
  lid-label: brass
  probe-tip: slotted
parts:
  ## null removes a part that the other variant had.
  lens: null
  thermometer:
    name: Thermometer
    group: tools
    standing: issued
    weight: 2
    hazards: [mercury]
    look: In a wooden tube. Look at the bulb through the window of the tube; do not shake it out.
sources: [inspectors-handbook]
`;

const sources = `## Invented. What your records rest on: they cite these by id.
- id: corn-register
  type: manuscript
  title: Register of Cases, 1911-1919
  author: [{ literal: Corn Office of the Wendle Marches }]
  issued: 1911/1919
- id: inspectors-handbook
  type: book
  title: The Inspector's Handbook, second edition
  author: [{ literal: Corn Office of the Wendle Marches }]
  issued: 1921
- id: quay-sales
  type: periodical
  title: Lists of the Quay Saleroom, 2005-2024
  issued: 2005/2024
`;

/** Where a row says nothing, its cell is empty. */
const sightings = `seen,variant,serial,example,source,kind,present,absent,condition,note
2006-04,grain-case-first,,quayside-case,quay-sales,offer,rest,lens;spirit-lamp,sound,Invented like every row here
2008,grain-case-first,G112,,quay-sales,offer,case;probe;balance,sieve,worn,
2011-10,grain-case-first,,quayside-case,quay-sales,offer,rest,lens;spirit-lamp,sound,The same example seen again
2013,grain-case-first,,tollhouse-case,quay-sales,record,rest,spirit-lamp,fine,"No number; known by a name, so that it can be recognised"
2017-02-18,grain-case-first,G112,,quay-sales,offer,case;probe;balance,sieve,worn,
2012-06,grain-case-second,G203,,quay-sales,offer,rest,thermometer,sound,
2015,grain-case-second,G188,,quay-sales,offer,,,,Contents not stated
2019-09,grain-case-second,G203,,quay-sales,offer,rest,thermometer,sound,
2023-05,grain-case-second,G241,,quay-sales,mention,,,,
`;

const ignored = `# What Fittedcase writes. The private site is for you alone, and the cache holds what is in it: they must never be
# published.
_site
_private
.*.builds/
.cache/
*.rejected.csv
*.rejected-*.csv
`;

/** A small collection that builds, in an invented scenario of its own: paths and their texts. */
export const starterFiles = (choices: Choices): ReadonlyMap<string, string> =>
  new Map([
    ["content/collection.yaml", collection(choices)],
    ["content/sources.yaml", sources],
    ["content/items/quayside-case/index.md", starterItem],
    ["content/sightings/first-log.csv", sightings],
    ["schemas/reference/grain-case/family.yaml", family],
    ["schemas/reference/grain-case/grain-case-first.yaml", first],
    ["schemas/reference/grain-case/grain-case-second.yaml", second],
    [".gitignore", ignored],
  ]);
