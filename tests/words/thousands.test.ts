import { expect, it } from "vitest";
import { figureInputs } from "../../shared/pages/views/figure-view.ts";
import type { PublishedFigure } from "../../shared/publication/published.ts";
import { german } from "../../shared/words/de/german.ts";
import { english } from "../../shared/words/en/english.ts";

const [en, de] = [english.pages, german.pages];
const logged = { sightings: 5000, distinct: 3000, once: 2000, twice: 1000, nameless: 0 };

// CLDR: English parts thousands by a comma, German by a point.
it.each([
  [en.catalogue.lead(10_000), "10,000 outfits"],
  [de.catalogue.lead(10_000), "10.000 Garnituren"],
  [en.catalogue.rankOf(1200, 9999), "1,200 of 9,999"],
  [de.catalogue.rankOf(1200, 9999), "1.200 von 9.999"],
  [en.item.place("1,200", 9999, null), "place 1,200 of 9,999: this one and the 9,998 others"],
  [de.item.place("1.200", 9999, null), "Platz 1.200 von 9.999: dieses und die 9.998 anderen"],
  [en.item.andMore(9976), "9,976 more"],
  [de.item.andMore(9976), "9.976 weitere"],
  [en.item.documented(1200, 1300), "1,200 of its 1,300 calendar years"],
  [de.item.documented(1200, 1300), "1.200 seiner 1.300 Kalenderjahre"],
  [en.variant.sightings(logged, null), "3,000 different examples; 2,000 of them seen once, 1,000"],
  [de.variant.sightings(logged, null), "3.000 verschiedenen Exemplaren; davon 2.000 einmal gesehen, 1.000"],
  [en.finder.page(2, 1200), "Page 2 of 1,200"],
  [de.finder.page(2, 1200), "Seite 2 von 1.200"],
])("%s has %s", (said, written) => {
  expect(said).toContain(written);
});

it("a year and a page are no numbers of anything", () => {
  const figure = { inputs: { page: 1031, firstYear: 1999, offers: 1031 } } as unknown as PublishedFigure;
  expect(figureInputs(figure, { words: english }).map(({ value }) => value)).toEqual([
    "1031",
    "1999",
    "1,031",
  ]);
});
