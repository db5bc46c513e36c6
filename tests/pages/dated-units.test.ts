import { expect, it } from "vitest";
import { itemPage } from "../../shared/pages/item/item-page.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import {
  catalogueOf,
  item,
  publishedIn,
  smallCollection,
  writeCollection,
} from "../collections/collection.ts";

const variant = `issued: 1931/1938
parts:
  lamp:
    name: Lamp
    quantity: 4
    serials:
      - { prefix: L, from: 1, to: 100, made: 1930 }
      - { prefix: L, from: 101, to: 200, made: 1940/1945 }
`;

const outfit = (lamps: string, publish = "shown") =>
  writeCollection(
    smallCollection(variant, {
      "content/items/one.md": item(`publish: { serial: ${publish} }\nparts: { lamp: ${lamps} }`),
    }),
  );

function pageOf(root: string) {
  const published = publishedIn(root);
  const [one] = published.items;
  if (!one) throw new Error("no item");
  const page = itemPage(one, catalogueOf(published));
  const [lamp] = page.groups.flatMap(({ rows }) => rows);
  return { data: one, dated: page.dating.parts[0]?.dated, remarks: lamp?.remarks, amiss: page.brief.amiss };
}

const three = `[{ state: present, quantity: 2, serial: L5 }, { state: present, serial: L150 }, { state: present, serial: L300 }]`;

// By hand: L5 of 1930 lies before 1931, L150 of 1940 or later after 1938, and L300 beyond the last number, 200.
it("each serial of a part is told with what it says, and of how many units", () => {
  const { data, dated, remarks, amiss } = pageOf(outfit(three));
  expect(dated).toEqual([
    { units: "no. L5, 2 of 4, made 1930", verdict: "earlier: from stock, which was normal", doubt: false },
    {
      units: "no. L150, 1 of 4, made 1940 to 1945",
      verdict: "later than the issue: a strong doubt",
      doubt: true,
    },
    { units: "no. L300, 1 of 4", verdict: "serial outside every range known for this part", doubt: true },
  ]);
  expect(remarks).toBe(
    "2 of 4: made 1930, earlier: from stock, which was normal. 1 of 4: made 1940 to 1945, later than the issue: a strong doubt. 1 of 4: serial outside every range known for this part",
  );
  expect(amiss).toBe("1 part in doubt or not examined");
  // The part as a whole keeps one verdict, that of the gravest doubt; each line has its own.
  expect(data.dating.parts).toEqual({ lamp: { made: "1940/1945", verdict: "later" } });
  expect(data.parts[0]?.lines.map(({ dating }) => dating)).toEqual([
    { made: "1930", verdict: "earlier" },
    { made: "1940/1945", verdict: "later" },
    { made: null, verdict: "outside" },
  ]);
});

it("what is said of every unit that is there needs no count, and a serial that is hidden is not told", () => {
  const all = pageOf(outfit("{ state: present, serial: L150 }"));
  expect(all.dated?.map(({ units }) => units)).toEqual(["made 1940 to 1945"]);
  expect(all.remarks).toBe("Made 1940 to 1945, later than the issue: a strong doubt");
  const beside = pageOf(outfit("[{ state: present, serial: L300 }, absent]"));
  expect(beside.dated?.map(({ units }) => units)).toEqual([null]);
  expect(beside.data.dating.parts).toEqual({ lamp: { made: null, verdict: "undated" } });
  const hidden = pageOf(outfit(three, "hidden"));
  expect(hidden.dated?.map(({ units }) => units)).toEqual([
    "2 of 4, made 1930",
    "1 of 4, made 1940 to 1945",
    "1 of 4",
  ]);
});

it("the serial of a part that lies in none of its ranges is warned of where it stands", () => {
  const told = checkCollection(outfit(three)).diagnostics.flatMap(
    ({ code, line, column, found, expected }) =>
      code === "serial-out-of-range" ? [`${line}:${column} ${found}; ${expected}`] : [],
  );
  expect(told).toEqual(['5:122 "L300"; a serial within the ranges of "lamp": L1 to L100, L101 to L200']);
});
