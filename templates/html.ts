/** Markup that needs no escaping: what a template returns. */
export class Html {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  toString(): string {
    return this.text;
  }
}

export type HtmlValue = Html | string | number | null | undefined | false | readonly HtmlValue[];

const references: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const escaping = /[&<>"']/;

export const escapeHtml = (text: string): string =>
  escaping.test(text) ? text.replace(/[&<>"']/g, (letter) => references[letter] ?? letter) : text;

function write(value: HtmlValue): string {
  if (value === null || value === undefined || value === false) return "";
  if (value instanceof Html) return value.text;
  if (typeof value === "string") return escapeHtml(value);
  if (typeof value === "number") return String(value);
  let text = "";
  for (const each of value) text += write(each);
  return text;
}

/** Escapes every value that is not markup already; what is absent or false leaves nothing. */
export function html(strings: TemplateStringsArray, ...values: readonly HtmlValue[]): Html {
  let text = strings[0] ?? "";
  for (let at = 0; at < values.length; at++) text += write(values[at]) + (strings[at + 1] ?? "");
  return new Html(text);
}

/** Text that is markup already: rendered Markdown and drawings. */
export const markup = (text: string | null): Html => new Html(text ?? "");

/** One after the other with something between. */
export const joined = (values: readonly HtmlValue[], between: HtmlValue): HtmlValue[] =>
  values.flatMap((value, at) => (at === 0 ? [value] : [between, value]));
