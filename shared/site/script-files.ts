import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import type { OutputFile } from "../pages/data/output-file.ts";

/** A script as pages ask for it. */
export interface PageScript {
  readonly name: string;
  readonly address: string;
  /** Every module that it imports, so that a browser may fetch them all at once. */
  readonly imports: readonly string[];
}

/** The name changes with the content, so that a browser may keep the file for ever. */
export function named(name: string, extension: string, text: string): OutputFile {
  const hash = createHash("sha256").update(text).digest("hex").slice(0, 10);
  return { address: `/assets/${name}.${hash}.${extension}`, text };
}

const imported = /\b(from|import)(\s*)"(\.{1,2}\/[^"]+\.js)"/g;

/**
 * Compiled scripts and all that they import, each named by its content. What a script imports is named first, and
 * its text names that: a change anywhere below changes every name above, and nothing else.
 */
export class ScriptFiles {
  readonly #known = new Map<string, { readonly file: OutputFile; readonly imports: readonly string[] }>();
  readonly #open = new Set<string>();

  /** Every file that was asked for, or that one of these imports. */
  get files(): readonly OutputFile[] {
    return [...new Map([...this.#known.values()].map(({ file }) => [file.address, file])).values()];
  }

  add(file: string): PageScript {
    const { file: written, imports } = this.#module(file);
    return { name: path.basename(file, ".js"), address: written.address, imports };
  }

  #module(file: string): { readonly file: OutputFile; readonly imports: readonly string[] } {
    const known = this.#known.get(file);
    if (known) return known;
    if (this.#open.has(file)) throw new Error(`The script "${file}" imports itself by way of others.`);
    this.#open.add(file);
    const imports = new Set<string>();
    const text = readFileSync(file, "utf8").replace(imported, (_, word, space, address) => {
      const below = this.#module(path.join(path.dirname(file), address));
      imports.add(below.file.address);
      for (const each of below.imports) imports.add(each);
      // All of them lie in one folder.
      return `${word}${space}"./${path.posix.basename(below.file.address)}"`;
    });
    this.#open.delete(file);
    const module = { file: named(path.basename(file, ".js"), "js", text), imports: [...imports] };
    this.#known.set(file, module);
    return module;
  }
}
