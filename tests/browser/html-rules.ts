import { HtmlValidate } from "html-validate";

/** The recommended rules of html-validate, for the pages of a site. */
export const htmlRules = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    // White space and the length of titles are matters of taste.
    "no-trailing-whitespace": "off",
    "long-title": "off",
    // Void elements are written as HTML has them.
    "void-style": ["error", { style: "omit" }],
    // A table whose display is changed is one in every browser only where it says so.
    "no-redundant-role": "off",
  },
});
