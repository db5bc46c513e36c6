import type { Path } from "./document.ts";

/** Places of a record of which nothing is known, since what stands there cannot be taken as it is. */
export class LeftOut {
  readonly paths: readonly Path[];
  readonly #data: unknown;
  readonly #top = new Branch();

  /** Places in some data; what is asked of them afterwards is asked of what is left. */
  constructor(paths: readonly Path[], data?: unknown) {
    this.paths = paths;
    this.#data = data;
    for (const path of paths) this.#top.grow(path);
  }

  /** The data without these places; those of a list close up. */
  rest(): unknown {
    return this.#top.isEnd ? {} : without(this.#data, this.#top);
  }

  /** Where in the data something stood that stands at a place of what is left. */
  placeBefore(path: Path): Path {
    let branch: Branch | undefined = this.#top;
    let value = this.#data;
    return path.map((name) => {
      const key: string | number =
        Array.isArray(value) && branch ? (branch.kept(value)[Number(name)] ?? name) : name;
      branch = branch?.below.get(String(key));
      value = Object(value)[key];
      return key;
    });
  }

  /** Whether a place is left out, or lies in one that is, or holds one. */
  touches(path: Path): boolean {
    let branch: Branch | undefined = this.#top;
    for (const name of this.placeBefore(path)) {
      if (branch.isEnd) return true;
      branch = branch.below.get(String(name));
      if (!branch) return false;
    }
    return path.length > 0 || branch.isEnd;
  }
}

/** Names and indexes that begin alike grow from one. */
class Branch {
  isEnd = false;
  readonly below = new Map<string, Branch>();

  grow(path: Path): void {
    let branch: Branch = this;
    for (const name of path.map(String)) {
      const next = branch.below.get(name) ?? new Branch();
      branch.below.set(name, next);
      branch = next;
    }
    branch.isEnd = true;
  }

  /** The indexes of a list that are not left out. */
  kept(list: readonly unknown[]): number[] {
    return [...list.keys()].filter((at) => !this.below.get(String(at))?.isEnd);
  }
}

function without(data: unknown, branch: Branch | undefined): unknown {
  if (!branch || typeof data !== "object" || data === null) return data;
  if (Array.isArray(data))
    return branch.kept(data).map((at) => without(data[at], branch.below.get(String(at))));
  return Object.fromEntries(
    Object.entries(data).flatMap(([name, value]) => {
      const next = branch.below.get(name);
      return next?.isEnd ? [] : [[name, without(value, next)]];
    }),
  );
}
