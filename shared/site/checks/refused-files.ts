import { type Diagnostic, diagnose } from "../../diagnostics/diagnostic.ts";
import type { Collection } from "../../records/collection.ts";
import type { Path } from "../../source/document.ts";
import type { CollectionMedia } from "../media/collection-media.ts";

type LoadedSettings = Collection["settings"];

/** A record names a file of the theme by its name in this folder. */
export const themeFolder = "content/theme/";

/**
 * A photograph or recording is only known to be unreadable once it has been read; then it is reported like any
 * other problem, where the record names it.
 */
export function refusedFiles(
  { collection }: { readonly collection: Collection },
  refused: CollectionMedia["refused"],
): Diagnostic[] {
  const reasons = new Map(refused.map(({ file, reason }) => [file, reason]));
  const remedies = new Map(refused.map(({ file, remedy }) => [file, remedy]));
  return [
    ...ofTheme(collection.settings, reasons),
    ...[...collection.items.values()].flatMap(({ document, photos, video }) => {
      const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
      const reasonFor = (file: string | undefined) =>
        file === undefined ? undefined : reasons.get(`${folder}${file}`);
      const photographs = photos.flatMap(({ file }, at) => {
        const found = reasonFor(file);
        return found === undefined
          ? []
          : diagnose("unreadable-photograph", document.locate(["photos", at, "file"]), {
              found,
              expected: "a photograph that can be shown",
            });
      });
      const recordings = (
        [
          ["src", "a recording that can be published"],
          ["captions", "captions in WebVTT"],
        ] as const
      ).flatMap(([field, expected]) => {
        const found = reasonFor(video?.[field]);
        return found === undefined
          ? []
          : diagnose("unreadable-recording", document.locate(["video", field]), {
              found,
              expected,
              remedy: remedies.get(`${folder}${video?.[field]}`),
            });
      });
      return [...photographs, ...recordings];
    }),
  ];
}

/** The sign and the type of the collection. */
function ofTheme({ theme, document }: LoadedSettings, reasons: ReadonlyMap<string, string>): Diagnostic[] {
  const told = (
    code: "unreadable-photograph" | "unreadable-typeface",
    at: Path,
    name: unknown,
    expected: string,
  ) => {
    const found = typeof name === "string" ? reasons.get(`${themeFolder}${name}`) : undefined;
    return found === undefined
      ? []
      : [diagnose(code, document.locate(["theme", ...at]), { found, expected })];
  };
  return [
    ...(["logo", "logo-dark"] as const).flatMap((name) =>
      told("unreadable-photograph", [name], theme[name], "a picture: PNG, WebP, AVIF or JPEG"),
    ),
    ...(["reading", "data"] as const).flatMap((role) => {
      const face = theme[role];
      return typeof face === "object"
        ? Object.entries(face).flatMap(([which, name]) =>
            told("unreadable-typeface", [role, which], name, "a typeface as a WOFF2 file"),
          )
        : [];
    }),
  ];
}
