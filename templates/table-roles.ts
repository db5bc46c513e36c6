import { type Html, markup } from "./html.ts";

const roles: Readonly<Record<string, string>> = {
  table: "table",
  thead: "rowgroup",
  tbody: "rowgroup",
  tr: "row",
  td: "cell",
  'th scope="col"': "columnheader",
  'th scope="row"': "rowheader",
  'th scope="rowgroup"': "rowheader",
};

const opening = /<(table|thead|tbody|tr|td|th scope="(?:col|row|rowgroup)")(?=[\s>])/g;

/**
 * A table that small screens do not lay out as one says what it is all the same: where a style sheet changes
 * `display`, some browsers no longer tell a screen reader of rows and columns.
 */
export const withRoles = (table: Html): Html =>
  markup(table.text.replace(opening, (tag, element: string) => `${tag} role="${roles[element]}"`));
