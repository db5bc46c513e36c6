import { expect, it } from "vitest";
import { elseAmiss } from "../../shared/pages/views/missing-parts.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";
import { item, publishedIn, smallCollection, writeCollection } from "../collections/collection.ts";

// What is said to be present counts as certain, whatever its mark: it cannot be in doubt on the same page.
it("a part that bears another set's number is told of as that, and not among the parts in doubt", () => {
  const { items } = publishedIn(
    writeCollection(
      smallCollection(
        'parts: { pen: { name: Pen, marks: ["{set}"] }, cup: { name: Cup }, jar: { name: Jar } }\n',
        {
          "content/items/one.md": item(
            'set: "57"\nparts: { pen: { state: present, marks: ["88"] }, cup: present, jar: unverified }',
          ),
        },
      ),
    ),
  );
  const [one] = items;
  if (!one) throw new Error("The item is not published.");
  expect(one.parts[0]).toMatchObject({ summary: "present", share: { low: 1, high: 1 } });
  expect(elseAmiss(one, english)).toBe("1 part bears another set's number; 1 part in doubt or not examined");
  expect(elseAmiss(one, german)).toBe(
    "1 Teil trägt die Nummer eines anderen Satzes; 1 Teil zweifelhaft oder ungeprüft",
  );
});
