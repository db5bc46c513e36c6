import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { item, smallCollection, writeCollection } from "../collections/collection.ts";
import { run } from "../commands/run.ts";
import { waveSound, webmFilm } from "../images/handmade-recordings.ts";

export const partIds = ["balance", "weights", "lamp", "mortar", "blowpipe", "anvil", "hammer", "key"];

const variant = `parts:
${partIds.map((id) => `  ${id}: { standing: issued, plan: [${partIds.indexOf(id) * 10}, 0, 10, 12] }`).join("\n")}
`;

/** A picture on which places can be told apart. */
const picture = (width: number, height: number, colour: string) => {
  const squares = Array.from({ length: 12 }, (_, at) => {
    const [x, y] = [(at % 4) * 0.25, Math.floor(at / 4) / 3];
    return `<rect x="${x * width + 8}" y="${y * height + 8}" width="${width / 4 - 16}" height="${height / 3 - 16}" fill="hsl(${at * 30} 40% 50%)"/>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="${width}" height="${height}" fill="${colour}"/>${squares.join("")}</svg>`;
  return sharp(Buffer.from(svg)).jpeg().toBuffer();
};

const spread = partIds.map(
  (part, at) => `{ part: ${part}, at: [${0.125 + (at % 4) * 0.25}, ${0.17 + Math.floor(at / 4) * 0.33}] }`,
);
const crowded = partIds.map((part, at) => `{ part: ${part}, at: [${0.5 + at * 0.002}, 0.5] }`);

export const serial = "H271828";

/**
 * The site of a collection with two outfits: one with four photographs and a film, one with a sound recording.
 * Returns its folder.
 */
export async function siteWithPhotographs(): Promise<string> {
  const root = writeCollection(
    smallCollection(variant, {
      "content/items/filmed/index.md": item(
        `serial: ${serial}
parts: { ${partIds.map((id) => `${id}: present`).join(", ")} }
photos:
  - { file: open.jpg, alt: The chest open., caption: The chest open from above., callouts: [${spread.join(", ")}] }
  - { file: crowd.jpg, alt: The lid., caption: The inside of the lid., callouts: [${crowded.join(", ")}] }
  - { file: upright.jpg, alt: The lamp., caption: The lamp. }
  - { file: small.jpg, alt: The key. }
video: { src: film.webm, captions: film.vtt, caption: Gone through., moments: [{ part: balance, at: "0:04" }, { part: lamp, at: "0:20" }, { part: key, at: "0:20" }] }`,
      ),
      "content/items/filmed/open.jpg": await picture(2400, 1600, "#433"),
      "content/items/filmed/crowd.jpg": await picture(1500, 1000, "#343"),
      "content/items/filmed/upright.jpg": await picture(800, 1200, "#334"),
      "content/items/filmed/small.jpg": await picture(300, 200, "#443"),
      "content/items/filmed/film.webm": await webmFilm({ seconds: 30 }),
      "content/items/filmed/film.vtt": `WEBVTT\n\n00:01.000 --> 00:05.000\nThe chest, number ${serial}, is opened.\n`,
      "content/items/told/index.md": item(
        `serial: ${serial}\nparts: { balance: present }\nvideo: { src: told.wav, captions: told.vtt, moments: [{ part: balance, at: "1:17" }] }`,
      ),
      "content/items/told/told.vtt": `WEBVTT

NOTE taken down by hand

00:00.500 --> 00:06.000
<v Ada>This is the chest, <i>number ${serial}</i>,
as it came to the house.

00:06.000 --> 01:10.000
Its lid is of oak &amp; lined with green cloth, which has faded along the edge that faced the window for longer than anybody here can say.

01:17.250 --> 01:30.000
And this is the balance.
`,
      "content/items/told/told.wav": waveSound(100),
    }),
  );
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-photographs-")), "site");
  const built = await run(["build", "--root", root, "--out", out], root);
  if (built.code !== 0) throw new Error(built.err);
  return out;
}
