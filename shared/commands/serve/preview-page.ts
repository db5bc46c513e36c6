import { hash } from "node:crypto";
import type { ServerResponse } from "node:http";
import type { LiveSite } from "../../site/live/live-site.ts";
import { htmlOf, shownAt } from "./shown.ts";

/** A page as the preview answers with it. */
export interface PreviewPage {
  readonly html: string;
  readonly status: number;
}

/** The page of an address, or the page for what is not there; null where what is there is no page. */
export function pageAt(pathname: string, site: string, live: LiveSite | null): PreviewPage | null {
  const shown = shownAt(pathname, site, live);
  if (shown) {
    const html = htmlOf(shown);
    return html === null ? null : { html, status: 200 };
  }
  const missing = shownAt("/404.html", site, live);
  const html = missing && htmlOf(missing);
  if (html === null) return null;
  // The page for what is not there leads where the site will stand; here it stands at the root.
  const home = /<link rel="stylesheet" href="(\/[^"]*\/)assets\//.exec(html)?.[1];
  return { html: home === undefined ? html : html.replaceAll(`="${home}`, '="/'), status: 404 };
}

/** By which a page that is open knows whether it is still the one that would be sent. */
export const pageVersion = ({ html }: PreviewPage): string => hash("sha1", html, "base64url");

/** With what the preview adds to each page. */
export function sendPage(response: ServerResponse, page: PreviewPage): void {
  const { html, status } = page;
  const added =
    '<link rel="stylesheet" href="/__fittedcase/preview.css">' +
    `<script type="module" src="/__fittedcase/preview.js" data-build="${pageVersion(page)}"></script>`;
  const end = html.lastIndexOf("</body>");
  response.writeHead(status, { "content-type": "text/html; charset=utf-8", "cache-control": "no-store" });
  response.end(end < 0 ? html + added : html.slice(0, end) + added + html.slice(end));
}
