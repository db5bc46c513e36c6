import { existsSync, realpathSync } from "node:fs";
import path from "node:path";

/** True where a path, as it is written, is that of the folder or of something in it. */
export function isWithin(folder: string, place: string): boolean {
  const relative = path.relative(folder, place);
  return relative !== ".." && !relative.startsWith(`..${path.sep}`) && !path.isAbsolute(relative);
}

/** Where a path leads, every link followed that is there already. */
export function realPlace(place: string): string {
  const above = path.dirname(place);
  return existsSync(place) || above === place
    ? realpathSync(place)
    : path.join(realPlace(above), path.basename(place));
}
