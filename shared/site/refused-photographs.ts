import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import type { CollectionImages } from "./collection-images.ts";
import type { LoadedCollection } from "./load-collection.ts";

/** A photograph is only known to be unreadable once it has been read; then it is reported like any other problem. */
export function refusedPhotographs(
  { collection }: NonNullable<LoadedCollection["sound"]>,
  refused: CollectionImages["refused"],
): Diagnostic[] {
  return [...collection.items.values()].flatMap(({ document, photos }) => {
    const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
    return photos.flatMap(({ file }, at) => {
      const why = refused.find((each) => each.file === `${folder}${file}`);
      if (!why) return [];
      const locus = document.locate(["photos", at, "file"]);
      return [
        diagnose("unreadable-photograph", locus, {
          found: why.reason,
          expected: "a photograph that can be shown",
        }),
      ];
    });
  });
}
