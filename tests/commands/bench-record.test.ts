import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editedRecord } from "../../shared/commands/serve/bench/edited-record.ts";
import { askedPart, partChanges } from "../../shared/commands/serve/bench/submitted-changes.ts";
import type { Part } from "../../shared/records/variant.ts";
import { markdownRecord } from "../../shared/source/record-file.ts";
import { englishBench } from "../../shared/words/en/bench.ts";

const order = ["case", "sextant", "shade", "oil-bottle", "papers"];
const partOf = (id: string): Part => ({ id, quantity: 1 }) as Part;

const dataOf = (text: string) =>
  markdownRecord("item.md", text).document?.data as Record<string, Record<string, unknown> | null>;

/** What the page would submit of a part, with some fields filled in, as the item's file then reads. */
const ticked = (text: string, part: string, fields: Record<string, string>): string =>
  sent(text, part, new URLSearchParams(Object.entries(fields).map(([name, value]) => [`0.${name}`, value])));

function sent(text: string, part: string, form: URLSearchParams): string {
  const parts = dataOf(text).parts ?? {};
  for (const way of partChanges(
    partOf(part),
    parts[part],
    askedPart(partOf(part), parts[part], form, englishBench),
    order,
  )) {
    const edited = editedRecord(text, way);
    if (edited !== null) return edited;
  }
  return text;
}

const written = `---
title: A case   # as on its label
variant: pilot-mk2
parts:
  # The instrument first.
  sextant: present   # seen
  shade: { state: present, quantity: 3, marks: ['P31'], packed: "sealed" } # three

  papers:
    state: present
    note: >-
      Folded
      twice.
    # below the lid
photos: []
---
parts: in the text, too
`;

/** The lines that are not the same, with - for before and + for after, by place. */
function changedLines(before: string, after: string): string[] {
  const [a, b] = [before.split("\n"), after.split("\n")];
  let [start, end] = [0, 0];
  while (start < Math.min(a.length, b.length) && a[start] === b[start]) start++;
  while (end < Math.min(a.length, b.length) - start && a.at(-1 - end) === b.at(-1 - end)) end++;
  return [
    ...a.slice(start, a.length - end).map((line) => `-${line}`),
    ...b.slice(start, b.length - end).map((line) => `+${line}`),
  ];
}

