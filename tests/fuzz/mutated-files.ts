import fc from "fast-check";
import { anyValue } from "./nasty-values.ts";
import { mutateText, textMutationNames } from "./text-mutations.ts";

/** A file is a text, bytes, or a link to somewhere. */
export type FuzzedFile = string | Uint8Array | { readonly linkTo: string };
export type FuzzedFiles = ReadonlyMap<string, FuzzedFile>;

export interface Change {
  readonly file: number;
  readonly mutation: string;
  readonly at: number;
  readonly span: number;
  readonly value: string;
}

type FileMutation = (files: Map<string, FuzzedFile>, name: string, change: Change) => void;

/** Where records lie, and where they do not. */
const folders = [
  "content/items",
  "content/articles",
  "content/sightings",
  "content",
  "schemas/reference/lantern",
  "schemas/scales",
  "schemas/reference",
  "content/items/no-7",
  "content/theme",
  "templates/parts",
];
const targets = [
  "/etc/passwd",
  "..",
  ".",
  "/",
  "nowhere",
  "../../content",
  "/dev/null",
  "/dev/zero",
  "../items",
];
const extensions = [
  ".md",
  ".yaml",
  ".csv",
  ".json",
  "/index.md",
  ".js",
  ".11ty.js",
  ".njk",
  ".11tydata.json",
  "",
];

const named = ({ value, at, span }: Change, name: string): string => {
  const extension =
    span % 3 === 0 ? extensions[span % extensions.length] : /\/?[^/.]*(\.\w+)$/.exec(name)?.[1];
  const own = value.replace(/[\0/]/g, "").slice(0, 100) || "x";
  return `${folders[at % folders.length]}/${own}${extension ?? ""}`;
};

const fileMutations: Readonly<Record<string, FileMutation>> = {
  deleted: (files, name) => void files.delete(name),
  renamed: (files, name, change) => {
    const content = files.get(name) ?? "";
    files.delete(name);
    files.set(named(change, name), content);
  },
  copied: (files, name, change) => void files.set(named(change, name), files.get(name) ?? ""),
  /** As somebody's machine has it that knows no difference. */
  otherCase: (files, name) =>
    void files.set(
      name.replace(/[^/]*$/, (last) => last.toUpperCase()),
      files.get(name) ?? "",
    ),
  otherItemCase: (files, name) =>
    void files.set(
      name.replace(/(content\/items\/|reference\/)([a-z])/, (_, a, b) => a + b.toUpperCase()),
      files.get(name) ?? "",
    ),
  written: (files, name, { value }) => void files.set(name, value),
  swapped: (files, name, { at }) => {
    const names = [...files.keys()];
    const other = names[at % names.length] ?? name;
    const [one, two] = [files.get(name) ?? "", files.get(other) ?? ""];
    files.set(name, two);
    files.set(other, one);
  },
  bytes: (files, name, { at, span }) => {
    const content = files.get(name);
    if (typeof content !== "string") return;
    const bytes = Buffer.from(content);
    bytes[at % (bytes.length + 1)] = 128 + span;
    files.set(name, bytes);
  },
  wide: (files, name) => {
    const content = files.get(name);
    if (typeof content === "string") files.set(name, Buffer.from(`\uFEFF${content}`, "utf16le"));
  },
  linked: (files, name, { at }) => void files.set(name, { linkTo: targets[at % targets.length] ?? "." }),
  linkBeside: (files, name, change) =>
    void files.set(named(change, name), { linkTo: targets[change.span % targets.length] ?? "." }),
};

const change = (mutation: fc.Arbitrary<string>): fc.Arbitrary<Change> =>
  fc.record({
    file: fc.nat(),
    mutation,
    at: fc.nat(),
    span: fc.integer({ min: 1, max: 40 }),
    value: anyValue,
  });

const anyChange = fc.oneof(
  { weight: 12, arbitrary: change(fc.constantFrom(...textMutationNames)) },
  { weight: 1, arbitrary: change(fc.constantFrom(...Object.keys(fileMutations))) },
);

export const anyChanges: fc.Arbitrary<readonly Change[]> = fc.oneof(
  { weight: 3, arbitrary: fc.tuple(anyChange) },
  { weight: 2, arbitrary: fc.array(anyChange, { minLength: 2, maxLength: 4 }) },
);

export function mutate(sound: FuzzedFiles, changes: readonly Change[]): Map<string, FuzzedFile> {
  const files = new Map(sound);
  for (const change of changes) {
    const names = [...files.keys()];
    const name = names[change.file % names.length];
    if (name === undefined) break;
    const ofFile = fileMutations[change.mutation];
    const content = files.get(name);
    if (ofFile) ofFile(files, name, change);
    else if (typeof content === "string") {
      const text = mutateText(
        change.mutation,
        content,
        change.at % (content.length + 1),
        change.span,
        change.value,
      );
      // No case is about what a disk holds.
      if (text.length < 3_000_000) files.set(name, text);
    }
  }
  return files;
}
