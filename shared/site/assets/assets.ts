import { existsSync, readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fonts, preloadedFonts } from "../../../templates/fonts.ts";
import type { OutputFile } from "../../pages/data/output-file.ts";
import type { PublishedCollection } from "../../publication/published.ts";
import { packageFolder } from "../../source/package-folder.ts";
import { named, type PageScript, ScriptFiles } from "./script-files.ts";
import { shortStyle } from "./short-style.ts";
import { noTheme, type ThemeFiles } from "./theme-files.ts";
import { themeStyle } from "./theme-style.ts";

/** A file that is copied as it is. */
export interface CopiedFile {
  readonly from: string;
  readonly address: string;
}

export interface Assets {
  readonly style: string;
  /** What paper alone needs, so that a screen need not wait for it. */
  readonly printStyle: string;
  readonly scripts: readonly PageScript[];
  /** The words of the site's language, as a module for its scripts. */
  readonly words: PageScript;
  /** Type that the first lines of every page need. */
  readonly preload: readonly string[];
  readonly files: readonly OutputFile[];
  readonly copied: readonly CopiedFile[];
}

const listed = (folder: string, extension: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => name.endsWith(extension))
        .sort()
    : [];

/** Ours, where no other stands in its place; in drawings nothing does. */
const preloadOf = (chosen: ThemeFiles["typefaces"]): string[] => {
  const files = (["reading", "data"] as const).flatMap(
    (role) =>
      chosen
        .find((face) => face.role === role)
        ?.files.flatMap(({ first, address }) => (first ? [address] : [])) ?? preloadedFonts[role],
  );
  return [...new Set([...files, preloadedFonts.drawing])];
};

/** Styles, scripts and fonts. A style sheet in the user's own `templates/styles/` replaces ours of the same name. */
export function readAssets(
  root: string,
  theme: PublishedCollection["settings"]["theme"],
  language: string,
  themed: Pick<ThemeFiles, "typefaces" | "copied"> = noTheme,
): Assets {
  const ours = path.join(packageFolder, "templates/styles");
  const theirs = path.join(root, "templates/styles");
  const sheets = new Map<string, string>();
  for (const folder of [ours, theirs]) {
    for (const name of listed(folder, ".css"))
      sheets.set(name, readFileSync(path.join(folder, name), "utf8"));
  }
  const inOrder = (isPrint: boolean) =>
    [...sheets.entries()]
      .filter(([name]) => name.endsWith("print.css") === isPrint)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([, text]) => shortStyle(text));
  const style = named("style", "css", [...inOrder(false), themeStyle(theme, themed.typefaces)].join("\n"));
  const printStyle = named("print", "css", inOrder(true).join("\n"));

  // Compiled beside this file when it is compiled; when it runs as TypeScript, from the last compilation.
  const scriptFolder = path.join(packageFolder, "dist/templates/scripts");
  const scriptFiles = new ScriptFiles();
  const scripts = listed(scriptFolder, ".js").map((name) => scriptFiles.add(path.join(scriptFolder, name)));
  const words = scriptFiles.add(path.join(scriptFolder, `words/${language}.js`));
  const require = createRequire(import.meta.url);
  return {
    style: style.address,
    printStyle: printStyle.address,
    scripts,
    words,
    files: [style, printStyle, ...scriptFiles.files],
    preload: preloadOf(themed.typefaces),
    copied: [...fonts.map(([from, address]) => ({ from: require.resolve(from), address })), ...themed.copied],
  };
}