describe("an item's file, ticked at the bench", () => {
  // A form that no script sends has CR LF for every newline (URL-encoded form data, HTML Standard 4.10.21.8).
  it.each(["|", "|-", "|+"])(
    "keeps a note of several lines, written with %s, that nobody touched",
    (style) => {
      const text = written.replace(/note: >-\n {6}Folded\n/, `note: ${style}\n      Folded\n`);
      const { note = "" } = (dataOf(text).parts?.papers ?? {}) as { note?: string };
      expect(note).toContain("Folded\ntwice.");
      const sent = note.replaceAll("\n", "\r\n");
      expect(ticked(text, "papers", { state: "present", note: sent })).toBe(text);
      expect(changedLines(text, ticked(text, "papers", { state: "unverified", note: sent }))).toEqual([
        "-    state: present",
        "+    state: unverified",
      ]);
      expect(ticked(text, "papers", { state: "present", note: `${sent}more` })).not.toBe(text);
    },
  );

  it.each<[string, string, Record<string, string>, string[]]>([
    [
      "another state for one word",
      "sextant",
      { state: "absent" },
      ["-  sextant: present   # seen", "+  sextant: absent   # seen"],
    ],
    [
      "more to say of one word",
      "sextant",
      { state: "present", marks: "118; P31", note: "a, b: c" },
      [
        "-  sextant: present   # seen",
        '+  sextant: { state: present, marks: [ "118", P31 ], note: "a, b: c" }   # seen',
      ],
    ],
    [
      "one field of several",
      "shade",
      { state: "present", quantity: "2", marks: "P31" },
      [
        `-  shade: { state: present, quantity: 3, marks: ['P31'], packed: "sealed" } # three`,
        `+  shade: { state: present, quantity: 2, marks: ['P31'], packed: "sealed" } # three`,
      ],
    ],
    [
      "a field more, in its place",
      "shade",
      { state: "present", quantity: "3", rest: "absent", marks: "P31" },
      [
        `-  shade: { state: present, quantity: 3, marks: ['P31'], packed: "sealed" } # three`,
        `+  shade: { state: present, quantity: 3, rest: absent, marks: ['P31'], packed: "sealed" } # three`,
      ],
    ],
    [
      "a field taken away",
      "shade",
      { state: "present", quantity: "3", marks: "" },
      [
        `-  shade: { state: present, quantity: 3, marks: ['P31'], packed: "sealed" } # three`,
        `+  shade: { state: present, quantity: 3, packed: "sealed" } # three`,
      ],
    ],
    ["a new part after the one before it", "oil-bottle", { state: "absent" }, ["+  oil-bottle: absent"]],
    ["a new part before all others", "case", { state: "present" }, ["+  case: present"]],
    [
      "a part no longer examined, with the remark that is its writer's",
      "sextant",
      { state: "" },
      ["-  sextant: present   # seen", "+  # sextant: present   # seen"],
    ],
    [
      "a part of several lines",
      "papers",
      { state: "unverified", note: "Folded twice." },
      ["-    state: present", "+    state: unverified"],
    ],
    [
      "a field more in a part of several lines",
      "papers",
      { state: "present", condition: "worn", note: "Folded twice." },
      ["+    condition: worn"],
    ],
    [
      "a folded text replaced",
      "papers",
      { state: "present", note: "Three leaves." },
      ["-    note: >-", "-      Folded", "-      twice.", "+    note: Three leaves."],
    ],
    ["nothing, where nothing is new", "shade", { state: "present", quantity: "3", marks: "P31" }, []],
  ])("has %s, and every other byte as it was", (_, part, fields, expected) => {
    const after = ticked(written, part, fields);
    expect(changedLines(written, after)).toEqual(expected);
    // The same with the line ends of another system.
    const crlf = (text: string) => text.replaceAll("\n", "\r\n");
    expect(ticked(crlf(written), part, fields)).toBe(crlf(after));
  });

  it("brings in the line that a comment offers, and offers it again", () => {
    const offered = `---
title: A case
variant: pilot-mk2
parts:
  ## ---- Instrument ----
  ## Sextant (core). Look below the arc.
  # sextant: present
  ## Horizon shade (issued, 4 of them).
  # shade: { state: present, quantity: 4 }  # count them

## Things in the case that the reference does not list.
# extras:
---
`;
    const one = ticked(offered, "shade", { state: "present", quantity: "3" });
    expect(one).toBe(
      offered.replace(
        "# shade: { state: present, quantity: 4 }  #",
        "shade: { state: present, quantity: 3 }  #",
      ),
    );
    const two = ticked(one, "sextant", { state: "absent" });
    expect(two).toBe(one.replace("# sextant: present", "sextant: absent"));
    expect(ticked(two, "sextant", { state: "" })).toBe(
      two.replace("  sextant: absent", "  # sextant: absent"),
    );
  });

  it.each([
    [
      "no parts at all",
      "---\ntitle: A\nvariant: v\n---\n",
      "---\ntitle: A\nvariant: v\nparts:\n  sextant: present\n---\n",
    ],
    ["parts without one", "---\nparts:\ntitle: A\n---\n", "---\nparts:\n  sextant: present\ntitle: A\n---\n"],
    [
      "parts in braces",
      "---\nparts: { case: absent }\n---\n",
      "---\nparts: { case: absent, sextant: present }\n---\n",
    ],
    ["empty braces", "---\nparts: {}\n---\n", "---\nparts: { sextant: present }\n---\n"],
    [
      "parts after it in braces",
      "---\nparts: {papers: absent}\n---\n",
      "---\nparts: {sextant: present, papers: absent}\n---\n",
    ],
  ])("takes a first tick where there are %s", (_, before, after) => {
    expect(ticked(before, "sextant", { state: "present" })).toBe(after);
  });

  describe("of several entries", () => {
    const listed = `---
parts:
  shade:
    # Longest first: remark A
    - { state: present, quantity: 2, marks: ["57"] } # remark B
    - absent
    # Remark C, of the one below.
    - state: unverified
      quantity: 1 # remark D
  papers: absent
---
`;
    const states = (text: string, ...all: string[]) =>
      sent(text, "shade", new URLSearchParams(all.map((state, at) => [`${at}.state`, state])));
    it.each<[string, string[], string[]]>([
      ["one without a remark goes", ["present", "", "unverified"], ["-    - absent"]],
      [
        "one with a remark goes, and the remark is its writer's",
        ["", "absent", "unverified"],
        [
          '-    - { state: present, quantity: 2, marks: ["57"] } # remark B',
          '+    # - { state: present, quantity: 2, marks: ["57"] } # remark B',
        ],
      ],
      [
        "one goes and another one changes",
        ["present", "", "absent"],
        [
          "-    - absent",
          "-    # Remark C, of the one below.",
          "-    - state: unverified",
          "+    # Remark C, of the one below.",
          "+    - state: absent",
        ],
      ],
      [
        "two go",
        ["present", "", ""],
        [
          "-    - absent",
          "-    # Remark C, of the one below.",
          "-    - state: unverified",
          "-      quantity: 1 # remark D",
          "+    # Remark C, of the one below.",
        ],
      ],
      [
        "all go",
        ["", "", ""],
        [
          ...listed
            .split("\n")
            .slice(2, 9)
            .map((line) => `-${line}`),
          ...listed
            .split("\n")
            .slice(2, 9)
            .map((line) => `+  # ${line.slice(2)}`),
        ],
      ],
      ["one more comes", ["present", "absent", "unverified", "present"], ["+    - present"]],
    ])("%s, and every other byte stays", (_, asked, expected) => {
      const after = states(listed, ...asked);
      expect(changedLines(listed, after)).toEqual(expected);
      const crlf = (text: string) => text.replaceAll("\n", "\r\n");
      expect(states(crlf(listed), ...asked)).toBe(crlf(after));
    });

    it("has them in brackets as they were", () => {
      const flow = "---\nparts:\n  shade: [ { state: present }, absent,  unverified ] # three\n---\n";
      expect(states(flow, "present", "", "unverified")).toBe(flow.replace("absent,  ", ""));
      expect(states(flow, "present", "absent", "")).toBe(flow.replace(",  unverified", ""));
      expect(states(flow, "present", "absent", "unverified", "present")).toBe(
        flow.replace("unverified ]", "unverified, present ]"),
      );
    });
  });

  it("leaves a line that was taken out where it is, with what it says, when the part is ticked anew", () => {
    const taken = '---\nparts:\n  # sextant: { state: present, serial: "1490" }\n  shade: absent\n---\n';
    expect(ticked(taken, "sextant", { state: "present" })).toContain(
      '  # sextant: { state: present, serial: "1490" }\n',
    );
    expect(dataOf(ticked(taken, "sextant", { state: "present" })).parts).toEqual({
      sextant: "present",
      shade: "absent",
    });
    // Who enters the same again has the line again.
    expect(ticked(taken, "sextant", { state: "absent", serial: "1490" })).toBe(
      taken.replace("# sextant: { state: present", "sextant: { state: absent"),
    );
  });

  it("does not take remarks away within what it would have to write anew", () => {
    const remarked = "---\nparts:\n  shade:\n    state: present # seen\n    note: Thin.\n---\n";
    const more = new URLSearchParams([
      ["0.state", "present"],
      ["1.state", "absent"],
    ]);
    expect(sent(remarked, "shade", more)).toBe(remarked);
    expect(dataOf(sent(remarked.replace(" # seen", ""), "shade", more)).parts).toEqual({
      shade: [{ state: "present", note: "Thin." }, "absent"],
    });
  });

  it("leaves alone what it cannot change precisely", () => {
    const shared = "---\nparts:\n  sextant: &one { state: present }\n  shade: *one\n---\n";
    expect(ticked(shared, "sextant", { state: "absent" })).toBe(shared);
  });

  it("never changes what was not asked for, whatever is typed", () => {
    const text = fc.string({ unit: "grapheme", maxLength: 30 });
    const typed = fc.record({
      state: fc.constantFrom("present", "absent", "substitute", "unverified", "not-issued", ""),
      marks: text,
      note: text,
      serial: fc.oneof(
        text,
        fc.constantFrom("0118", "12E4", "null", "true", "1:30", "- x", "# x", "{}", "'", '"', "a: b"),
      ),
    });
    fc.assert(
      fc.property(fc.constantFrom(...order), typed, (part, fields) => {
        const before = dataOf(written);
        const result = ticked(written, part, fields);
        const after = dataOf(result);
        expect({ ...after, parts: null }).toEqual({ ...before, parts: null });
        expect({ ...after.parts, [part]: null }).toEqual({ ...before.parts, [part]: null });
        expect(result.endsWith("\n---\nparts: in the text, too\n")).toBe(true);
        for (const comment of ["# as on its label", "# The instrument first."])
          expect(result).toContain(comment);
        const line = after.parts?.[part] as { serial?: unknown; note?: unknown } | string | undefined;
        if (fields.state !== "" && typeof line === "object" && fields.serial.trim() !== "")
          expect(line.serial).toBe(fields.serial.trim());
      }),
      { numRuns: 500 },
    );
  });
});
