import { hash } from "node:crypto";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { typefaces } from "../../../templates/typefaces.ts";
import { firstBytes } from "../../images/first-bytes.ts";
import type { ImageFile } from "../../images/image-set.ts";
import { realOriginal } from "../../images/original-bytes.ts";
import { RefusedFile } from "../../images/refused-file.ts";
import { renderLogo } from "../../images/render-logo.ts";
import type { Theme, ThemeType } from "../../publication/theme/palette.ts";
import { themeFolder } from "../checks/refused-files.ts";
import { cacheFolder } from "../folders/cache-folder.ts";
import type { CopiedFile } from "./assets.ts";
import type { ChosenTypeface } from "./theme-style.ts";

/** What a theme names: its sign and its type, ready to be put into a site. */
export interface ThemeFiles {
  readonly logo: { readonly light: ImageFile; readonly dark: ImageFile | null } | null;
  readonly typefaces: readonly ChosenTypeface[];
  readonly copied: readonly CopiedFile[];
  readonly refused: readonly { readonly file: string; readonly reason: string }[];
}

export const noTheme: ThemeFiles = { logo: null, typefaces: [], copied: [], refused: [] };

const require = createRequire(import.meta.url);

export async function themeFiles(root: string, theme: Theme): Promise<ThemeFiles> {
  const outFolder = path.join(cacheFolder(root), "site");
  const copied: CopiedFile[] = [];
  const refused: { file: string; reason: string }[] = [];

  const tried = async <Made>(name: string, make: (file: string) => Promise<Made>): Promise<Made | null> => {
    const file = `${themeFolder}${name}`;
    try {
      return await make(file);
    } catch (problem) {
      if (!(problem instanceof RefusedFile)) throw problem;
      refused.push({ file, reason: problem.message });
      return null;
    }
  };
  const logo = (name: string | undefined) =>
    name === undefined
      ? null
      : tried(name, async (file) => {
          const made = await renderLogo(root, file, outFolder);
          copied.push({ from: path.join(outFolder, made.address), address: made.address });
          return made;
        });
  const own = (name: string) =>
    tried(name, async (file) => {
      const from = await realOriginal(root, file);
      const bytes = readFileSync(from);
      firstBytes.typeface(bytes);
      const address = `/assets/fonts/${hash("sha256", bytes).slice(0, 10)}.woff2`;
      copied.push({ from, address });
      return address;
    });

  const chosen = async (role: "reading" | "data", face: ThemeType | undefined): Promise<ChosenTypeface[]> => {
    if (face === undefined) return [];
    if (typeof face === "string") {
      const shipped = Object.hasOwn(typefaces, face) ? typefaces[face] : undefined;
      if (!shipped) return [];
      copied.push(...shipped.files.map(({ from, address }) => ({ from: require.resolve(from), address })));
      return [{ role, name: shipped.name, files: shipped.files }];
    }
    const styles = [
      ["regular", 400, "normal"],
      ["italic", 400, "italic"],
      ["bold", 600, "normal"],
    ] as const;
    const files = await Promise.all(
      styles.map(async ([which, weight, style]) => {
        const name = face[which];
        const address = name === undefined ? null : await own(name);
        return address === null ? [] : [{ address, weight, style, range: null, first: true }];
      }),
    );
    return [{ role, name: `Own ${role}`, files: files.flat() }];
  };

  const [light, dark] = [await logo(theme.logo), await logo(theme["logo-dark"])];
  const faces = [...(await chosen("reading", theme.reading)), ...(await chosen("data", theme.data))];
  return { logo: light && { light, dark }, typefaces: faces, copied, refused };
}
