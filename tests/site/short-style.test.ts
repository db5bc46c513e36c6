import { describe, expect, it } from "vitest";
import { shortStyle } from "../../shared/site/assets/short-style.ts";

// What may be left out: CSS Syntax Module Level 3 (W3C), 4.3.2 (comments) and 5 (white space between tokens).
describe("a style sheet as it is sent", () => {
  it.each([
    ["a {\n  color: red;\n}\n", "a{color:red;}"],
    ["/* why */\na,\nb { margin: 0 auto }", "a,b{margin:0 auto}"],
    [
      "@media (min-width: 56rem) and (scripting: enabled) {\n  a { top: 0; }\n}",
      "@media (min-width:56rem) and (scripting:enabled){a{top:0;}}",
    ],
  ])("is without what only its writers need", (long, short) => {
    expect(shortStyle(long)).toBe(short);
  });

  it.each([
    ["ul :first-child", "ul :first-child"],
    [".a/* one element */.b", ".a.b"],
    ["10px/**/auto", "10px/**/auto"],
    ["width: calc(1rem + 2 * (3px - 1px))", "width:calc(1rem + 2 * (3px - 1px))"],
  ])("means what it meant: %s", (long, short) => {
    expect(shortStyle(long)).toBe(short);
  });

  it.each([
    `a::after { content: "a  ;  /* b */ 'c'"; }`,
    `a::before { content: '\\' ; "  {'; }`,
    "a { background: url(data:image/png;base64,a/*b*/==); }",
  ])("keeps quotations and addresses to the letter: %s", (text) => {
    const inside = text.slice(text.search(/["']|url/), text.lastIndexOf(";"));
    expect(shortStyle(text)).toContain(inside);
  });
});
