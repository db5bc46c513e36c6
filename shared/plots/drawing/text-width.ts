import { remembered } from "../../words/remembered.ts";

/**
 * Advance widths in thousandths of the type size, of the face that the site sets data in; its reading face is
 * narrower in italics.
 * Source  IBM Plex Sans Condensed, Medium: the font's own hmtx table, rounded up to tens
 */
const advances: Readonly<Record<number, string>> = {
  220: " ",
  230: "'",
  250: "ij",
  270: "l,.’‘",
  280: "!:;",
  300: "[]",
  310: "()·",
  330: "ft{}|",
  350: "r",
  370: "-",
  380: "I•",
  390: "/\\",
  420: '"',
  440: "?z",
  450: "s",
  460: "c“”",
  470: "vLy",
  480: "*x",
  490: "Jg",
  500: "ak",
  510: "eoø_",
  520: "F",
  530: "Thnu–",
  540: "ZbdpqES$0123456789+<=>^`~×−",
  560: "Y",
  570: "PV",
  580: "CX",
  600: "RBAKß",
  620: "D",
  640: "#UG&OQØ",
  650: "HN",
  710: "—",
  730: "w",
  740: "M",
  770: "½…",
  790: "æ",
  800: "m",
  810: "@",
  840: "W",
  860: "%",
};

const advanceOf = new Map(
  Object.entries(advances).flatMap(([width, letters]) =>
    [...letters].map((letter) => [letter, Number(width)] as const),
  ),
);

/** Of a letter that the table does not hold: a wide Latin letter, or a full square of an East Asian script. */
const otherLetter = 800;
const square = 1000;

/** A reader's own face in place of the site's must not run over an edge at once. */
const allowance = 1.03;

/**
 * How wide a line of text becomes at a type size, on the safe side. A drawing is made where no font can be
 * asked, so its labels are fitted by this.
 */
export const textWidth = (text: string, size: number): number =>
  (thousandthsOf(text) / 1000) * size * allowance;

/** A tray is tried in many shapes, and the same few words in each of them. */
const thousandthsOf = remembered((text: string): number => {
  let thousandths = 0;
  for (const letter of text) thousandths += advanceOf.get(letter) ?? unlisted(letter);
  return thousandths;
});

/** A letter with marks is as wide as without them; what it is otherwise is remembered. */
function unlisted(letter: string): number {
  const [base = letter, ...marks] = letter.normalize("NFD");
  const own = (part: string): number => {
    if (/\p{M}/u.test(part)) return 0;
    return advanceOf.get(part) ?? ((part.codePointAt(0) ?? 0) >= 0x2e80 ? square : otherLetter);
  };
  const width = [base, ...marks].reduce((sum, part) => sum + own(part), 0);
  advanceOf.set(letter, width);
  return width;
}
