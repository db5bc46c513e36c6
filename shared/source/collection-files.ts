import { type Dirent, existsSync, lstatSync, readdirSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { startOf } from "../diagnostics/place.ts";
import { staysInside } from "./text-file.ts";

export type FileKind =
  | "collection"
  | "item"
  | "article"
  | "sightings"
  | "sources"
  | "scale"
  | "hazards"
  | "family"
  | "variant";

export interface CollectionFile {
  readonly kind: FileKind;
  /** Relative to the root, with forward slashes. */
  readonly file: string;
  /** The id that the file's place gives its record. */
  readonly id: string;
  /** False where it is known that no link lies on the way from the root: then it cannot lead out of it. */
  readonly isLinked?: boolean;
}

/** The contract's table of places, each with the part of the path that is the record's id. */
const places: readonly [FileKind, RegExp][] = [
  ["collection", /^content\/(collection)\.yaml$/],
  ["item", /^content\/items\/([^/]+)\/index\.md$/],
  ["item", /^content\/items\/([^/]+)\.md$/],
  ["article", /^content\/articles\/([^/]+)\.md$/],
  ["sightings", /^content\/sightings\/([^/]+)\.(?:csv|yaml)$/],
  ["sources", /^content\/(sources)\.(?:yaml|json)$/],
  ["scale", /^schemas\/scales\/([^/]+)\.yaml$/],
  ["hazards", /^schemas\/(hazards)\.yaml$/],
  ["family", /^schemas\/reference\/([^/]+)\/family\.yaml$/],
  ["variant", /^schemas\/reference\/[^/]+\/([^/]+)\.yaml$/],
];

/** Photographs, recordings and their captions lie beside the item that shows them. */
const besideAnItem = /^content\/items\/(?:[^/]+\/.|[^/]+\.(?!md$))/;
/** The sign and the type of the collection's own look. */
const ofTheme = /^content\/theme\/./;

export interface FoundFiles {
  readonly files: readonly CollectionFile[];
  /** Photographs and whatever else lies beside the items, and the files of the theme, as paths relative to the root. */
  readonly beside: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/** Finds the records of a collection, in the order of their paths. */
export function findCollectionFiles(root: string): FoundFiles {
  const files: CollectionFile[] = [];
  const beside = new Set<string>();
  const diagnostics: Diagnostic[] = [];
  const visited = new Set<string>();
  const realRoot = existsSync(root) ? realpathSync(root) : root;

  const classify = (file: string, isLinked: boolean) => {
    for (const [kind, pattern] of places) {
      const match = pattern.exec(file);
      if (match?.[1]) {
        files.push({ kind, file, id: match[1].normalize("NFC"), isLinked });
        return;
      }
    }
    if (besideAnItem.test(file) || ofTheme.test(file)) {
      beside.add(file);
      return;
    }
    // The schemas of the tool itself, where the collection is the tool's own repository.
    if (/^schemas\/records\//.test(file)) return;
    diagnostics.push(
      diagnose("misplaced-file", startOf(file), {
        found: "a file that nothing reads",
        expected: "records only in their places below content/ and schemas/",
      }),
    );
  };

  const walk = (folder: string, isLinked: boolean) => {
    const full = path.join(root, folder);
    let entries: Dirent[];
    try {
      if (isLinked && !staysInside(root, full))
        throw Object.assign(new Error(), { code: "a link that leads out" });
      const real = isLinked ? realpathSync(full) : path.join(realRoot, folder);
      if (visited.has(real)) return;
      visited.add(real);
      entries = readdirSync(full, { withFileTypes: true });
    } catch (problem) {
      const reason = problem instanceof Error && "code" in problem ? String(problem.code) : "unknown reason";
      diagnostics.push(
        diagnose(reason.startsWith("a link") ? "outside-root" : "unreadable-file", startOf(folder), {
          found: `a folder that cannot be read (${reason})`,
          expected: "a folder inside the collection that can be read",
        }),
      );
      return;
    }
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const { name } = entry;
      if (name.startsWith(".")) continue;
      const file = `${folder}/${name}`;
      const isLink = isLinked || entry.isSymbolicLink();
      // A link that leads nowhere is still reported, by whoever reads it.
      const isFolder = entry.isSymbolicLink()
        ? statSync(path.join(root, file), { throwIfNoEntry: false })?.isDirectory()
        : entry.isDirectory();
      if (isFolder) walk(file, isLink);
      else classify(file, isLink);
    }
  };

  for (const folder of ["content", "schemas"]) {
    if (existsSync(path.join(root, folder)))
      walk(folder, lstatSync(path.join(root, folder)).isSymbolicLink());
  }
  diagnostics.push(...recordless(files, beside));
  return { files, beside, diagnostics };
}

/** A record of an item by another name than it has to have: without a word about it the item would be gone. */
function recordless(files: readonly CollectionFile[], beside: ReadonlySet<string>): Diagnostic[] {
  const read = new Set(files.map(({ file }) => file));
  const told = new Set<string>();
  return [...beside].flatMap((file) => {
    if (!/^content\/items\/.*\.(?:md|markdown|txt|ya?ml)$/i.test(file)) return [];
    const folder = /^content\/items\/[^/]+\//.exec(file)?.[0];
    if (folder === undefined) {
      return [
        diagnose("misplaced-file", startOf(file), {
          found: "a text file among the items that is not the record of one",
          expected: `an item's record, named ${file.replace(/\.[^.]+$/, "")}.md`,
        }),
      ];
    }
    if (told.has(folder) || read.has(`${folder}index.md`) || read.has(`${folder.slice(0, -1)}.md`)) return [];
    told.add(folder);
    return [
      diagnose("misplaced-file", startOf(file), {
        found: "a text file in the folder of an item that has no record",
        expected: `the record to be ${folder}index.md`,
      }),
    ];
  });
}
