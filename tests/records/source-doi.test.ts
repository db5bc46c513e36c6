import { expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

// The DOI handbook (doi.org) gives a DOI as "10.prefix/suffix", and its address as "https://doi.org/" with that after it.
it.each([
  ["10.9999/brask", "10.9999/brask"],
  ["https://doi.org/10.9999/brask", "10.9999/brask"],
  ["http://dx.doi.org/10.9999/brask", "10.9999/brask"],
  ["doi:10.9999/brask", "10.9999/brask"],
  ["DOI 10.9999/brask", "10.9999/brask"],
  ["https://doi.org/10.9999/a%3Cb%3E", "10.9999/a<b>"],
  ["https://doi.org/10.9999/100%", "10.9999/100%"],
  ["to come", "to come"],
])("a DOI written as %s is %s", (written, doi) => {
  const { sound } = checkCollection(
    writeCollection(
      smallCollection("parts:\n  fork: { name: Fork }\n", {
        "content/items/one.md": item("parts: { fork: present }"),
        "content/sources.yaml": `- { id: brask, title: Brask, DOI: "${written}" }\n`,
      }),
    ),
  );
  expect(sound?.collection.sources.get("brask")?.fields.DOI).toBe(doi);
});
