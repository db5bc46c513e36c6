import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import { refusalOf } from "../../images/first-bytes.ts";
import type { Collection } from "../../records/collection.ts";
import { isLeftOut } from "../../source/document.ts";
import { refusedFiles, themeFolder } from "./refused-files.ts";

/**
 * Photographs, recordings, captions and files of the theme that are something else, as their first bytes tell. Whether
 * what begins as a photograph is one to its end shows only when it is made ready for a site.
 */
export async function unshowableFiles(root: string, collection: Collection): Promise<Diagnostic[]> {
  const refused: { file: string; reason: string; remedy: string | undefined }[] = [];
  const look = async (file: string, kind: Parameters<typeof refusalOf>[2]): Promise<void> => {
    const refusal = await refusalOf(root, file, kind);
    if (refusal) refused.push({ file, reason: refusal.message, remedy: refusal.remedy });
  };
  for (const { document, photos, video } of collection.items.values()) {
    const folder = document.file.slice(0, document.file.lastIndexOf("/") + 1);
    for (const [at, { file }] of photos.entries())
      if (!isLeftOut(document, "photos", at, "file")) await look(folder + file, "photograph");
    if (video && !isLeftOut(document, "video", "src")) await look(folder + video.src, "recording");
    if (video?.captions !== undefined) await look(folder + video.captions, "captions");
  }
  const { theme } = collection.settings;
  for (const sign of [theme.logo, theme["logo-dark"]])
    if (sign !== undefined) await look(themeFolder + sign, "photograph");
  for (const face of [theme.reading, theme.data]) {
    const files = typeof face === "object" ? Object.values(face) : [];
    for (const name of files) if (name !== undefined) await look(themeFolder + name, "typeface");
  }
  return refusedFiles({ collection }, refused);
}
