import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { FuzzedFile, FuzzedFiles } from "./mutated-files.ts";

const isSame = (one: FuzzedFile | undefined, other: FuzzedFile | undefined): boolean => one === other;

/** A folder that holds one collection after the other, of which only what differs is written. */
export class FuzzedFolder {
  readonly root = mkdtempSync(path.join(tmpdir(), "fittedcase-fuzz-"));
  #sound: FuzzedFiles = new Map();
  #strayed = new Set<string>();

  /** Puts `files` in place, which come of the sound ones. */
  hold(sound: FuzzedFiles, files: FuzzedFiles): void {
    if (sound !== this.#sound) {
      for (const name of ["content", "schemas", "templates"]) this.#remove(name);
      this.#sound = sound;
      this.#strayed.clear();
      for (const [name, file] of sound) this.#write(name, file);
    }
    const strayed = [...this.#strayed];
    this.#strayed.clear();
    for (const name of strayed) this.#remove(name);
    for (const name of strayed) {
      const file = sound.get(name);
      if (file !== undefined) this.#write(name, file);
    }
    const changed = [...new Set([...sound.keys(), ...files.keys()])].filter(
      (name) => !isSame(sound.get(name), files.get(name)),
    );
    for (const name of changed) {
      this.#strayed.add(name);
      this.#remove(name);
    }
    for (const name of changed) {
      const file = files.get(name);
      if (file !== undefined) this.#write(name, file);
    }
  }

  #remove(name: string): void {
    try {
      rmSync(path.join(this.root, name), { recursive: true, force: true });
    } catch {
      // No name for this disk: then it is not there.
    }
  }

  #write(name: string, file: FuzzedFile): void {
    const full = path.join(this.root, name);
    try {
      mkdirSync(path.dirname(full), { recursive: true });
      if (typeof file === "object" && "linkTo" in file) symlinkSync(file.linkTo, full);
      else writeFileSync(full, file);
    } catch {
      // No name for this disk, or one that is taken by a folder: then it is not there.
    }
  }
}
