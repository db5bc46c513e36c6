import fc from "fast-check";

/** Values that have broken readers of text before. */
const nasty = [
  "",
  " ",
  "~",
  "null",
  "true",
  "NaN",
  ".inf",
  "-.inf",
  "1e308",
  "1e999",
  "-1",
  "0",
  "-0",
  "9007199254740993",
  "123456789012345678901234567890",
  "0118",
  "0x1F",
  "1:30",
  "1850-02-30",
  "1931/",
  "/",
  "../..",
  "[1667,1668,1670..1672]",
  "Y-17E7",
  "XXXX-12-XX",
  "9999-99-99",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "rest",
  "*a",
  "&a [*a]",
  "<<: *x",
  "!!js/function 'function(){}'",
  "!!binary AAAA",
  "{{ 7 * 7 }}",
  "{% raw %}",
  "<script>alert(1)</script>",
  "[x](javascript:alert(1))",
  "![x](https://example.org/x.png)",
  "../../../etc/passwd",
  "/etc/passwd",
  "C:\\windows",
  "CON",
  "a\u0000b",
  "\u202Eabc",
  "\uFEFF",
  "e\u0301",
  "\u{1F9ED}",
  "\uD800",
  "'",
  '"',
  "`",
  "---",
  "...",
  "- - - -",
  "? x",
  ": ",
  "#",
  "|",
  ">-",
  "=1+1",
  "@SUM(A1)",
  `${"[".repeat(200)}`,
  `${"{a: ".repeat(100)}`,
  "x".repeat(10_000),
  "-1e400",
  "2026-03-14T00:00:00Z",
] as const;

type Mutation = (text: string, at: number, span: number, value: string) => string;

const lineAt = (text: string, at: number): [number, number] => {
  const start = text.lastIndexOf("\n", at - 1) + 1;
  const end = text.indexOf("\n", at);
  return [start, end < 0 ? text.length : end];
};

const mutations: Readonly<Record<string, Mutation>> = {
  insert: (text, at, _, value) => text.slice(0, at) + value + text.slice(at),
  remove: (text, at, span) => text.slice(0, at) + text.slice(at + span),
  repeat: (text, at, span) => text.slice(0, at + span) + text.slice(at),
  truncate: (text, at) => text.slice(0, at),
  /** The value after a colon, or a cell of a table, becomes something else. */
  value: (text, at, _, value) => {
    const [start, end] = lineAt(text, at);
    const line = text.slice(start, end);
    const changed = line.includes(":")
      ? line.replace(/:.*$/, () => `: ${value}`)
      : line.replace(/[^,]+/, () => value);
    return text.slice(0, start) + changed + text.slice(end);
  },
  key: (text, at, _, value) => {
    const [start, end] = lineAt(text, at);
    return text.slice(0, start) + text.slice(start, end).replace(/[\w-]+/, () => value) + text.slice(end);
  },
  number: (text, _, __, value) => text.replace(/\d+/, () => value),
  double: (text, at) => {
    const [start, end] = lineAt(text, at);
    return `${text.slice(0, end)}\n${text.slice(start, end)}${text.slice(end)}`;
  },
  drop: (text, at) => {
    const [start, end] = lineAt(text, at);
    return text.slice(0, start) + text.slice(end + 1);
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
};

export interface Change {
  readonly file: number;
  readonly mutation: string;
  readonly at: number;
  readonly span: number;
  readonly value: string;
}

export const anyChanges: fc.Arbitrary<readonly Change[]> = fc.array(
  fc.record({
    file: fc.nat(),
    mutation: fc.constantFrom(...Object.keys(mutations)),
    at: fc.nat(),
    span: fc.integer({ min: 1, max: 40 }),
    value: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...nasty) },
      { weight: 1, arbitrary: fc.string({ unit: "binary" }) },
    ),
  }),
  { minLength: 1, maxLength: 3 },
);

export function mutate(files: ReadonlyMap<string, string>, changes: readonly Change[]): Map<string, string> {
  const mutated = new Map(files);
  const names = [...files.keys()];
  for (const { file, mutation, at, span, value } of changes) {
    const name = names[file % names.length] ?? "";
    const text = mutated.get(name) ?? "";
    mutated.set(name, mutations[mutation]?.(text, at % (text.length + 1), span, value) ?? text);
  }
  return mutated;
}
