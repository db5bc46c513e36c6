import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { securityHeaders } from "../../pages/security-policy.ts";
import type { LiveSite } from "../../site/live/live-site.ts";
import { type Access, isKey, keyCookie, refusal } from "./access.ts";
import { answerBench } from "./bench/bench-server.ts";
import { OpenPages, type PreviewState, patience } from "./open-pages.ts";
import { previewClient, previewStyle } from "./preview-client.ts";
import { pageAt, pageVersion, sendPage } from "./preview-page.ts";
import { mediaTypes, sendContent, sendFile } from "./send-file.ts";
import { shownAt } from "./shown.ts";

export interface PreviewServer {
  readonly server: Server;
  /** Tells open pages, and waits for those that load again. */
  readonly tell: (state: PreviewState) => Promise<void>;
  /** Resolves when whoever asks has been answered, or has asked for long enough. */
  readonly served: () => Promise<void>;
  /** The addresses of the site's pages that are open somewhere. */
  readonly lookedAt: () => ReadonlySet<string>;
}

/** In milliseconds: one question comes soon after another, or the browser has all that it wants. */
const lull = 30;

/**
 * What the header files ask of a host, so that what a page may not do is noticed before it is published; and no page of
 * another site takes in anything of this one.
 */
const ownHeaders = [...securityHeaders, ["Cross-Origin-Resource-Policy", "same-origin"]] as const;

/** In milliseconds, and in number: whoever only holds a line open must not keep others from being answered. */
const limits = { headersTimeout: 10_000, requestTimeout: 30_000, connectionsCheckingInterval: 5_000 };
const mostConnections = 256;

const isOfBench = (address: string) => /^\/__fittedcase\/bench(?:\/|\.css$|\.js$)/.test(address);

/**
 * Null for what is none. A path is joined as text: beginning with two slashes, or with one that is turned round, it would
 * be read as the name of a host (RFC 3986, 4.2; the URL Standard, 4.4).
 */
function addressAsked(target: string): URL | null {
  const whole = target.startsWith("/") ? `http://localhost${target}` : target;
  const url = URL.canParse(whole) ? new URL(whole) : null;
  return url?.pathname.startsWith("//") ? null : url;
}

/**
 * A host for the site that stands at `site`, with what was made over it since, which tells open pages when they are to be
 * loaded again; and the pages for the bench, which write into the items of the collection at `root`.
 */
export function createPreviewServer(
  root: string,
  site: string,
  access: Access,
  live: () => LiveSite | null,
  /** Told of the address of each page that somebody opens. */
  onLook: (address: string) => void,
): PreviewServer {
  let lastAsked = Number.NEGATIVE_INFINITY;
  const openPages = new OpenPages((pathname) => {
    try {
      const page = pageAt(pathname, site, live());
      return page && pageVersion(page);
    } catch {
      // Its folder is being put in the place of another.
      return null;
    }
  });

  /** What stands at an address of the site or, below its own, of the preview. */
  function answer(request: IncomingMessage, response: ServerResponse, { pathname, searchParams }: URL): void {
    if (pathname === "/__fittedcase/events") {
      const page = searchParams.get("page");
      openPages.listen(response, page);
      if (page !== null) onLook(page);
      return;
    }
    if (pathname === "/__fittedcase/preview.js" || pathname === "/__fittedcase/preview.css") {
      const isScript = pathname.endsWith(".js");
      response.writeHead(200, { "content-type": mediaTypes[isScript ? ".js" : ".css"] });
      response.end(isScript ? previewClient : previewStyle);
      return;
    }
    try {
      const page = pageAt(pathname, site, live());
      const shown = shownAt(pathname, site, live());
      if (page) sendPage(response, page);
      else if (shown?.kind === "file") sendFile(request, response, shown.file);
      else if (shown) sendContent(request, response, shown);
      else refuse(response, 404, "Not found.");
    } catch {
      // Its folder is being put in the place of another.
      if (response.headersSent) response.destroy();
      else refuse(response, 503, "The site is being built; try again.");
    }
  }

  const server = createServer(limits, (request, response) => {
    lastAsked = performance.now();
    for (const [name, value] of ownHeaders) response.setHeader(name, value);
    response.on("finish", () => {
      lastAsked = performance.now();
    });
    const url = addressAsked(request.url ?? "/");
    if (!url) return refuse(response, 400, "This is no address.");
    const { pathname } = url;
    const addressKey = url.searchParams.get("key");
    const refused = refusal(request, access, addressKey);
    if (refused !== null) {
      // What such a one has still to say is not waited for.
      response.setHeader("connection", "close");
      return refuse(response, 403, refused);
    }
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
        response.headersSent
          ? response.destroy()
          : refuse(response, 500, String(problem).replaceAll(root + path.sep, "")),
      );
      return;
    }
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(response, 405, "Nothing can be written here.");
    answer(request, response, url);
  });

  server.maxConnections = mostConnections;

  return {
    server,
    tell: (state) => openPages.tell(state),
    async served() {
      // Whoever asked during the last piece of work is heard only now.
      const from = performance.now();
      while (performance.now() < Math.min(from + patience, Math.max(from, lastAsked) + lull))
        await new Promise((resolve) => setTimeout(resolve, lull / 3));
    },
    lookedAt: () => openPages.addresses,
  };
}

function refuse(response: ServerResponse, status: number, why: string): void {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8" });
  response.end(why);
}
