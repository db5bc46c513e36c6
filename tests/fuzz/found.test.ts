import { execFileSync } from "node:child_process";
import { symlinkSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { reportAsText } from "../../shared/diagnostics/report.ts";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";

const problemsOf = (files: Parameters<typeof writeCollection>[0]) =>
  checkCollection(writeCollection(files)).diagnostics;

describe("found by the fuzzer: a message", () => {
  it("shows that a name has control characters, and lets none of them at the terminal", () => {
    const problems = problemsOf(
      smallCollection("", {
        "content/items/one.md": item('"co\\e[2Jlour": red\nparts: { "a\\u202eb": present }'),
        "content/items/a\u001b[2J\u202eb.md": item(""),
        "content/sightings/log.csv": "seen,variant,kind,a\u0007b\n2001,chest-a,offer,x\n",
      }),
    );
    const report = reportAsText(problems, 4);
    expect(report).toContain('"co·[2Jlour"');
    expect(report).toContain('a column "a·b"');
    expect(report).toMatch(/content\/items\/a·\[2J·b\.md:\d/);
    expect(report).not.toMatch(/(?!\n)[\p{Cc}\p{Bidi_C}]/u);
  });

  it("is no longer than somebody reads, however long a name is", () => {
    const [problem] = problemsOf(
      smallCollection("", { "content/items/one.md": item(`${"x".repeat(900)}: 1`) }),
    ).filter(({ code }) => code === "unknown-field");
    expect(problem?.message.length).toBeLessThan(1000);
  });
});

describe("found by the fuzzer: a key", () => {
  it("that is a list with a map in it is told of as one, where it stands", () => {
    const problems = problemsOf(
      smallCollection("", { "content/items/one.md": item("? [a, { b: c }]\n: 1") }),
    );
    expect(problems.filter(({ severity }) => severity === "error")).toMatchObject([
      { code: "yaml-syntax", line: 4, column: 3, found: "a list as a key" },
    ]);
  });
});

describe("a file that is none", () => {
  it.skipIf(process.platform === "win32")("is told of, and not waited for: a pipe among the records", () => {
    const root = writeCollection(smallCollection(""));
    execFileSync("mkfifo", [path.join(root, "content/pipe.md"), path.join(root, "content/sources.yaml")]);
    const { diagnostics } = checkCollection(root);
    expect(diagnostics).toContainEqual(
      expect.objectContaining({
        file: "content/sources.yaml",
        code: "unreadable-file",
        found: "a pipe, socket or device",
      }),
    );
  });
});

describe("half of a letter", () => {
  // UTF-16 writes U+1F9ED as D83E DDED; YAML 1.2, 5.7, has an escape for either half.
  it("is refused where it stands, and both halves together are a letter", () => {
    const half = problemsOf(smallCollection("", { "content/items/one.md": item('"set": "No. \\uD83E"') }));
    expect(half).toContainEqual(
      expect.objectContaining({ file: "content/items/one.md", line: 4, column: 13, code: "not-text" }),
    );
    for (const whole of ['"No. \\uD83E\\uDDED"', '"No. \\U0001F9ED"', "'No. \\uD83E'"]) {
      const found = problemsOf(smallCollection("", { "content/items/one.md": item(`set: ${whole}`) }));
      expect(found.filter(({ severity }) => severity === "error")).toEqual([]);
    }
  });
});

describe("an id", () => {
  // POSIX NAME_MAX is 255 bytes on the usual file systems; "data/items/<id>.json" has to be one of them.
  it.each([
    ["content/items", ".md", item("")],
    ["content/items", "/index.md", item("")],
    ["content/articles", ".md", "---\ntitle: A\n---\n"],
    ["schemas/reference/chest", ".yaml", "name: A\n"],
  ])(
    "of %s that is longer than any file system takes is an error of its own (%s)",
    (folder, ending, text) => {
      const at = (length: number) =>
        problemsOf(smallCollection("", { [`${folder}/${"a".repeat(length)}${ending}`]: text })).map(
          ({ code }) => code,
        );
      expect(at(81)).toContain("wrong-id");
      expect(at(80)).not.toContain("wrong-id");
    },
  );
});

describe("found by the fuzzer: a file with more mistakes than a call takes arguments", () => {
  const many = 130_000;

  it("has each of them told of, whether they are fields of a record or rows of a log", {
    timeout: 60_000,
  }, () => {
    const fields = Array.from({ length: many }, (_, at) => `f${at}: 1`).join("\n");
    // Too few cells and too many, so that no header would suit most of them.
    const rows = "2001,chest-a\n2001,chest-a,offer,a lid\n".repeat(many / 2);
    const problems = problemsOf(
      smallCollection("", {
        "content/items/one.md": item(fields),
        "content/sightings/log.csv": `seen,variant,kind\n${rows}`,
      }),
    );
    const count = (code: string) => problems.filter((problem) => problem.code === code).length;
    expect(count("unknown-field")).toBe(many);
    expect(count("csv-syntax")).toBe(many);
  });
});

describe("found by the fuzzer: one long line with thousands of mistakes", () => {
  // Of 400 kB in such a line the reader made 400,000 errors, each with a copy of the line and a stack.
  it("is told of once, where the first of them stands, and soon", () => {
    const before = process.cpuUsage().user;
    const problems = problemsOf(
      smallCollection("", { "content/items/one.md": item(`maker: ${"[@]".repeat(130_000)}\nset: [@]`) }),
    );
    expect((process.cpuUsage().user - before) / 1e6).toBeLessThan(10);
    expect(problems.filter(({ code }) => code === "yaml-syntax")).toMatchObject([
      { file: "content/items/one.md", line: 4, column: 9 },
      { file: "content/items/one.md", line: 5 },
    ]);
  });
});

describe("found by the fuzzer: a mapping that has a field called toString", () => {
  it("is told of where one of a few words is wanted, and where an id is", () => {
    const problems = problemsOf(
      smallCollection("", {
        "content/items/one.md": item("status: { toString: 1 }"),
        "content/items/two.md": item("id: { toString: 1 }"),
      }),
    );
    expect(problems).toContainEqual(
      expect.objectContaining({ file: "content/items/one.md", line: 4, found: "a mapping of fields" }),
    );
    expect(problems).toContainEqual(
      expect.objectContaining({ file: "content/items/two.md", line: 4, code: "id-mismatch" }),
    );
  });

  it("is told of by a build where a date is wanted, since it cuts logs before anything is checked", async () => {
    const root = writeCollection(
      smallCollection("", {
        "content/sightings/log.yaml": "- { seen: { toString: 1 }, variant: chest-a, kind: offer }\n",
      }),
    );
    const { written, diagnostics } = await buildSite(root, path.join(root, "_site"), "public");
    expect(written).toBeNull();
    expect(diagnostics).toContainEqual(
      expect.objectContaining({ file: "content/sightings/log.yaml", line: 1, severity: "error" }),
    );
  });
});

describe("found by the fuzzer: what the two readers of YAML see differently", () => {
  const errorsOf = (files: Parameters<typeof smallCollection>[1]) =>
    problemsOf(smallCollection("", files)).filter(({ severity }) => severity === "error");

  it("a carriage return alone ends a line for both (YAML 1.2, 5.4): a map as a key is found behind it", () => {
    expect(errorsOf({ "content/items/one.md": item("features:\r  {}: iron\rset: A 1") })).toMatchObject([
      { file: "content/items/one.md", code: "yaml-syntax", found: "a map as a key" },
    ]);
  });

  it("one goes on into depths in which the other is lost", () => {
    const deep = "state: present".repeat(28_000);
    expect(errorsOf({ "content/items/one.md": item(`parts: { case: ${deep} }`) })).toMatchObject([
      { file: "content/items/one.md", line: 4, code: "yaml-syntax" },
    ]);
  });
});

describe("found by the fuzzer: links among templates that lead round", () => {
  it("are followed once, whether they lead back or to one another", async () => {
    const root = writeCollection(
      smallCollection("", {
        "content/items/one.md": item(""),
        "templates/styles/90-own.css": "p { color: red }\n",
      }),
    );
    for (const [name, target] of [
      ["styles/round", ".."],
      ["styles/one", "other"],
      ["styles/other", "one"],
    ] as const)
      symlinkSync(target, path.join(root, "templates", name));
    expect(checkCollection(root).diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
    expect((await buildSite(root, path.join(root, "_site"), "public")).written).not.toBeNull();
  });
});
