import { describe, expect, it } from "vitest";
import { shortStyle } from "../../shared/site/assets/short-style.ts";
import { confinedStyle } from "../../shared/site/eleventy/confined-style.ts";

const confined = (text: string) => confinedStyle(shortStyle(text));
const within = ":where(.fittedcase, .fittedcase *)";

describe("a style sheet for a guest", () => {
  it.each([
    ["a { color: red }", `a${within}{color: red}`],
    ["a, b:is(i, :not(u)) { margin: 0 }", `a${within},b:is(i,:not(u))${within}{margin:0}`],
    ['a::after { content: "},{" }', `a${within}::after{content:"},{"}`],
    ["[title=','] { margin: 0 }", `[title=',']${within}{margin:0}`],
    ["@media print { a { margin: 0 } }", `@media print{a${within}{margin:0}}`],
  ])("%s: each rule is for what is ours", (text, expected) => {
    expect(confined(text).replace(/\s/g, "")).toBe(expected.replace(/\s/g, ""));
  });

  it.each(["html", "body", ":root"])("what %s has is had by the element around our pages", (root) => {
    expect(confined(`${root} { margin: 0 }`)).toBe(`.fittedcase${within}{margin:0}`);
  });

  it("sizes are by a measure of our own, whatever the host's rem is", () => {
    expect(confined("html { font-size: 1.5rem }")).toContain("{--rem:calc(1.5*max(1rem,16px))");
    expect(confined("p { margin: -.5rem 2rem }")).toContain("calc(-.5*var(--rem)) calc(2*var(--rem))");
    expect(confined("@media (min-width: 56rem) { p { margin: 0 } }")).toContain("(min-width:56rem)");
  });

  it("type and sheets of paper stay as they are", () => {
    for (const text of ["@page card{size:A5;}", '@font-face{font-family:"A";src:url("a.woff2");}'])
      expect(confined(text)).toBe(text);
  });
});
