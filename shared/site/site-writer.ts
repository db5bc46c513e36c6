import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import { renderPage, type Site } from "../../templates/render-page.ts";
import { fileOf, type SiteFile } from "./site-file.ts";
import { type KeptGroup, LostSite } from "./standing-site.ts";

/** Where the same address is in the site that stands; null where it is not. */
type Standing = (address: string) => string | null;

/**
 * The way around Eleventy: what there are thousands of, the pages and data of items, is rendered by the same function,
 * written and let go. Eleventy would hold all of it until the end. A file that stands as it should is not written
 * again but linked.
 */
export class SiteWriter {
  readonly #folder: string;
  readonly #standing: Standing;
  /** Folders that files go into, and whether they were there before. */
  readonly #folders = new Map<string, { readonly wasThere: boolean }>();
  readonly #addresses = new Set<string>();
  /** How many files were written, and how many stood as they should. */
  written = 0;
  unchanged = 0;

  constructor(folder: string, standing: Standing = () => null) {
    this.#folder = folder;
    this.#standing = standing;
  }

  /** `site` is asked for by pages only. */
  write(file: SiteFile, site?: Site): void {
    // Two items may show one photograph.
    if (file.kind === "copy" && this.#addresses.has(file.address)) return;
    const to = this.#placeFor(file.address);
    if (file.kind === "copy") {
      const before = this.#standing(file.address);
      if (before && readFileSync(before).equals(readFileSync(file.from))) this.#link(before, to);
      else {
        this.#clear(to);
        copyFileSync(file.from, to);
        this.written++;
      }
      return;
    }
    this.#put(file.address, to, contentOf(file, site));
  }

  /** A group that stands as it should. Two groups may show one photograph. */
  keepGroup({ addresses, copies }: KeptGroup): void {
    for (const address of addresses) this.keep(address);
    for (const address of copies) if (!this.#addresses.has(address)) this.keep(address);
  }

  /** Takes a group into account that a writer of its own has written. */
  adoptGroup({ addresses, copies }: KeptGroup, writing: { written: number; unchanged: number }): void {
    for (const address of addresses) this.#claim(address);
    for (const address of copies) this.#addresses.add(address);
    this.written += writing.written;
    this.unchanged += writing.unchanged;
  }

  /** What stands stays. Throws where it does not stand. */
  keep(address: string): void {
    const before = this.#standing(address);
    if (before === null) throw new LostSite(address);
    this.#link(before, this.#placeFor(address));
  }

  /** Takes a file into account that somebody else has written to its place. */
  adopt(address: string): void {
    this.#claim(address);
    const to = path.join(this.#folder, fileOf(address));
    const before = this.#standing(address);
    if (before && readFileSync(before).equals(readFileSync(to))) {
      rmSync(to);
      this.#link(before, to);
    } else this.written++;
  }

  #put(address: string, to: string, content: string | Uint8Array): void {
    const bytes = typeof content === "string" ? encoded(content) : content;
    const before = this.#standing(address);
    if (before && readFileSync(before).equals(bytes)) this.#link(before, to);
    else {
      this.#clear(to);
      writeFileSync(to, bytes);
      this.written++;
    }
  }

  #link(before: string, to: string): void {
    if (this.#wasThere(to) && isSameFile(before, to)) {
      this.unchanged++;
      return;
    }
    this.#clear(to);
    try {
      linkSync(before, to);
    } catch {
      if (!existsSync(before)) throw new LostSite(before);
      // Another disk, or one without links.
      copyFileSync(before, to);
    }
    this.unchanged++;
  }

  #placeFor(address: string): string {
    this.#claim(address);
    return this.#opened(address);
  }

  #opened(address: string): string {
    const to = path.join(this.#folder, fileOf(address));
    const folder = path.dirname(to);
    if (!this.#folders.has(folder)) {
      this.#folders.set(folder, { wasThere: mkdirSync(folder, { recursive: true }) === undefined });
    }
    return to;
  }

  #wasThere(to: string): boolean {
    return this.#folders.get(path.dirname(to))?.wasThere ?? false;
  }

  /** What lies there may be linked into a site that stands: it is taken away, and never written into. */
  #clear(to: string): void {
    if (this.#wasThere(to) && existsSync(to)) rmSync(to);
  }

  /** Makes way for a file that somebody else is to write. */
  clear(address: string): void {
    this.#clear(this.#opened(address));
  }

  /** Takes away whatever an earlier site has left in the folder. */
  sweep(): void {
    const files = new Set([...this.#addresses].map((address) => path.join(this.#folder, fileOf(address))));
    const folders = new Set<string>();
    for (const file of files) {
      for (let at = path.dirname(file); !folders.has(at) && at !== this.#folder; at = path.dirname(at)) {
        folders.add(at);
      }
    }
    const walk = (folder: string): void => {
      for (const entry of readdirSync(folder, { withFileTypes: true })) {
        const full = path.join(folder, entry.name);
        if (entry.isDirectory() && folders.has(full)) walk(full);
        else if (!files.has(full)) rmSync(full, { recursive: true });
      }
    };
    walk(this.#folder);
  }

  get addresses(): readonly string[] {
    return [...this.#addresses];
  }

  /** No two files have one address, whoever writes them. */
  #claim(address: string): void {
    if (this.#addresses.has(address))
      throw new Error(`Two files of the site claim the address "${address}".`);
    this.#addresses.add(address);
  }
}

function isSameFile(one: string, other: string): boolean {
  const [a, b] = [one, other].map((file) => statSync(file, { throwIfNoEntry: false }));
  return a !== undefined && b !== undefined && a.ino === b.ino && a.dev === b.dev;
}

const encoder = new TextEncoder();
let room = new Uint8Array(1 << 18);

/** The bytes of a text, good until the next is asked for: a page more would be a buffer more to clear away. */
function encoded(text: string): Uint8Array {
  // A letter of a JavaScript string takes three bytes at most.
  if (room.length < text.length * 3) room = new Uint8Array(text.length * 3);
  return room.subarray(0, encoder.encodeInto(text, room).written);
}

/** What a file of the site is to hold. */
export function contentOf(
  file: Exclude<SiteFile, { kind: "copy" }>,
  site: Site | undefined,
): string | Uint8Array {
  if (file.kind === "bytes") return file.bytes;
  if (file.kind === "text") return file.text;
  if (!site) throw new Error(`Nothing is known of the site around the page "${file.address}".`);
  return renderPage(file.make(), site);
}
