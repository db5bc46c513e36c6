import { hash } from "node:crypto";
import { createServer, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { securityHeaders } from "../../pages/security-policy.ts";
import type { LiveSite } from "../../site/live/live-site.ts";
import { type Access, isKey, keyCookie, refusal } from "./access.ts";
import { answerBench } from "./bench/bench-server.ts";
import { previewClient, previewStyle } from "./preview-client.ts";
import { mediaTypes, sendContent, sendFile } from "./send-file.ts";
import { htmlOf, shownAt } from "./shown.ts";

/** What is wrong with the content, and how often something was made of it. */
export interface PreviewState {
  readonly build: number;
  readonly problems: string | null;
}

export interface PreviewServer {
  readonly server: Server;
  /**
   * Tells open pages; one that shows the same as before and has the same problems is left alone. Those that load again
   * are waited for, though not long: whatever is made meanwhile would keep them waiting.
   */
  readonly tell: (state: PreviewState) => Promise<void>;
  /** Resolves when whoever asks has been answered, or has asked for long enough. */
  readonly served: () => Promise<void>;
  /** The addresses of the site's pages that are open somewhere. */
  readonly lookedAt: () => ReadonlySet<string>;
}

/** Somebody who listens: with the page that is open, and what was last said of it. */
interface Listener {
  readonly response: ServerResponse;
  readonly page: string | null;
  said: string;
  build: string | number;
}

/** In milliseconds: a page that has not been loaded again by then is in nobody's sight. */
const patience = 400;
/** One question comes soon after another, or the browser has all that it wants. */
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

const htmlVersion = (html: string): string => hash("sha1", html, "base64url");

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
  let state: PreviewState = { build: 0, problems: null };
  const listeners = new Set<Listener>();
  let onArrival = () => {};
  let lastAsked = Number.NEGATIVE_INFINITY;

  /** The page of an address, or the page for what is not there; null where what is there is no page. */
  function pageAt(pathname: string): { readonly html: string; readonly status: number } | null {
    const shown = shownAt(pathname, site, live());
    if (shown) {
      const html = htmlOf(shown);
      return html === null ? null : { html, status: 200 };
    }
    const missing = shownAt("/404.html", site, live());
    const html = missing && htmlOf(missing);
    if (html === null) return null;
    // The page for what is not there leads where the site will stand; here it stands at the root.
    const home = /<link rel="stylesheet" href="(\/[^"]*\/)assets\//.exec(html)?.[1];
    return { html: home === undefined ? html : html.replaceAll(`="${home}`, '="/'), status: 404 };
  }

  function versionAt(pathname: string): string | number {
    try {
      const page = pageAt(pathname);
      return page ? htmlVersion(page.html) : state.build;
    } catch {
      // Its folder is being put in the place of another.
      return state.build;
    }
  }

  /** True where the page is to be loaded again. */
  function send(listener: Listener): boolean {
    const build = listener.page === null ? state.build : versionAt(listener.page);
    const message = `event: state\ndata: ${JSON.stringify({ build, problems: state.problems })}\n\n`;
    if (listener.page !== null && listener.said === message) return false;
    const isLoadedAgain = listener.page !== null && listener.build !== build;
    listener.said = message;
    listener.build = build;
    listener.response.write(message);
    return isLoadedAgain;
  }

  function sendPage(response: ServerResponse, { html, status }: { html: string; status: number }): void {
    const added =
      '<link rel="stylesheet" href="/__fittedcase/preview.css">' +
      `<script type="module" src="/__fittedcase/preview.js" data-build="${htmlVersion(html)}"></script>`;
    const end = html.lastIndexOf("</body>");
    response.writeHead(status, { "content-type": "text/html; charset=utf-8", "cache-control": "no-store" });
    response.end(end < 0 ? html + added : html.slice(0, end) + added + html.slice(end));
  }

  const server = createServer(limits, (request, response) => {
    lastAsked = performance.now();
    for (const [name, value] of ownHeaders) response.setHeader(name, value);
    response.on("finish", () => {
      lastAsked = performance.now();
    });
    const refuse = (status: number, why: string) => {
      response.writeHead(status, { "content-type": "text/plain; charset=utf-8" });
      response.end(why);
    };
    const url = addressAsked(request.url ?? "/");
    if (!url) return refuse(400, "This is no address.");
    const { pathname } = url;
    const addressKey = url.searchParams.get("key");
    const refused = refusal(request, access, addressKey);
    if (refused !== null) {
      // What such a one has still to say is not waited for.
      response.setHeader("connection", "close");
      return refuse(403, refused);
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
          : refuse(500, String(problem).replaceAll(root + path.sep, "")),
      );
      return;
    }
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(405, "Nothing can be written here.");
    if (pathname === "/__fittedcase/events") {
      response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
      const listener: Listener = { response, page: url.searchParams.get("page"), said: "", build: "" };
      send(listener);
      listeners.add(listener);
      if (listener.page !== null) onArrival();
      if (listener.page !== null) onLook(listener.page);
      request.on("close", () => listeners.delete(listener));
      return;
    }
    if (pathname === "/__fittedcase/preview.js" || pathname === "/__fittedcase/preview.css") {
      const isScript = pathname.endsWith(".js");
      response.writeHead(200, { "content-type": mediaTypes[isScript ? ".js" : ".css"] });
      response.end(isScript ? previewClient : previewStyle);
      return;
    }
    try {
      const page = pageAt(pathname);
      const shown = shownAt(pathname, site, live());
      if (page) sendPage(response, page);
      else if (shown?.kind === "file") sendFile(request, response, shown.file);
      else if (shown) sendContent(request, response, shown);
      else refuse(404, "Not found.");
    } catch {
      // Its folder is being put in the place of another.
      if (response.headersSent) response.destroy();
      else refuse(503, "The site is being built; try again.");
    }
  });

  server.maxConnections = mostConnections;

  return {
    server,
    tell(next) {
      state = next;
      let awaited = [...listeners].filter(send).length;
      if (awaited === 0) return Promise.resolve();
      return new Promise((resolve) => {
        const timer = setTimeout(resolve, patience);
        onArrival = () => {
          awaited--;
          if (awaited > 0) return;
          clearTimeout(timer);
          resolve();
        };
      });
    },
    async served() {
      // Whoever asked during the last piece of work is heard only now.
      const from = performance.now();
      while (performance.now() < Math.min(from + patience, Math.max(from, lastAsked) + lull))
        await new Promise((resolve) => setTimeout(resolve, lull / 3));
    },
    lookedAt: () => new Set([...listeners].flatMap(({ page }) => (page === null ? [] : decodedPage(page)))),
  };
}

function decodedPage(page: string): string[] {
  try {
    return [decodeURIComponent(page)];
  } catch {
    return [];
  }
}
