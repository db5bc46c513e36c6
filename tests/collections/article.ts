import { type Files, smallCollection } from "./collection.ts";

/**
 * A variant of which 40 were made and six examples are on record, in ten sightings: two were seen once (f1), four
 * twice (f2). The jet is there in two of the four of which it is recorded. One item, with its key and without
 * its jet, is not counted again.
 */
const variant = `issued: 1905/1910
made: { count: 40, source: ledger, page: 31 }
serials: [{ prefix: A, from: 1, to: 40, source: ledger }]
description: "The chest of the ledger [@ledger, p. 31]."
features: { lock: iron, lid: flat }
parts:
  key: { name: Key, standing: core }
  jet: { name: Jet, quantity: 2 }
levels: [{ id: whole, name: Whole, needs: { standing: [core, issued] } }]
`;

const sightings = `seen,variant,serial,kind,source,present,absent
2001,chest-a,A1,offer,venn-2009,key;jet,
2002,chest-a,A2,offer,venn-2009,key,jet
2003,chest-a,A3,offer,venn-2009,key;jet,
2003,chest-a,A4,offer,venn-2009,key,jet
2004,chest-a,A5,record,venn-2009,,
2005,chest-a,A6,record,venn-2009,,
2006,chest-a,A3,offer,venn-2009,,
2007,chest-a,A4,offer,venn-2009,,
2008,chest-a,A5,offer,venn-2009,,
2009,chest-a,A6,offer,venn-2009,,
`;

const sources = `- { id: ledger, title: "Ledger of Finished Chests, 1904-1915", title-short: Ledger, author: [{ literal: Chest Works }], issued: 1904/1915 }
- { id: venn-2009, title: Chests and Keys, author: [{ family: Venn, given: Ida }], issued: 2009 }
- { id: venn-2010a, title: Keys again, author: [{ family: Venn, given: Ida }, { family: Ost, given: R. }], issued: 2010-05 }
- { id: venn-2010b, title: Locks, author: [{ family: Venn, given: Ida }, { family: Ost, given: R. }], issued: 2010 }
`;

const one = `---
title: A chest
variant: chest-a
examined: 2026-03-14
census: false
features: { lock: iron }
parts: { key: present, jet: absent }
---
It has its key [@venn-2009, pp. 3-5]. { braces } and {{ more braces }} stay as they are.
`;

/** The small collection with one article, of the given text. */
export const withArticle = (text: string, more: Files = {}): Files => ({
  ...smallCollection(variant),
  "schemas/reference/chest/chest-b.yaml":
    "name: Chest B\nextends: chest-a\nmade: null\nserials: null\nfeatures: { lock: brass }\n",
  "content/sightings/log.csv": sightings,
  "content/sources.yaml": sources,
  "content/items/one/index.md": one,
  "content/articles/chests.md": `---\ntitle: On chests\nauthors: [Ida Venn]\nupdated: 2026-03-20\n---\n${text}`,
  ...more,
});
