import { renderPage, type Site } from "../../../templates/render-page.ts";
import type { SiteFile } from "./site-file.ts";

const encoder = new TextEncoder();
let room = new Uint8Array(1 << 18);

/** The bytes of a text, good until the next is asked for: a page more would be a buffer more to clear away. */
export function encoded(text: string): Uint8Array {
  // A letter of a JavaScript string takes three bytes at most.
  if (room.length < text.length * 3) room = new Uint8Array(text.length * 3);
  return room.subarray(0, encoder.encodeInto(text, room).written);
}

/** What a file of the site is to hold. */
export function contentOf(
  file: Exclude<SiteFile, { kind: "copy" }>,
  site: Site | undefined,
): string | Uint8Array {
  if (file.kind === "bytes") return file.bytes;
  if (file.kind === "text") return file.text;
  if (!site) throw new Error(`Nothing is known of the site around the page "${file.address}".`);
  return renderPage(file.make(), site);
}
