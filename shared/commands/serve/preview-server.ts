import { realpathSync, statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { type Access, isKey, keyCookie, refusal } from "./access.ts";
import { answerBench } from "./bench/bench-server.ts";
import { previewClient, previewStyle } from "./preview-client.ts";
import { mediaTypes, sendFile } from "./send-file.ts";

/** What the open pages are told: which build stands, and what is wrong with the content since. */
export interface PreviewState {
  readonly build: number;
  readonly problems: string | null;
}

export interface PreviewServer {
  readonly server: Server;
  readonly tell: (state: PreviewState) => void;
}

/** The file of an address, or null where it leads out of the site or to nothing. */
function fileOf(site: string, address: string): string | null {
  try {
    const root = realpathSync(site);
    let file = realpathSync(path.join(root, decodeURIComponent(address)));
    if (statSync(file).isDirectory()) file = realpathSync(path.join(file, "index.html"));
    return file.startsWith(root + path.sep) ? file : null;
  } catch {
    return null;
  }
}

const isOfBench = (address: string) => /^\/__fittedcase\/bench(?:\/|\.css$|\.js$)/.test(address);

/**
 * A static host for the site that stands at `site`, which tells open pages of new builds; and the pages for the
 * bench, which write into the items of the collection at `root`.
 */
export function createPreviewServer(root: string, site: string, access: Access): PreviewServer {
  let state: PreviewState = { build: 0, problems: null };
  const listeners = new Set<ServerResponse>();
  const message = () => `event: state\ndata: ${JSON.stringify(state)}\n\n`;

  async function page(response: ServerResponse, file: string, status: number): Promise<void> {
    const written = await readFile(file, "utf8");
    // The page for what is not there leads where the site will stand; here it stands at the root.
    const home =
      status === 404 ? /<link rel="stylesheet" href="(\/[^"]*\/)assets\//.exec(written)?.[1] : undefined;
    const html = home === undefined ? written : written.replaceAll(`="${home}`, '="/');
    const added =
      '<link rel="stylesheet" href="/__fittedcase/preview.css"><script type="module" src="/__fittedcase/preview.js"></script>';
    const end = html.lastIndexOf("</body>");
    response.writeHead(status, { "content-type": "text/html; charset=utf-8", "cache-control": "no-store" });
    response.end(end < 0 ? html + added : html.slice(0, end) + added + html.slice(end));
  }

  const server = createServer((request, response) => {
    const refuse = (status: number, why: string) => {
      response.writeHead(status, { "content-type": "text/plain; charset=utf-8" });
      response.end(why);
    };
    const url = new URL(request.url ?? "/", "http://localhost");
    const { pathname } = url;
    const addressKey = url.searchParams.get("key");
    const refused = refusal(request, access, addressKey);
    if (refused !== null) return refuse(403, refused);
    if (addressKey !== null && isKey(access, addressKey)) {
      // The key goes from the address into a cookie, so that it is in no history and no link.
      response.writeHead(303, {
        location: pathname,
        "set-cookie": keyCookie(access),
        "cache-control": "no-store",
      });
      response.end();
      return;
    }
    if (isOfBench(pathname)) {
      answerBench(root, access, request, response, url).catch((problem: unknown) =>
        response.headersSent ? response.destroy() : refuse(500, String(problem)),
      );
      return;
    }
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(405, "Nothing can be written here.");
    if (pathname === "/__fittedcase/events") {
      response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
      response.write(message());
      listeners.add(response);
      request.on("close", () => listeners.delete(response));
      return;
    }
    if (pathname === "/__fittedcase/preview.js" || pathname === "/__fittedcase/preview.css") {
      const isScript = pathname.endsWith(".js");
      response.writeHead(200, { "content-type": mediaTypes[isScript ? ".js" : ".css"] });
      response.end(isScript ? previewClient : previewStyle);
      return;
    }
    const file = fileOf(site, pathname);
    const missing = fileOf(site, "/404.html");
    const failed = () => refuse(503, "The site is being built; try again.");
    if (file === null) {
      if (missing === null) return refuse(404, "Not found.");
      page(response, missing, 404).catch(failed);
    } else if (file.endsWith(".html")) {
      page(response, file, 200).catch(failed);
    } else {
      sendFile(request, response, file);
    }
  });

  return {
    server,
    tell(next) {
      state = next;
      for (const listener of listeners) listener.write(message());
    },
  };
}
