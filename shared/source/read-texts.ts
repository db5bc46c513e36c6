import { hash } from "node:crypto";
import { realpathSync } from "node:fs";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { type CollectionFile, findCollectionFiles } from "./collection-files.ts";
import { packageFolder } from "./package-folder.ts";
import { readTextFile } from "./text-file.ts";
import { turnedText } from "./turned-text.ts";

/** A record file as it stands, not yet taken apart. */
export interface RecordText extends CollectionFile {
  readonly text: string;
  /** Of the text: two texts with the same hash are the same. */
  readonly hash: string;
}

/** Every text of a collection's folder, with those that come with the tool. */
export interface CollectionTexts {
  readonly texts: readonly RecordText[];
  /** Every record file that is there, those included that could not be read. */
  readonly files: readonly CollectionFile[];
  readonly beside: ReadonlySet<string>;
  readonly diagnostics: readonly Diagnostic[];
}

/** The scales and the hazard register that come with the tool; a collection may add to them or replace them. */
const shipped = new Set<string>(["scale", "hazards"]);

export const recordText = (file: CollectionFile, text: string): RecordText => ({
  ...file,
  text,
  hash: hash("sha1", text, "base64url"),
});

/** Every text of a collection, or only those of its files that are asked for. */
export function readTexts(
  root: string,
  isWanted: (file: CollectionFile) => boolean = () => true,
): CollectionTexts {
  const texts: RecordText[] = [];
  const diagnostics: Diagnostic[] = [];

  const read = (folder: string, file: CollectionFile) => {
    const size = file.kind === "sightings" ? "log" : "record";
    const { text, diagnostics: unreadable } = readTextFile(folder, file.file, size, file.isLinked);
    diagnostics.push(...unreadable);
    if (text === null) return;
    texts.push(recordText(file, text));
    diagnostics.push(...turnedText(file.file, text));
  };

  const found = findCollectionFiles(root);
  diagnostics.push(...found.diagnostics);
  if (realpathSync(root) !== realpathSync(packageFolder)) {
    for (const file of findCollectionFiles(packageFolder).files)
      if (shipped.has(file.kind)) read(packageFolder, file);
  }
  for (const file of found.files) if (isWanted(file)) read(root, file);

  // Of a folder that may not be read, nobody knows what is missing in it.
  const isRead = !found.diagnostics.some(({ file }) => file === "content");
  if (isRead && !found.files.some((file) => file.kind === "collection")) {
    diagnostics.push(
      diagnose(
        "missing-file",
        {
          place: { file: "content/collection.yaml", line: 1, column: 1, endLine: 1, endColumn: 2 },
          text: "",
        },
        {
          found: "no such file",
          expected: 'a file with at least a title, such as "title: My cases"',
          remedy: 'To begin a collection, run "fittedcase init DIR".',
        },
      ),
    );
  }
  return { texts, files: found.files, beside: found.beside, diagnostics };
}

/** One text as it stands now; null where it cannot be read. */
export function reread(root: string, known: RecordText): RecordText | null {
  const size = known.kind === "sightings" ? "log" : "record";
  const { text } = readTextFile(root, known.file, size, known.isLinked);
  return text === null ? null : recordText(known, text);
}
