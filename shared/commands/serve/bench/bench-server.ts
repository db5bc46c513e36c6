import { existsSync, readFileSync } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { packageFolder } from "../../../source/package-folder.ts";
import { type Access, writeRefusal } from "../access.ts";
import { mediaTypes } from "../send-file.ts";
import {
  benchAddress,
  benchFrame,
  benchIndex,
  benchItem,
  benchItemAddress,
  benchNotice,
  benchQuestion,
} from "./bench-html.ts";
import { benchRecord, benchReference, readBenchRecord } from "./bench-record.ts";
import { benchStyle } from "./bench-style.ts";
import { saveForm } from "./save-form.ts";

/** More than any part has to say. */
const longestForm = 64 * 1024;

/** Nothing inline runs, nothing comes from elsewhere; a form must be able to name the page that it comes from. */
const headers = {
  "cache-control": "no-store",
  "content-security-policy":
    "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
  "referrer-policy": "same-origin",
  "x-content-type-options": "nosniff",
} as const;

/** The site's own ink, type and measure, with the user's sheets in the place of ours, and what the bench needs more. */
function style(root: string): string {
  const sheets = ["10-fonts.css", "20-ink.css", "30-page.css"].map((name) => {
    const own = path.join(root, "templates/styles", name);
    return readFileSync(existsSync(own) ? own : path.join(packageFolder, "templates/styles", name), "utf8");
  });
  // From this machine they are there at once: a page that is read beside the case waits for them.
  return [...sheets, benchStyle]
    .join("\n")
    .replaceAll('url("fonts/', 'url("/assets/fonts/')
    .replaceAll("font-display: optional", "font-display: block");
}

async function formOf(request: IncomingMessage): Promise<URLSearchParams | null> {
  if (!/^application\/x-www-form-urlencoded\b/.test(request.headers["content-type"] ?? "")) return null;
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request) {
    size += (chunk as Buffer).length;
    if (size > longestForm) return null;
    chunks.push(chunk as Buffer);
  }
  return new URLSearchParams(Buffer.concat(chunks).toString("utf8"));
}

/** The pages for the bench, below their own address of the preview; they are no part of a built site. */
export async function answerBench(
  root: string,
  access: Access,
  request: IncomingMessage,
  response: ServerResponse,
  url: URL,
): Promise<void> {
  const send = (status: number, type: string, body: string, more: Readonly<Record<string, string>> = {}) => {
    response.writeHead(status, { ...headers, "content-type": type, ...more });
    response.end(request.method === "HEAD" ? undefined : body);
  };
  const html = (status: number, body: string) => send(status, mediaTypes[".html"] ?? "", body);
  const plain = (status: number, body: string) => send(status, mediaTypes[".txt"] ?? "", body);
  const isRead = request.method === "GET" || request.method === "HEAD";
  if (url.pathname === "/__fittedcase/bench.css") return send(200, mediaTypes[".css"] ?? "", style(root));
  if (url.pathname === "/__fittedcase/bench.js") {
    const script = path.join(packageFolder, "dist/shared/commands/serve/bench/bench-client.js");
    return send(200, mediaTypes[".js"] ?? "", readFileSync(script, "utf8"));
  }
  const rest = url.pathname.slice(benchAddress.length);
  if (rest === "") {
    if (!isRead) return plain(405, "Nothing can be written here.");
    const reference = benchReference(root);
    return html(
      200,
      benchIndex(
        reference,
        reference.items.map((file) => readBenchRecord(root, file)),
      ),
    );
  }
  const named = /^([^/]+)\/$/.exec(rest);
  const id = named && decoded(named[1] ?? "");
  if (!id) return plain(404, "Not found.");
  const reference = benchReference(root);
  const record = benchRecord(root, reference, id);
  const frame = benchFrame(reference);
  const { refused: no } = frame.say;
  if (!record) return html(404, benchNotice(frame, no.notFoundTitle, no.notFound(id), benchAddress));
  if (isRead) return html(200, benchItem(reference, record, access.key, url.searchParams.get("another")));
  if (request.method !== "POST") return plain(405, "Nothing can be written here in this way.");

  const form = await formOf(request);
  if (!form) return plain(415, "Expected a form of this page.");
  const refused = writeRefusal(request, access, form);
  if (refused) return plain(403, refused);
  const saved = saveForm(root, reference, id, form);
  if (/\bapplication\/json\b/.test(request.headers.accept ?? ""))
    return send(saved.status, mediaTypes[".json"] ?? "", JSON.stringify(saved));
  if (saved.asks !== undefined)
    return html(saved.status, benchQuestion(frame, saved.said, benchItemAddress(id), form, saved.asks));
  if (saved.status !== 200)
    return html(saved.status, benchNotice(frame, no.title, saved.said, benchItemAddress(id)));
  const [part, feature] = [form.get("part"), form.get("feature")];
  const place = part ? `#part-${part}` : feature ? `#feature-${feature}` : "";
  return send(303, mediaTypes[".txt"] ?? "", saved.said, { location: benchItemAddress(id) + place });
}

function decoded(segment: string): string | null {
  try {
    return decodeURIComponent(segment);
  } catch {
    return null;
  }
}
