import { hash } from "node:crypto";
import { readFileSync } from "node:fs";
import path from "node:path";
import type { OutputFile } from "../../pages/data/output-file.ts";

/** A script that a browser runs only as it was built (W3C Subresource Integrity). */
export interface SealedScript {
  readonly address: string;
  readonly integrity: string;
}

/** A script as pages ask for it. */
export interface PageScript extends SealedScript {
  readonly name: string;
  /** Every module that it imports, so that a browser may fetch them all at once. */
  readonly imports: readonly SealedScript[];
}

/** The name changes with the content, so that a browser may keep the file for ever. */
export const named = (name: string, extension: string, text: string): OutputFile => ({
  address: `/assets/${name}.${hash("sha256", text).slice(0, 10)}.${extension}`,
  text,
});

const sealed = ({ address, text }: OutputFile): SealedScript => ({
  address,
  integrity: `sha384-${hash("sha384", text, "base64")}`,
});

const imported = /\b(from|import)(\s*)"(\.{1,2}\/[^"]+\.js)"/g;

interface Module {
  readonly file: OutputFile;
  readonly imports: readonly SealedScript[];
}

/**
 * Compiled scripts and all that they import, each named by its content. What a script imports is named first, and
 * its text names that: a change anywhere below changes every name above, and nothing else.
 */
export class ScriptFiles {
  readonly #known = new Map<string, Module>();
  readonly #open = new Set<string>();

  /** Every file that was asked for, or that one of these imports. */
  get files(): readonly OutputFile[] {
    return [...new Map([...this.#known.values()].map(({ file }) => [file.address, file])).values()];
  }

  add(file: string): PageScript {
    const { file: written, imports } = this.#module(file);
    return { name: path.basename(file, ".js"), ...sealed(written), imports };
  }

  #module(file: string): Module {
    const known = this.#known.get(file);
    if (known) return known;
    if (this.#open.has(file)) throw new Error(`The script "${file}" imports itself by way of others.`);
    this.#open.add(file);
    const imports = new Map<string, SealedScript>();
    const text = readFileSync(file, "utf8").replace(imported, (_, word, space, address) => {
      const below = this.#module(path.join(path.dirname(file), address));
      for (const each of [sealed(below.file), ...below.imports]) imports.set(each.address, each);
      // All of them lie in one folder.
      return `${word}${space}"./${path.posix.basename(below.file.address)}"`;
    });
    this.#open.delete(file);
    const module = { file: named(path.basename(file, ".js"), "js", text), imports: [...imports.values()] };
    this.#known.set(file, module);
    return module;
  }
}
