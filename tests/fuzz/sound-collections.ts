import path from "node:path";
import sharp from "sharp";
import { germanCollection } from "../collections/german-collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { repository } from "../commands/run.ts";
import { webmFilm } from "../images/handmade-recordings.ts";
import type { FuzzedFile, FuzzedFiles } from "./mutated-files.ts";

export interface SoundCollection {
  readonly name: string;
  readonly files: FuzzedFiles;
  /** How often it is taken. */
  readonly weight: number;
  /** A site of the whole demonstration takes longer than a thousand cases. */
  readonly isBuilt: boolean;
}

const isText = /\.(?:md|yaml|csv|json)$/;

function demonstration(picture: Buffer, film: Buffer): FuzzedFiles {
  const files = new Map<string, FuzzedFile>();
  for (const folder of ["content", "schemas/reference"]) {
    for (const [name, bytes] of siteFiles(path.join(repository, folder))) {
      if (name.startsWith(".")) continue;
      const content = isText.test(name) ? bytes.toString("utf8") : name.endsWith(".webm") ? film : picture;
      files.set(`${folder}/${name}`, content);
    }
  }
  return files;
}

/** What is done violence to: a small collection, one with something of every kind, and the demonstration. */
export async function soundCollections(): Promise<readonly SoundCollection[]> {
  const picture = await sharp({ create: { width: 30, height: 20, channels: 3, background: "#876" } })
    .jpeg()
    .toBuffer();
  const lanterns = [...siteFiles(path.join(repository, "tests/golden/lanterns/in"))];
  const every = Object.entries(germanCollection());
  return [
    {
      name: "lanterns",
      files: new Map(lanterns.map(([name, bytes]) => [name, bytes.toString("utf8")])),
      weight: 200,
      isBuilt: true,
    },
    { name: "every kind", files: new Map(every), weight: 200, isBuilt: true },
    {
      name: "demonstration",
      files: demonstration(picture, await webmFilm({ seconds: 30 })),
      weight: 1,
      isBuilt: false,
    },
  ];
}
