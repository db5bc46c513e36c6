import type {
  ComparedCell,
  ComparedRow,
  ComparedRows,
  CompareTable,
} from "../../../shared/pages/compare/compare-rows.ts";
import type { Words } from "../../../shared/words/words.ts";

type Children = readonly (Node | string)[];

function element(
  name: string,
  attributes: Readonly<Record<string, string>>,
  ...children: Children
): HTMLElement {
  const made = document.createElement(name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
  made.append(...children);
  return made;
}

const cellOf = ({ text, units, notes, state }: ComparedCell): HTMLElement =>
  element(
    "td",
    state === null ? {} : { class: `state-${state}` },
    element("span", { class: "is" }, text),
    ...(units === null ? [] : [" ", element("span", { class: "units" }, units)]),
    ...(notes === "" ? [] : [element("small", {}, notes)]),
  );

const bodyOf = (title: string, rows: readonly ComparedRow[], width: number): HTMLElement[] =>
  rows.length === 0
    ? []
    : [
        element(
          "tbody",
          {},
          element(
            "tr",
            { class: "group" },
            element("th", { scope: "rowgroup", colspan: String(width) }, title),
          ),
          ...rows.map(({ name, cells }) =>
            element("tr", {}, element("th", { scope: "row" }, name), ...cells.map(cellOf)),
          ),
        ),
      ];

interface Heads {
  readonly first: string;
  /** Above each column. */
  readonly outfits: Children;
}

const scrolled = (label: string, table: HTMLElement): HTMLElement =>
  element("div", { class: "scroll", tabindex: "0", role: "group", "aria-label": label }, table);

function table(label: string, className: string, heads: Heads, bodies: Children): HTMLElement {
  const head = element(
    "tr",
    {},
    element("th", { scope: "col" }, heads.first),
    ...heads.outfits.map((outfit) => element("th", { scope: "col" }, outfit)),
  );
  return scrolled(label, element("table", { class: className }, element("thead", {}, head), ...bodies));
}

/** As many columns as a small screen has room for. */
const roomFor = 3;

/** The tables of any outfits, as the page of a pair has them; `names` makes the heads of the columns for each. */
export function besideTables(
  { outfits, brief, differs, unknown, alike }: CompareTable,
  names: (isFirst: boolean) => Children,
  words: Words,
): HTMLElement[] {
  const say = words.pages.compare;
  const width = outfits.length + 1;
  const rows = (label: string, of: ComparedRows) =>
    table(label, "beside", { first: say.row, outfits: names(false) }, [
      ...bodyOf(say.features, of.features, width),
      ...bodyOf(say.parts, of.parts, width),
    ]);
  const further = (summary: string, of: ComparedRows) =>
    of.count === 0
      ? []
      : [element("details", { class: "common" }, element("summary", {}, summary), rows(summary, of))];
  return [
    ...(width > roomFor ? [element("p", { class: "small goes-on" }, say.goesOn)] : []),
    table(say.sideBySide, "beside brief", { first: say.outfit, outfits: names(true) }, [
      element(
        "tbody",
        {},
        ...brief.map(({ name, cells }) =>
          element(
            "tr",
            {},
            element("th", { scope: "row" }, name),
            ...cells.map((text) => element("td", {}, text)),
          ),
        ),
      ),
    ]),
    element("h2", {}, say.differs),
    element("p", { class: "small" }, say.differsNote),
    differs.count === 0 ? element("p", {}, say.differsNone) : rows(say.differs, differs),
    ...further(say.unknown(unknown.count), unknown),
    ...further(say.alike(alike.count), alike),
  ];
}
