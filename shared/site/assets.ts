import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fonts } from "../../templates/fonts.ts";
import type { OutputFile } from "../pages/data/output-file.ts";
import type { PublishedCollection } from "../publication/published.ts";
import { packageFolder } from "../source/package-folder.ts";

/** A file that is copied as it is. */
export interface CopiedFile {
  readonly from: string;
  readonly address: string;
}

export interface Assets {
  readonly style: string;
  readonly scripts: readonly string[];
  readonly files: readonly OutputFile[];
  readonly copied: readonly CopiedFile[];
}

/** The name changes with the content, so that a browser may keep the file for ever. */
function named(name: string, extension: string, text: string): OutputFile {
  const hash = createHash("sha256").update(text).digest("hex").slice(0, 10);
  return { address: `/assets/${name}.${hash}.${extension}`, text };
}

const listed = (folder: string, extension: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith(extension))
        .sort()
    : [];

/** The collection's own choices, as the custom properties that the style sheets read. */
function themeStyle(theme: PublishedCollection["settings"]["theme"]): string {
  const light = theme.accent ? `:root { --accent: ${theme.accent}; }\n` : "";
  const dark = theme["accent-dark"] ?? null;
  return light + (dark ? `@media (prefers-color-scheme: dark) { :root { --accent: ${dark}; } }\n` : "");
}

/** Styles, scripts and fonts. A style sheet in the user's own `templates/styles/` replaces ours of the same name. */
export function readAssets(root: string, theme: PublishedCollection["settings"]["theme"]): Assets {
  const ours = path.join(packageFolder, "templates/styles");
  const theirs = path.join(root, "templates/styles");
  const sheets = new Map<string, string>();
  for (const folder of [ours, theirs]) {
    for (const name of listed(folder, ".css"))
      sheets.set(name, readFileSync(path.join(folder, name), "utf8"));
  }
  const inOrder = [...sheets.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, text]) => text);
  const style = named("style", "css", [...inOrder, themeStyle(theme)].join("\n"));

  // Compiled beside this file when it is compiled; when it runs as TypeScript, from the last compilation.
  const scriptFolder = path.join(packageFolder, "dist/templates/scripts");
  const scripts = listed(scriptFolder, ".js").map((name) =>
    named(name.replace(/\.js$/, ""), "js", readFileSync(path.join(scriptFolder, name), "utf8")),
  );
  const require = createRequire(import.meta.url);
  return {
    style: style.address,
    scripts: scripts.map(({ address }) => address),
    files: [style, ...scripts],
    copied: fonts.map(([from, address]) => ({ from: require.resolve(from), address })),
  };
}
