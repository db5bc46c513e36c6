import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Files } from "./collection.ts";

const picture = fileURLToPath(
  new URL("../diagnostics/unknown-scale/in/content/items/open-case.png", import.meta.url),
);

/** A collection of an invented harbour, written in German throughout, with something of every kind. */
export const germanCollection = (): Files => ({
  "content/collection.yaml": `title: Laternen von Ostmark
url: https://kai.invalid/laternen/
language: de
watching: 2001/2010
scale: zahl
description: Laternen eines erfundenen Hafens.
notice: Alles hier ist erfunden.
publisher: Verein Ostmark
rights: CC BY 4.0
publish: { serial: shown, price: shown }
`,
  "schemas/hazards.yaml": `brennbar:
  name: Brennbares
  caution: Von Feuer fernhalten.
  source: Merkblatt des Vereins
`,
  "schemas/scales/zahl.yaml": `id: zahl
kind: rarity
name: Zahl nach Ostmark
counts: survivors
classes:
  - { id: wenige, words: wenige, low: 0, high: 20 }
  - { id: viele, words: viele, low: 21, high: 9999 }
`,
  "schemas/reference/laterne/family.yaml": `name: Kailaternen
maker: Werk Ostmark
features:
  brenner: { name: Brenner, values: [flach, rund], look: Den Zylinder heben., effort: 2 }
  griff: { name: Griff, values: [holz, horn], look: Am Griff., effort: 1 }
groups: { kasten: Der Kasten, lampe: Die Lampe }
`,
  "schemas/reference/laterne/laterne-1.yaml": `name: Kailaterne Form 1
issued: 1904/1909
made: { count: 40, source: kaibuch, page: 12 }
serials: [{ prefix: L, from: 1, to: 40, made: 1904/1909, source: kaibuch }]
features: { brenner: flach, griff: [holz, horn] }
parts:
  kasten: { name: Kasten, group: kasten, weight: 2 }
  leuchte: { name: Leuchte, group: lampe, standing: core, weight: 5, marks: ["{set}"], serials: [{ prefix: "", from: 1, to: 900, made: 1904/1909 }, { prefix: "", from: 901, to: 1900, made: 1912/1914 }] }
  glas: { name: Glas, group: lampe, quantity: 3 }
  docht: { name: Docht, group: lampe, standing: consumable, accepts: [{ model: schnur, credit: 0.5 }], hazards: [brennbar] }
  haken: { name: Haken, group: lampe, standing: optional }
  riemen: { name: Riemen, group: kasten, marks: ["W12"] }
levels:
  - { id: ganz, name: Ganz, needs: { standing: [core, issued] } }
  - { id: leuchte, name: Nur die Leuchte, needs: { parts: [leuchte] } }
`,
  "schemas/reference/laterne/laterne-2.yaml": `name: Kailaterne Form 2
extends: laterne-1
issued: 1910/..
made: null
serials: [{ prefix: M, from: 1, source: kaibuch }, { prefix: N, from: 10, to: 20, skipped: true, source: kaibuch }]
features: { brenner: rund, griff: horn }
parts:
  docht: null
  schirm: { name: Schirm, group: lampe }
`,
  "content/sources.yaml": `- { id: kaibuch, type: manuscript, title: Das Kaibuch, issued: 1904/1915 }
- { id: venn-2009, type: article-journal, title: Laternen und Dochte, container-title: Kaihefte, volume: 4, page: 3-9, author: [{ family: Venn, given: Ida }, { family: Ost, given: R. }, { family: Moor, given: K. }], issued: 2009 }
- { id: listen, type: report, title: Verkaufslisten, issued: 2001/2010 }
`,
  "content/sightings/log.csv": `seen,variant,serial,example,kind,source,list,present,absent,condition,price,currency,relisted,note
2001,laterne-1,L1,,offer,listen,nord,rest,,gut,120,EUR,,
2002,laterne-1,L2,,offer,listen,nord,kasten;leuchte;glas;riemen,docht,,,,,
2003-05-02,laterne-1,L3,,record,venn-2009,ost,kasten;leuchte,rest,,,,,
2003-06,laterne-1,L3,,offer,listen,nord,,,,150,EUR,,
2004,laterne-1,L4,,offer,listen,nord,rest,glas,,,,,
2005,laterne-1,L4,,mention,venn-2009,ost,,,,,,,
2005-07-01,laterne-1,,,offer,listen,nord,leuchte;kasten;glas;riemen,,,,,true,Vom Kai
1998~,laterne-2,M3,,record,venn-2009,ost,kasten;leuchte,,,,,,
2006,laterne-2,M9,,offer,listen,nord,,,,,,,
`,
  "content/items/nummer-7/index.md": `---
title: Laterne 7
variant: laterne-1
serial: L7
set: "7"
examined: 2009-08-01
features: { brenner: flach }
status: offered
price: { amount: 410, currency: EUR }
parts:
  kasten: present
  leuchte: { state: present, serial: "1200", marks: ["8"], condition: gut, repairs: [gelötet], note: Am Rand matt. }
  glas: [{ state: present, quantity: 1 }, { state: substitute, model: fensterglas }, { state: absent }]
  docht: { state: substitute, model: schnur }
  haken: { state: not-issued, evidence: Kaibuch }
  riemen: { state: unverified, quantity: 2 }
extras: [{ name: Zylinder, quantity: 2 }]
assembled: [riemen]
labels: [{ where: Deckel, kind: Schild, text: ["KAI OSTMARK", "7"] }]
photos: [{ file: open-case.png, alt: Der offene Kasten, caption: Offen, callouts: [{ part: kasten, at: [0.2, 0.3] }] }]
provenance:
  - { date: 1904/1930, event: im Gebrauch, holder: Kai Ostmark, evidence: Kaibuch }
  - { date: 1999, event: erworben, from: Herr Moor, place: Ostmark, source: listen, price: { amount: 90, currency: EUR } }
---
Die *siebte*, mit {{ Klammern }} und "Dochten" [@venn-2009, p. 4].
`,
  "content/items/nummer-7/open-case.png": readFileSync(picture),
  "content/items/nummer-8.md": `---
title: Laterne 8
variant: laterne-1
set: "8"
examined: 2010-02
features: { brenner: rund }
parts: { kasten: absent, leuchte: { state: present, quantity: 2, belongs: spare }, glas: { state: present, quantity: 2 } }
---
`,
  "content/items/nummer-12.md": `---
title: Laterne 12
variant: laterne-2
serial: M12
examined: 2010
features: { brenner: rund, griff: horn }
parts: { kasten: present, leuchte: present, glas: present, riemen: present, schirm: present, haken: present }
formerly: [zwölf-alt]
---
`.replace("zwölf-alt", "dreizehn"),
  "content/articles/kai.md": `---
title: Laternen am Kai
authors: [Ida Venn, R. Ost]
updated: 2010-03-20
abstract: Was vom Kai geblieben ist.
---
Von <figure:variants/laterne-1/made> sind <figure:variants/laterne-1/survivors> geblieben, und <figure:variants/laterne-2/survivalRate>. [@kaibuch, p. 12; @venn-2009]

<table:variants/laterne>

<table:items?variant=laterne-1,laterne-2&show=completeness,rank,verdict,level,missing,parts/glas>

<plot:variants/laterne-1/sightings>

<plot:items/nummer-7/case-plan>
`,
});
