import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { Locus } from "../../diagnostics/place.ts";
import { isKnownSource } from "../../records/checks/check-named.ts";
import type { Collection } from "../../records/collection.ts";
import type { CollectionFile } from "../../source/collection-files.ts";
import type { Path, SourceDocument } from "../../source/document.ts";
import { locateInBody, locateInValue } from "../../source/locate-in-text.ts";
import { lookupOf } from "../lookup.ts";
import { type HiddenSerial, hiddenSerials, type Redact, redactorFor, redactorOf } from "../masking.ts";
import type { PublishedCollection } from "../published.ts";
import { foreseenIn } from "./foreseen.ts";
import { tellingAddresses } from "./telling-addresses.ts";
import { type Known, type Room, type TextProblem, textProblems } from "./text-problems.ts";

/**
 * Every reference in everything that is written as Markdown, held against what is published: it runs after the
 * assessments, since there are no figures before. `publish` is called only where a text takes one. Where the records have
 * errors, there is none, and references are held against the names that figures will have, with the files that cannot be
 * read. Links are held against the serials that are not shown.
 */
export function checkTexts(
  collection: Collection,
  settings: SourceDocument | undefined,
  publish: (() => PublishedCollection) | readonly CollectionFile[],
  /** Serials of other items, which these texts must not tell either. */
  others: readonly HiddenSerial[] = [],
): Diagnostic[] {
  const redactAny = redactorOf([...hiddenSerials(collection.items.values()), ...others]);
  const free: Redact = (text) => redactAny(text);
  let lookup: ReturnType<Known["lookup"]> | undefined;
  const known: Known = {
    lookup() {
      lookup ??=
        typeof publish === "function"
          ? { published: lookupOf(publish()) }
          : { foreseen: foreseenIn(collection, publish) };
      return lookup;
    },
    hasSource: (id) => isKnownSource(collection, id),
    sources: () => collection.sources.keys(),
  };
  const told = (problems: readonly TextProblem[], locate: (problem: TextProblem) => Locus): Diagnostic[] =>
    problems.map((problem) => diagnose(problem.code, locate(problem), problem.finding));
  const problemsIn = (text: string, room: Room, redact: Redact): TextProblem[] => [
    ...textProblems(text, room, known),
    ...tellingAddresses(text, redact),
  ];
  const body = ({ document }: { document: SourceDocument }, room: Room, redact: Redact = free) =>
    told(problemsIn(document.body, room, redact), ({ start, end }) => locateInBody(document, start, end));
  const value = (
    { document }: { document: SourceDocument },
    path: Path,
    text: string | undefined,
    room: Room = "text",
  ) =>
    text === undefined
      ? []
      : told(problemsIn(text, room, free), ({ start, end }) =>
          locateInValue(document, path, text.slice(start, end)),
        );

  return [
    ...(settings ? value({ document: settings }, ["description"], collection.settings.description) : []),
    ...[...collection.articles.values()].flatMap((article) => [
      ...value(article, ["title"], article.title, "words"),
      ...value(article, ["abstract"], article.abstract, "words"),
      ...body(article, "article"),
    ]),
    ...[...collection.items.values()].flatMap((item) => [
      ...value(item, ["title"], item.title, "words"),
      ...body(item, "text", (text) => redactAny(redactorFor(item)(text), item.serial)),
    ]),
    ...[...collection.families.values()].flatMap((family) =>
      value(family, ["description"], family.description),
    ),
    ...[...collection.variants.values()].flatMap((variant) => [
      ...value(variant, ["description"], own(variant, "description")),
      ...value(variant, ["note"], own(variant, "note")),
    ]),
  ];
}

/** What a variant has from another is checked, and reported, where it was written. */
function own({ document }: { document: SourceDocument }, field: string): string | undefined {
  const text = (document.data as Readonly<Record<string, unknown>>)[field];
  return typeof text === "string" ? text : undefined;
}
