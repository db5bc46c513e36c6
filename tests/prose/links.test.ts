import { describe, expect, it } from "vitest";
import { linksIn } from "../../shared/prose/links.ts";

const found = (text: string) =>
  linksIn(text).map(({ address, isPicture, start, end }) => {
    expect(text.slice(start, end)).toBe(address);
    return isPicture ? `!${address}` : address;
  });

describe("the links of a text", () => {
  it("are found with their places, as they are written", () => {
    expect(found("[a.jpg](a.jpg) and ![b](<b c.jpg>), [twice](a.jpg)\n\n[d]\n\n[d]: ../d/ 'D'\n")).toEqual([
      "a.jpg",
      "!b c.jpg",
      "a.jpg",
      "../d/",
    ]);
    expect(found("[of <figure:items/a/rank> and *more*](../x/) [tel](tel:1)")).toEqual(["../x/", "tel:1"]);
  });

  it("are told apart from the same address in code, after a backslash and in words", () => {
    const text = "`[a](b)` \\[a](b) b [b](b 'b') and\n> [b](<b>)\n\n| b |\n| - |\n| [b](b) |\n";
    expect(linksIn(text).map(({ start }) => start)).toEqual([
      text.indexOf("b 'b'"),
      text.indexOf("b>"),
      text.lastIndexOf("b)"),
    ]);
    expect(found("[d][d]\n\n[d]: <a b>\n")).toEqual(["a b"]);
  });

  it("are also such as can be no address, as they are written", () => {
    expect(found("[b](/&Tab;/[x) [c](</\t/[x>)")).toEqual(["/&Tab;/[x", "/\t/[x"]);
  });

  it("are not what stands in code, in a citation or as an address of its own", () => {
    expect(found("`[a](b)` [@a] <https://example.org/> \\[a](b)")).toEqual([]);
  });
});
