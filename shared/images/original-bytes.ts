import { readFile, realpath, stat } from "node:fs/promises";
import path from "node:path";
import { RefusedPicture } from "./refused-picture.ts";

const gigabyte = 1024 ** 3;

function codeOf(problem: unknown): string {
  return problem instanceof Error && "code" in problem ? String(problem.code) : "unknown reason";
}

function isOutside(folder: string, target: string): boolean {
  const relative = path.relative(folder, target);
  return relative === ".." || relative.startsWith(`..${path.sep}`) || path.isAbsolute(relative);
}

/** Reads a photograph by its path relative to the root, every link followed. Throws RefusedPicture. */
export async function readOriginal(root: string, file: string): Promise<Buffer> {
  try {
    const real = await realpath(path.join(root, file));
    if (isOutside(await realpath(root), real)) {
      throw new RefusedPicture("a link that leads out of the collection");
    }
    // Asked before it is opened: to open a pipe is to wait for it.
    const found = await stat(real);
    if (found.isDirectory()) throw new RefusedPicture("a folder");
    if (!found.isFile()) throw new RefusedPicture("a pipe, socket or device");
    const { size } = found;
    if (size === 0) throw new RefusedPicture("an empty file (0 bytes)");
    if (size > gigabyte) {
      throw new RefusedPicture(`a file of ${(size / gigabyte).toFixed(1)} GB, where at most 1 GB is read`);
    }
    return await readFile(real);
  } catch (problem) {
    if (problem instanceof RefusedPicture) throw problem;
    const code = codeOf(problem);
    if (code === "ENOENT" || code === "ENOTDIR") throw new RefusedPicture("no file there");
    if (code === "ELOOP") throw new RefusedPicture("a link that leads back to itself");
    throw new RefusedPicture(`a file that cannot be read (${code})`);
  }
}
