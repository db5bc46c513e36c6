import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { readRecordSchemas } from "../../source/record-schemas.ts";
import { knownCollection } from "../collection/known-collection.ts";
import { rootFolder } from "../collection/root-folder.ts";
import type { Command } from "../command.ts";
import { refuseOutput } from "../writing/place-of-output.ts";
import { editorSchemas } from "./editor-schemas.ts";

/** A path from the collection's folder, as the settings of an editor have it. */
const fromRoot = (root: string, full: string) => `./${path.relative(root, full).split(path.sep).join("/")}`;

export const schemas: Command = {
  usage: "fittedcase schemas [--root DIR] [--out DIR]",
  help: [
    "Writes JSON Schemas of your collection, with its own part ids, feature values, variants and sources. An editor",
    "that applies JSON Schema to YAML, and to the front matter of Markdown, then completes what you type, shows what to",
    "look for, and underlines what check would report. Run the command again when a reference has changed.",
    "",
    "  --root DIR  the collection's folder (default: the current one)",
    "  --out DIR   where the schemas go (default: editor-schemas in the collection's folder)",
    "",
    "It prints which schema belongs to which files, as the setting that editors call yaml.schemas.",
    "Example: fittedcase schemas",
    "Exit codes: 0 done; 1 the collection cannot be read; 2 the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values } = parseArgs({
      args: [...args],
      options: { root: { type: "string" }, out: { type: "string" } },
    });
    const root = rootFolder(cwd, values.root);
    const target =
      values.out === undefined ? path.join(root, "editor-schemas") : path.resolve(cwd, values.out);
    const shown = values.out ?? path.basename(target);
    refuseOutput(root, target, shown);
    const known = knownCollection(root, err);
    if (!known) return 1;
    mkdirSync(target, { recursive: true });
    const settings: Record<string, readonly string[]> = {};
    for (const { name, files, schema } of editorSchemas(readRecordSchemas(), known.collection)) {
      const file = path.join(target, `${name}.schema.json`);
      refuseOutput(root, file, path.join(shown, path.basename(file)));
      writeFileSync(file, `${JSON.stringify(schema, null, 2)}\n`);
      settings[fromRoot(root, file)] = files;
    }
    out(
      `Wrote ${Object.keys(settings).length} schemas into ${path.relative(cwd, target) || "."}. Settings for an editor, in the collection's folder:\n`,
    );
    out(JSON.stringify({ "yaml.schemas": settings }, null, 2));
    return 0;
  },
};
