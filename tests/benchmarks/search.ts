import { createReadStream, existsSync, mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { createGzip } from "node:zlib";
import chromium from "@sparticuz/chromium";
import { type Browser, chromium as launcher, type Page } from "playwright-core";
import { publishedIn } from "../collections/collection.ts";
import { generateCollection } from "./generate-collection.ts";
import { writeSearchSite } from "./search-site.ts";

/** What people type, by what they want. */
interface Question {
  readonly kind: string;
  /** Fields of the form. */
  readonly ask: Readonly<Record<string, string>>;
}

const rounds = 5;
const throttle = 4;
const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
};

/** A static host that compresses text, and sends what is compressed already as it is. */
const host = (folder: string, isCompressing: boolean) =>
  createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const file = path.join(folder, pathname.endsWith("/") ? `${pathname}index.html` : pathname);
    if (!existsSync(file)) return response.writeHead(404).end();
    const type = types[path.extname(file)] ?? "application/octet-stream";
    const isText = isCompressing && !file.endsWith(".gz") && !file.endsWith(".woff2");
    response.writeHead(200, { "content-type": type, ...(isText ? { "content-encoding": "gzip" } : {}) });
    const read = createReadStream(file);
    if (isText) read.pipe(createGzip()).pipe(response);
    else read.pipe(response);
  });

/** A slow machine, and what it loads. */
async function openPage(browser: Browser, url: string) {
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Emulation.setCPUThrottlingRate", { rate: throttle });
  const loaded = new Map<string, number>();
  const names = new Map<string, string>();
  session.on("Network.responseReceived", ({ requestId, response }) => names.set(requestId, response.url));
  session.on("Network.loadingFinished", ({ requestId, encodedDataLength }) =>
    loaded.set(names.get(requestId) ?? requestId, encodedDataLength),
  );
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await page.goto(`${url}/items/`);
  const processor = async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  };
  return { page, loaded, processor };
}

/** Nothing asked, and the whole list painted again. */
const askNothing = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    document.querySelector<HTMLAnchorElement>(".show-all")?.click();
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 100)));
  });

