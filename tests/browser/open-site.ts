import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import chromium from "@sparticuz/chromium";
import { type Browser, type BrowserContextOptions, chromium as launcher, type Page } from "playwright-core";
import { inject } from "vitest";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
  ".woff2": "font/woff2",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".xml": "application/xml",
  ".csv": "text/csv",
  ".webm": "video/webm",
  ".wav": "audio/wav",
  ".vtt": "text/vtt",
};

/** Where the demonstration will stand, below which its page for what is not there looks for everything. */
export const below = "/varran-outfits";

/** A plain static host, as a site will have one: at the root of a host, and below a path of it. */
function host(folder: string): Promise<Server> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const within = pathname.startsWith(`${below}/`) ? pathname.slice(below.length) : pathname;
    let file = path.join(folder, decodeURIComponent(within));
    if (existsSync(file) && statSync(file).isDirectory()) file = path.join(file, "index.html");
    const found = existsSync(file);
    const headers = { "content-type": types[found ? path.extname(file) : ".html"] ?? "text/plain" };
    // RFC 9110, 14: players ask for what lies ahead.
    const range = found ? /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? "") : null;
    if (range) {
      const { size } = statSync(file);
      const start = Number(range[1]);
      const end = range[2] ? Number(range[2]) : size - 1;
      response.writeHead(206, { ...headers, "content-range": `bytes ${start}-${end}/${size}` });
      createReadStream(file, { start, end }).pipe(response);
      return;
    }
    response.writeHead(found ? 200 : 404, { ...headers, "accept-ranges": "bytes" });
    createReadStream(found ? file : path.join(folder, "404.html")).pipe(response);
  });
  return new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(server)));
}

/**
 * Of the settings that the packed browser comes with. One process for everything is for where there is little memory, and it
 * falls over more easily; what these pages are safe from is to be tested; and a graphics card that the processor plays takes
 * as much of it again as all else that the browser does.
 */
const without =
  /^--(?:single-process|disable-web-security|disable-site-isolation-trials|ignore-gpu-blocklist|use-gl=.*|use-angle=.*|enable-unsafe-swiftshader)$/;

export interface OpenSite {
  readonly url: string;
  readonly browser: Browser;
  /** A new page, in a context of its own, at no address yet. */
  readonly blank: (options?: BrowserContextOptions) => Promise<Page>;
  /** The same, at an address of the site. */
  readonly visit: (address: string, options?: BrowserContextOptions) => Promise<Page>;
  readonly close: () => Promise<void>;
}

export async function openSite(folder = inject("demonstration")): Promise<OpenSite> {
  const server = await host(folder);
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const browser = await launcher.launch({
    executablePath: inject("browser"),
    args: [
      ...chromium.args.filter((arg) => !without.test(arg)),
      "--no-sandbox",
      "--disable-quic",
      "--disable-gpu",
    ],
  });
  const blank = async (options: BrowserContextOptions = {}) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
    return context.newPage();
  };
  return {
    url,
    browser,
    blank,
    async visit(address, options) {
      const page = await blank(options);
      await page.goto(url + address);
      return page;
    },
    async close() {
      await browser.close();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

/** One page of every kind, by what it is. */
export const kindsOfPage = {
  home: "/",
  catalogue: "/items/",
  "the catalogue with something asked of it": "/items/?q=lamp&least=50&sort=complete",
  "a list of the outfits of a variant": "/items/by/variant/survey-pattern-2/",
  "what can be set side by side": "/compare/",
  "two outfits side by side": "/compare/grauven-inspector-outfit/hale-ferrin-outfit/",
  "any outfits side by side": "/compare/?items=hale-ferrin-outfit,marchby-outfit,signal-cabin-set",
  item: "/items/hale-ferrin-outfit/",
  "display card": "/items/hale-ferrin-outfit/card/",
  "an item whose evidence contradicts its label": "/items/marchby-outfit/",
  "an item hardly examined": "/items/nether-loft-outfit/",
  families: "/families/",
  family: "/families/survey-outfit/",
  variant: "/variants/survey-pattern-2/",
  articles: "/articles/",
  article: "/articles/telling-the-patterns-apart/",
  sightings: "/sightings/",
  "sightings of a variant": "/sightings/survey-pattern-2/",
  sources: "/sources/",
  wants: "/wants/",
  methods: "/methods/",
  fields: "/fields/",
  "page that is not there": "/404.html",
} as const;
