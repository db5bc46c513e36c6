import { readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import type { LiveSite } from "../../site/live/live-site.ts";

/** What is to be sent for an address: bytes that are at hand, or a file. */
export type Shown =
  | { readonly kind: "content"; readonly content: string | Uint8Array; readonly extension: string }
  | { readonly kind: "file"; readonly file: string };

/** The file of an address, or null where it leads out of the site or to nothing. */
function fileOf(site: string, address: string): string | null {
  try {
    const root = realpathSync(site);
    let file = realpathSync(path.join(root, address));
    if (statSync(file).isDirectory()) file = realpathSync(path.join(file, "index.html"));
    return file.startsWith(root + path.sep) ? file : null;
  } catch {
    return null;
  }
}

/**
 * The addresses of the site that somebody may mean by one: a folder is its page, with or without its last slash. What
 * leads on from a former address is told of by the name of its file.
 */
function addressesOf(address: string): string[] {
  const page = address.replace(/(^|\/)index\.html$/, "$1");
  const folder = page.endsWith("/") ? page : `${page}/`;
  return [...new Set([page, folder, `${folder}index.html`])];
}

function decoded(pathname: string): string | null {
  try {
    return decodeURIComponent(pathname);
  } catch {
    return null;
  }
}

/** What stands at an address: as it was made last, in memory or on disk. Null for nothing. */
export function shownAt(pathname: string, site: string, live: LiveSite | null): Shown | null {
  const address = decoded(pathname);
  if (address === null) return null;
  let isGone = false;
  for (const each of live ? addressesOf(address) : []) {
    const answer = live?.answer(each);
    // A page that is gone may have left word where it went.
    isGone ||= answer === null;
    if (!answer) continue;
    if (answer.kind === "copy") return { kind: "file", file: answer.from };
    const extension = each.endsWith("/") ? ".html" : path.extname(each);
    return { kind: "content", content: answer.content, extension };
  }
  const file = isGone ? null : fileOf(site, address);
  return file === null ? null : { kind: "file", file };
}

/** The HTML of what is shown; null where it is no page. */
export function htmlOf(shown: Shown): string | null {
  if (shown.kind === "file") return shown.file.endsWith(".html") ? readFileSync(shown.file, "utf8") : null;
  return shown.extension === ".html" ? String(shown.content) : null;
}