/** From the question to the rows on the screen, in milliseconds, as a reader waits for it. */
const askOnce = (page: Page, ask: Question["ask"]): Promise<{ time: number; told: string; rows: number }> =>
  page.evaluate(async (fields) => {
    const form = document.querySelector<HTMLFormElement>("form.finder");
    const told = form?.querySelector<HTMLOutputElement>(".told-found");
    const found = document.querySelector<HTMLElement>(".found");
    if (!form || !told || !found) throw new Error("Found no form to ask.");
    for (const control of form.elements) {
      if (control instanceof HTMLInputElement || control instanceof HTMLSelectElement)
        control.value = fields[control.name] ?? "";
    }
    const shown = new Promise<void>((done) => {
      const watch = new MutationObserver(() => {
        if (!/\d of|All|None/.test(told.value)) return;
        watch.disconnect();
        done();
      });
      watch.observe(told, { childList: true, characterData: true, subtree: true });
    });
    const from = performance.now();
    form.querySelector("[name=q]")?.dispatchEvent(new InputEvent("input", { bubbles: true }));
    await shown;
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
    return {
      time: performance.now() - from,
      told: told.value,
      rows: found.hidden ? 0 : found.querySelectorAll("tr.entry").length,
    };
  }, ask);

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(0).padStart(6)} kB`;

/** The search over a collection in a real browser on a machine four times slower than this one. */
async function benchmarkSearch(root: string, print: (line: string) => void): Promise<void> {
  const published = publishedIn(root);
  const folder = mkdtempSync(path.join(tmpdir(), "bench-search-"));
  const browser = await launcher.launch({
    executablePath: process.env.FITTEDCASE_CHROMIUM ?? (await chromium.executablePath()),
    args: [...chromium.args.filter((arg) => arg !== "--single-process"), "--no-sandbox"],
  });
  try {
    const site = writeSearchSite(published, folder);
    print(
      `${published.items.length} entries; the index and its files: ${site.processor.toFixed(2)} s of processor`,
    );
    print(`${kilobytes(site.index)}  index`);
    print(`${kilobytes(site.details)}  places and missing parts, when they are asked for`);
    print(
      `${kilobytes(Math.max(...site.wordFiles))}  the largest of ${site.wordFiles.length} files of words, which have ${kilobytes(site.wordFiles.reduce((sum, size) => sum + size, 0)).trim()} together`,
    );
    for (const isCompressing of [true, false]) {
      const server = host(folder, isCompressing);
      await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
      const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
      await measure(browser, url, isCompressing, published, print);
      server.close();
    }
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(
  browser: Browser,
  url: string,
  isCompressing: boolean,
  { items }: ReturnType<typeof publishedIn>,
  print: (line: string) => void,
): Promise<void> {
  const some = items[Math.floor(items.length / 2)];
  if (!some) throw new Error("Found no entry to ask for.");
  const place = some.provenance.events.find((event) => event.place !== null)?.place ?? "";
  const title = some.title.split(/[^\p{L}]+/u).find((word) => word.length > 5) ?? "outfit";
  const prose = some.description.split(/[^\p{L}]+/u).filter((word) => word.length > 6);
  const word = prose[5] ?? title;
  const slip = `${title.slice(0, 3)}${title.charAt(4)}${title.charAt(3)}${title.slice(5)}`;
  const questions: readonly Question[] = [
    { kind: "a word of a title", ask: { q: title } },
    { kind: "a part of a word", ask: { q: title.slice(1, 5) } },
    { kind: "one letter", ask: { q: title.slice(0, 1) } },
    { kind: "a slip of the finger", ask: { q: slip } },
    { kind: "a word of a text", ask: { q: word } },
    { kind: "two words of a text", ask: { q: `${word} ${prose[9] ?? ""}` } },
    { kind: "a serial as published", ask: { q: some.serial ?? "" } },
    { kind: "a serial without its prefix", ask: { q: (some.serial ?? "").replace(/^\p{L}+/u, "") } },
    { kind: "a serial in full", ask: { q: (some.serial ?? "").replaceAll("\u2022", "7") } },
    { kind: "complete, by completeness", ask: { least: "80", most: "95", sort: "complete" } },
    { kind: "everything by title", ask: { sort: "title" } },
    { kind: "a place", ask: { place } },
    { kind: "a missing part, by rarity", ask: { missing: some.parts[8]?.id ?? "", sort: "rare" } },
    { kind: "nothing that there is", ask: { q: "xyzzyxyzzy" } },
  ];
  const { page, loaded, processor } = await openPage(browser, url);
  const isOfPage = (address: string) => /\.(?:css|woff2|html)$|\/$/.test(address);
  const before = new Set(loaded.keys());
  const first = await askOnce(page, questions[0]?.ask ?? {});
  await page.waitForTimeout(500);
  const forSearch = [...loaded].filter(([address]) => !isOfPage(address));
  const sum = (of: readonly (readonly [string, number])[]) => of.reduce((total, [, size]) => total + size, 0);
  print(
    `\n${isCompressing ? "A host that compresses" : "A host that does not compress"}: ${kilobytes(sum(forSearch)).trim()} loaded for a first search, scripts and words included; ${kilobytes(sum(forSearch.filter(([address]) => !before.has(address)))).trim()} of them once it began`,
  );
  print(`the first answer, with all that had to be fetched for it: ${first.time.toFixed(0)} ms`);
  if (!isCompressing) return;
  // The parts stand in the form once the details are here.
  await page.locator(".finder summary").click();
  await page.waitForFunction(
    () => (document.querySelector<HTMLSelectElement>("[name=missing]")?.length ?? 0) > 1,
  );
  print(
    `processor throttled ${throttle} times; from the question to the painted answer, of ${rounds} rounds`,
  );
  print("  median     most  processor");
  for (const { kind, ask } of questions) {
    // Its files are fetched once; after that only the search itself is timed.
    await askNothing(page);
    const { told, rows } = await askOnce(page, ask);
    const times: number[] = [];
    const costs: number[] = [];
    for (let round = 0; round < rounds; round++) {
      await askNothing(page);
      const before = await processor();
      times.push((await askOnce(page, ask)).time);
      costs.push((await processor()) - before);
    }
    const figure = (time: number) => `${time.toFixed(0).padStart(5)} ms`;
    print(
      `${figure(median(times))} ${figure(Math.max(...times))}   ${figure(median(costs))}  ${kind}: ${Object.values(ask).join(", ")} (${rows} rows; ${told})`,
    );
  }
  await page.context().close();
}

/** Over a generated collection of so many items. */
export async function benchmarkSearchOf(items: number, print: (line: string) => void): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), "bench-collection-"));
  try {
    generateCollection({ folder, items });
    await benchmarkSearch(folder, print);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
