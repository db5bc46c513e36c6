import { describe, expect, it } from "vitest";
import {
  type Files,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../../collections/collection.ts";

const parts = `parts: { key: { name: Key, standing: core }, tray: { name: Tray } }
levels:
  - { id: whole, name: Whole, needs: { standing: [core, issued] } }
  - { id: bare, name: Bare, needs: { parts: [key] } }
`;

/** Of each row of a log, in its order, whether its example reaches a level. */
function reachedOf(rows: readonly string[], files: Files = {}): (boolean | null)[] {
  const log = ["seen,variant,kind,example,serial,present,absent", ...rows, ""].join("\n");
  const written = smallCollection(parts, { "content/sightings/log.csv": log, ...files });
  return publishedIn(writeCollection(written)).variants[0]?.sightings.map(({ reaches }) => reaches) ?? [];
}

describe("whether the log shows that a level is reached", () => {
  it("needs each part of one level to be recorded as there, and of every level one as gone to say no", () => {
    expect(
      reachedOf([
        "2001,chest-a,offer,a,,key;tray,",
        "2002,chest-a,offer,b,,key,tray",
        "2003,chest-a,offer,c,,tray,key",
        "2004,chest-a,offer,d,,tray,",
        "2005,chest-a,mention,e,,,",
        "2006,chest-a,offer,f,,,tray",
      ]),
    ).toEqual([true, true, false, null, null, null]);
  });

  it("is the same of every sighting of an example, as it was known last", () => {
    expect(
      reachedOf(["2001,chest-a,offer,a,,rest,", "2004,chest-a,record,a,,,rest", "2009,chest-a,mention,a,,,"]),
    ).toEqual([false, false, false]);
  });

  it("takes nothing from an outfit of the catalogue, which may hide that it is the same example", () => {
    const one = item("serial: A7\nparts: { key: present, tray: present }");
    expect(
      reachedOf(["2001,chest-a,offer,,A7,,", "2002,chest-a,offer,,A7,,key"], { "content/items/one.md": one }),
    ).toEqual([false, false]);
    expect(reachedOf(["2001,chest-a,offer,,A7,,"], { "content/items/one.md": one })).toEqual([null]);
  });
});
