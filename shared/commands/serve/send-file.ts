import { createReadStream, statSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { byteRange } from "./byte-range.ts";

export const mediaTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".woff2": "font/woff2",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".webm": "video/webm",
  ".mp4": "video/mp4",
  ".m4a": "audio/mp4",
  ".mp3": "audio/mpeg",
  ".wav": "audio/wav",
  ".flac": "audio/flac",
  ".vtt": "text/vtt; charset=utf-8",
};

/** What is named by its own content stays as it is for ever. */
const isNamedByContent = (file: string): boolean =>
  /[/\\]assets[/\\].*[./\\-][0-9a-f]{10}\.[a-z0-9.]+$/.test(file);

/** What is at hand, and needs no file. */
export function sendContent(
  request: IncomingMessage,
  response: ServerResponse,
  { content, extension }: { readonly content: string | Uint8Array; readonly extension: string },
): void {
  response.writeHead(200, {
    "content-type": mediaTypes[extension] ?? "application/octet-stream",
    "cache-control": "no-store",
    "content-length": Buffer.byteLength(content),
  });
  response.end(request.method === "HEAD" ? undefined : content);
}

/** A file, or the part of it that was asked for: players jump in a recording by asking for what lies ahead. */
export function sendFile(request: IncomingMessage, response: ServerResponse, file: string): void {
  const { size } = statSync(file);
  const range = byteRange(request.headers.range, size);
  const headers = {
    "content-type": mediaTypes[path.extname(file)] ?? "application/octet-stream",
    "cache-control": isNamedByContent(file) ? "max-age=31536000, immutable" : "no-store",
    "accept-ranges": "bytes",
  };
  if (range === "none") {
    response.writeHead(416, { ...headers, "content-range": `bytes */${size}` });
    response.end();
    return;
  }
  const { start, end } = range ?? { start: 0, end: size - 1 };
  response.writeHead(range === null ? 200 : 206, {
    ...headers,
    "content-length": end - start + 1,
    ...(range === null ? {} : { "content-range": `bytes ${start}-${end}/${size}` }),
  });
  if (request.method === "HEAD" || size === 0) {
    response.end();
    return;
  }
  createReadStream(file, { start, end })
    .on("error", () => response.destroy())
    .pipe(response);
}
