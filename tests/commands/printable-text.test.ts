import { describe, expect, it } from "vitest";
import { paintFor } from "../../shared/commands/terminal/paint.ts";
import { printable } from "../../shared/commands/terminal/printable-text.ts";

describe("what a terminal is given", () => {
  // ECMA-48: CSI 2J erases the screen, OSC 0 names the window, 8-bit CSI is U+009B, SGR 8 conceals.
  it.each([
    ["\u001b[2J", "\u00b7[2J"],
    ["\u001b]0;title\u0007", "\u00b7]0;title\u00b7"],
    ["\u009b31m", "\u00b731m"],
    ["\u001b[8mhidden", "\u00b7[8mhidden"],
    ["over\rwritten", "over\u00b7written"],
    ["a\u202Eb\u2066c", "a\u00b7b\u00b7c"],
    ["line\n\tline", "line\n\tline"],
    ["\u{1F469}\u200D\u{1F680} caf\u00e9", "\u{1F469}\u200D\u{1F680} caf\u00e9"],
  ])("%j is printed as %j", (text, printed) => {
    expect(printable(text)).toBe(printed);
  });

  it.each(["bold", "dim", "red", "green", "yellow", "cyan", "underline"] as const)(
    "our own %s stays",
    (style) => {
      const dressed = paintFor(true)(style, "word");

      expect(printable(dressed)).toBe(dressed);
    },
  );
});
