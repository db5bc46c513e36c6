/**
 * Every problem that a collection can have, once: the terminal, the JSON and the documentation read this.
 * A code, once published, keeps its meaning.
 */
interface CatalogueEntry {
  readonly severity: "error" | "warning";
  /** When it is reported, and what it means for the build. */
  readonly meaning: string;
}

const error = (meaning: string): CatalogueEntry => ({ severity: "error", meaning });
const warning = (meaning: string): CatalogueEntry => ({ severity: "warning", meaning });

export const catalogue = {
  // Files
  "missing-file": error("A file that every collection needs, or that a record names, does not exist."),
  "unreadable-file": error("The operating system refused to open a file or folder."),
  "unreadable-photograph": error(
    "A file named as a photograph is not one, is damaged, or is of a kind that cannot be shown.",
  ),
  "unreadable-typeface": error("A typeface of the theme is not a WOFF2 file."),
  "unreadable-recording": error(
    "A file named as a recording is not one, is of a kind that browsers do not play, or cannot be freed of its metadata; or its captions are not WebVTT.",
  ),
  "outside-root": error("A path or a link leads out of the collection's folder."),
  "not-text": error("A record is not UTF-8 text."),
  "file-too-large": error("A record is larger than any record has reason to be."),
  "misplaced-file": warning("A file lies where nothing reads it."),
  "turned-text": warning(
    "An invisible character changes the direction of the text after it, so that what is read is not what is written.",
  ),
  // Form
  "front-matter-missing": error("A Markdown record does not begin with a line of three hyphens."),
  "front-matter-unclosed": error("The front matter has no closing line of three hyphens."),
  "front-matter-language": error("The front matter asks for a language other than YAML. Only YAML is read."),
  "yaml-syntax": error("The YAML cannot be read."),
  "yaml-aliases": error("YAML aliases expand into far more than was written, or into themselves."),
  "csv-syntax": error("A row of a CSV file does not match its header."),
  // Fields
  "unknown-field": error("A field that no record of this kind has."),
  "missing-field": error("A field that every record of this kind needs."),
  "wrong-type": error("A value of a different kind from what the field takes."),
  "wrong-value": error("A value that the field does not take."),
  "wrong-date": error("A date that is not EDTF (ISO 8601-2, levels 0 to 2)."),
  "out-of-range": error("A number outside the bounds of its field."),
  // Names and references
  "wrong-id": error("An id that cannot be part of an address."),
  "duplicate-id": error("Two records claim the same id or the same former address."),
  "id-mismatch": error("A record's id differs from the name of its file."),
  "unknown-variant": error("A variant that has no reference."),
  "unknown-part": error("A part that the variant reference does not list."),
  "unknown-feature": error("A feature that the family does not declare."),
  "unknown-source": error("A source that the bibliography does not list."),
  "unknown-hazard": error(
    "A hazard that the register does not list, so that its caution could not be shown.",
  ),
  "unknown-language": warning("The words of the site itself are not written in the collection's language."),
  "unknown-scale": error("A scale that does not exist."),
  "unknown-figure": error("A figure in a text, or in what the text expects, that the data do not have."),
  "unknown-table": error(
    "A table in an article that cannot be made: its family, condition or column is unknown.",
  ),
  "unknown-plot": error("A drawing in an article that cannot be made, or for which nothing is recorded."),
  "circular-extends": error("A variant reference extends itself, directly or through others."),
  // Sense
  "range-reversed": error("A range whose end lies before its beginning."),
  "range-overlap": error(
    "Two ranges of a variant, or of a part, hold the same serials, which would be counted or dated twice.",
  ),
  "misplaced-reference": error(
    "A table or drawing inside a sentence or a list, where there is no room for it; or a figure or citation in a title or an abstract.",
  ),
  "wrong-reference": error(
    "Something in a text that looks like a figure, table, drawing, citation or footnote, but cannot be read as one.",
  ),
  "wrong-expectation": error(
    "A line in a text's expectations that cannot be read as an expectation, or can never be true; or a misspelling of the word that opens them.",
  ),
  overturned: error("The data no longer agree with what a text says. Rewrite the sentence."),
  "plan-overlap": error("Compartments of a case plan overlap, or lie outside the tray."),
  "serial-in-address": error("The address of a page would give away a serial that is masked or hidden."),
  "unnamed-group": warning("A part is in a group that is not among those that its family names."),
  "dead-link": warning(
    "A link in a text leads to nothing on the site, or is not made into a link; or a text names a picture, which it does not show.",
  ),
  "same-serial": warning("Two items of one variant have the same serial, and are counted as one example."),
  "doubtful-example": warning(
    "An example in the log has two serials; or two names that may mean one example are counted as two: they differ only in capitals, spaces and hyphens, or one is an item's id or a serial of the variant; or an offer that was listed again names none.",
  ),
  "offers-after-watching": warning("Offers were seen after the last year of watching, and are not counted."),
  "repeated-sighting": warning(
    "A row of the log repeats what another row says of the same example, and is counted as well.",
  ),
  "repeated-part": warning("A row of the log names a part twice in one cell, where it counts once."),
  "private-in-text": warning("A text that is published contains something that an item keeps private."),
  "shared-serials": warning(
    "Two variants of a family have ranges that hold the same serials, and neither extends the other: a serial alone does not tell them apart.",
  ),
  "serial-in-log": warning(
    "A serial that its item masks or hides stands in the log of sightings, which is published as it is.",
  ),
  "guessable-serial": warning(
    "A serial that its item masks or hides can be worked out, or nearly: the ranges that are published, with their dates, leave hardly any other.",
  ),
  "unaccepted-model": warning(
    "The model of a substitute is spelt almost like one that the reference accepts, and so counts for nothing; or it is not given, although the reference accepts one.",
  ),
  "too-many-units": warning("More units are accounted for than the reference lists; the rest are surplus."),
  "date-ahead": warning("Something is said to have been seen, examined or changed on a day in the future."),
  "updated-before-change": warning(
    "A record says that it was last changed before an examination or a revision that it records.",
  ),
  "sighting-before-made": warning(
    "An example was seen, held or examined before the first of its variant was issued.",
  ),
  "serial-out-of-range": warning(
    "A serial lies outside all ranges of its variant or part, or cannot be read in full and is compared with none.",
  ),
  "feature-contradicts": warning(
    "An observed feature or serial contradicts the variant that the item is held to be.",
  ),
  "moment-after-end": warning("A moment is later than the end of its recording."),
  "part-later-than-issue": warning("Parts of an item were made after the last of its variant was issued."),
  // Weak, but allowed
  "weak-contrast": warning("Two colours of the theme are too alike for one to be read on the other."),
  "figure-withheld": warning(
    "A sentence contains a figure for which the evidence is not enough, and reads 'not known'.",
  ),
  "source-missing": warning(
    "A count, range or sighting names no source. Of sightings, only the first in each file is reported.",
  ),
  "price-incomplete": warning(
    "A price in the log names no currency, or a currency no price. Of each, only the first in each file is reported.",
  ),
  "no-photograph": warning("An item has no photograph, so nobody else can check what is written about it."),
  "mark-not-recorded": warning(
    "Parts are said to be present, but without the marks by which the reference recognises a right one.",
  ),
  "evidence-missing": warning("Events of an item's custody name neither evidence nor a source."),
  "empty-collection": warning("There is nothing to show."),
} as const satisfies Record<string, CatalogueEntry>;

export type DiagnosticCode = keyof typeof catalogue;
