/** Changes the text of one file: somewhere, over some length, with some value. */
export type TextMutation = (text: string, at: number, span: number, value: string) => string;

const lineAt = (text: string, at: number): readonly [number, number] => {
  const start = text.lastIndexOf("\n", at - 1) + 1;
  const end = text.indexOf("\n", at);
  return [start, end < 0 ? text.length : end];
};

const inLine = (text: string, at: number, change: (line: string) => string): string => {
  const [start, end] = lineAt(text, at);
  return text.slice(0, start) + change(text.slice(start, end)) + text.slice(end);
};

/** Changes the first match at or after a place, or else the first of all. */
const next = (text: string, at: number, pattern: RegExp, change: (found: string) => string): string => {
  const search = new RegExp(pattern.source, `${pattern.flags}g`);
  search.lastIndex = at;
  const match = search.exec(text) ?? new RegExp(pattern.source, pattern.flags).exec(text);
  if (!match) return text;
  return text.slice(0, match.index) + change(match[0]) + text.slice(match.index + match[0].length);
};

/** As YAML and CSV both can quote it; half a surrogate pair can be written no other way. */
const quoted = (value: string): string =>
  JSON.stringify(value).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

const scalar = /(?<=[:,[]\s+|[-]\s)[^\s,:{}[\]#"][^,:{}[\]\n]*/;
const textField =
  /(?<=\b(?:title|name|note|caption|alt|look|holder|event|where|kind|condition|maker|notice|description|from|place|evidence|publisher|author|caution|abstract|model): )[^,}\n]+/;

/** Depth and size are cheap mostly, and sometimes as large as anything is. */
const seldom = (span: number, most: number): number => (span === 40 ? most : span * 4);

/** Values of fields that are free are the only ones that a page ever shows as they are. */
const mutations: Readonly<Record<string, TextMutation>> = {
  insert: (text, at, _, value) => text.slice(0, at) + value + text.slice(at),
  remove: (text, at, span) => text.slice(0, at) + text.slice(at + span),
  repeat: (text, at, span) => text.slice(0, at + span) + text.slice(at),
  truncate: (text, at) => text.slice(0, at),
  /** The value after a colon, or a cell of a table, becomes something else. */
  value: (text, at, _, value) =>
    inLine(text, at, (line) =>
      line.includes(":") ? line.replace(/:.*$/, () => `: ${value}`) : line.replace(/[^,]+/, () => value),
    ),
  scalar: (text, at, _, value) => next(text, at, scalar, () => value),
  quotedScalar: (text, at, _, value) => next(text, at, scalar, () => quoted(value)),
  textField: (text, at, _, value) => next(text, at, textField, () => quoted(value)),
  cell: (text, at, span, value) =>
    inLine(text, at, (line) => {
      const cells = line.split(",");
      if (cells.length > 1)
        cells[span % cells.length] = value.includes(",") ? `"${value.replaceAll('"', '""')}"` : value;
      return cells.join(",");
    }),
  list: (text, at, _, value) => next(text, at, scalar, (found) => `[${found}, ${value}]`),
  map: (text, at, _, value) => next(text, at, scalar, (found) => `{ ${value}: ${found} }`),
  key: (text, at, _, value) => inLine(text, at, (line) => line.replace(/[\w-]+/, () => value)),
  number: (text, at, _, value) => next(text, at, /-?\d+(?:\.\d+)?/, () => value),
  negated: (text, at) => next(text, at, /\d+/, (found) => `-${found}`),
  counted: (text, at, span) => next(text, at, /\d+/, (found) => String(Number(found) + span - 20)),
  date: (text, at, _, value) => next(text, at, /\b[12]\d{3}(?:[-/][\d./-]*)?/, () => value),
  id: (text, at, _, value) => next(text, at, /[a-z]+(?:-[a-z0-9]+)+/, () => value),
  otherId: (text, at, span) => {
    const ids = text.match(/[a-z]+(?:-[a-z0-9]+)+/g) ?? [];
    return next(text, at, /[a-z]+(?:-[a-z0-9]+)+/, (found) => ids[span % ids.length] ?? found);
  },
  state: (text, at, span) =>
    next(
      text,
      at,
      /present|absent|unverified|substitute|not-issued|core|issued|consumable|optional/,
      () =>
        ["present", "absent", "unverified", "not-issued", "substitute", "core", "consumable", "optional"][
          span % 8
        ] ?? "",
    ),
  letter: (text, at, span) => {
    const alike: Readonly<Record<string, string>> = {
      a: "а",
      e: "е",
      o: "о",
      i: "і",
      c: "ϲ",
      "-": "‐",
      " ": "\u00a0",
    };
    return next(text, at, /[aeoic -]/, (found) => (span % 3 ? (alike[found] ?? found) : found.toUpperCase()));
  },
  decomposed: (text) => text.normalize("NFD"),
  paragraph: (text, _, __, value) => `${text}\n\n${value}\n`,
  double: (text, at) => {
    const [start, end] = lineAt(text, at);
    return `${text.slice(0, end)}\n${text.slice(start, end)}${text.slice(end)}`;
  },
  drop: (text, at) => {
    const [start, end] = lineAt(text, at);
    return text.slice(0, start) + text.slice(end + 1);
  },
  swap: (text, at) => {
    const [start, end] = lineAt(text, at);
    const [, after] = lineAt(text, Math.min(text.length, end + 1));
    return `${text.slice(0, start)}${text.slice(end + 1, after)}\n${text.slice(start, end)}${text.slice(after)}`;
  },
  indent: (text, at) => {
    const [start] = lineAt(text, at);
    return `${text.slice(0, start)}  ${text.slice(start)}`;
  },
  tab: (text, at) => {
    const [start] = lineAt(text, at);
    return `${text.slice(0, start)}\t${text.slice(start)}`;
  },
  crlf: (text) => text.replaceAll("\n", "\r\n"),
  cr: (text) => text.replaceAll("\n", "\r"),
  mark: (text) => `\uFEFF${text}`,
  deep: (text, at, span, value) => {
    const depth = seldom(span, 12_000);
    const [open, close] = span % 2 ? ["[", "]"] : ["{ a: ", " }"];
    return next(text, at, scalar, () => open.repeat(depth) + value + (span % 3 ? close.repeat(depth) : ""));
  },
  long: (text, at, span, value) =>
    next(text, at, scalar, () =>
      (value || "x").repeat(Math.ceil(seldom(span, 400_000) / (value.length || 1))),
    ),
  many: (text, at, span) => {
    const [start, end] = lineAt(text, at);
    return `${text.slice(0, end)}${`\n${text.slice(start, end)}`.repeat(seldom(span, 400))}${text.slice(end)}`;
  },
};

/** Those after which a collection is often still sound count for more. */
const often = [
  "scalar",
  "quotedScalar",
  "textField",
  "textField",
  "cell",
  "number",
  "counted",
  "date",
  "state",
  "otherId",
  "paragraph",
  "double",
  "drop",
];

export const textMutationNames: readonly string[] = [...Object.keys(mutations), ...often, ...often];

export const mutateText = (name: string, ...given: Parameters<TextMutation>): string =>
  mutations[name]?.(...given) ?? given[0];
