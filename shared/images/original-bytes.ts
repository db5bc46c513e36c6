import { access, readdir, readFile, realpath, stat } from "node:fs/promises";
import path from "node:path";
import { isWithin } from "../source/within.ts";
import { RefusedFile } from "./refused-file.ts";

const gigabyte = 1024 ** 3;

function codeOf(problem: unknown): string {
  return problem instanceof Error && "code" in problem ? String(problem.code) : "unknown reason";
}

/**
 * Where a name leads, written either way: systems that part a letter from its accent in the names of files (Unicode's
 * form NFD) and people who type both as one (NFC) mean the same.
 */
async function placeOf(root: string, file: string): Promise<string> {
  let place = root;
  for (const name of file.split("/")) {
    const asWritten = path.join(place, name);
    const isThere = await access(asWritten).then(
      () => true,
      () => false,
    );
    const others = isThere ? [] : await readdir(place).catch(() => []);
    const other = others.find((each) => each.normalize("NFC") === name.normalize("NFC"));
    place = other === undefined ? asWritten : path.join(place, other);
  }
  return place;
}

/** Where a file that a record names really lies, every link followed. Throws RefusedFile. */
export async function realOriginal(root: string, file: string): Promise<string> {
  try {
    const real = await realpath(await placeOf(root, file));
    if (!isWithin(await realpath(root), real)) {
      throw new RefusedFile("a link that leads out of the collection");
    }
    // Asked before it is opened: to open a pipe is to wait for it.
    const found = await stat(real);
    if (found.isDirectory()) throw new RefusedFile("a folder");
    if (!found.isFile()) throw new RefusedFile("a pipe, socket or device");
    if (found.size === 0) throw new RefusedFile("an empty file (0 bytes)");
    return real;
  } catch (problem) {
    throw asRefusal(problem);
  }
}

/** Reads a photograph by its path relative to the root. Throws RefusedFile. */
export async function readOriginal(root: string, file: string): Promise<Buffer> {
  const real = await realOriginal(root, file);
  try {
    const { size } = await stat(real);
    if (size > gigabyte) {
      throw new RefusedFile(`a file of ${(size / gigabyte).toFixed(1)} GB, where at most 1 GB is read`);
    }
    return await readFile(real);
  } catch (problem) {
    throw asRefusal(problem);
  }
}

function asRefusal(problem: unknown): RefusedFile {
  if (problem instanceof RefusedFile) return problem;
  const code = codeOf(problem);
  if (code === "ENOENT" || code === "ENOTDIR") return new RefusedFile("no file there");
  if (code === "ELOOP") return new RefusedFile("a link that leads back to itself");
  return new RefusedFile(`a file that cannot be read (${code})`);
}
