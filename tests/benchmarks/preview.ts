import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { gunzipSync } from "node:zlib";
import chromium from "@sparticuz/chromium";
import { type Browser, chromium as launcher, type Page } from "playwright-core";
import { command } from "../commands/run.ts";

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function until(condition: () => Promise<boolean> | boolean, each: number): Promise<void> {
  const patience = performance.now() + 300_000;
  while (!(await condition())) {
    if (performance.now() > patience) throw new Error("The preview did not show what was written.");
    await pause(each);
  }
}

/** The one in the middle, and the one that nineteen of twenty do not pass, in milliseconds. */
export interface Delays {
  readonly median: number;
  readonly most: number;
}

export interface PreviewDelays {
  /** From the saving of an item's file to its page on the screen of a browser. */
  readonly page: Delays;
  /** To its new title in the list of its variant and in the search index, as the preview serves them. */
  readonly lists: Delays;
}

function delaysOf(measured: readonly number[]): Delays {
  const inOrder = [...measured].sort((a, b) => a - b);
  return {
    median: inOrder[Math.floor(inOrder.length / 2)] ?? Number.NaN,
    most: inOrder[Math.ceil(0.95 * inOrder.length) - 1] ?? Number.NaN,
  };
}

const word = /quernstone\d+/;

/** Tells of the word as soon as a frame with it was drawn; runs anew whenever the page is loaded. */
const tellOfWord = `
  const look = () => {
    const found = /${word.source}/.exec(document.querySelector("main")?.textContent ?? "");
    if (!found) return requestAnimationFrame(look);
    requestAnimationFrame(() => setTimeout(() => window.drawn(found[0]), 0));
  };
  requestAnimationFrame(look);`;

/** Between two builds a connection may be closed. */
const fetched = (address: string): Promise<Buffer> =>
  fetch(address)
    .then(async (answer) => Buffer.from(await answer.arrayBuffer()))
    .catch(() => Buffer.of());

async function isListed(host: string, variant: string, title: string): Promise<boolean> {
  const list = String(await fetched(`${host}/items/by/variant/${variant}/`));
  if (!list.includes(title)) return false;
  const catalogue = String(await fetched(`${host}/items/`));
  const index = /assets\/search\/index\.[0-9a-f]+\.json\.gz/.exec(catalogue)?.[0];
  return index !== undefined && gunzipSync(await fetched(`${host}/${index}`)).includes(title);
}

async function edited(page: Page, drawn: ReadonlySet<string>, host: string, file: string, said: string) {
  const item = path.basename(path.dirname(file));
  await page.goto(`${host}/items/${item}/`);
  await page.locator("#fittedcase-bench").waitFor();
  await pause(300);
  const text = readFileSync(file, "utf8");
  const title = `Outfit ${said}`;
  const variant = /^variant: (.*)$/m.exec(text)?.[1] ?? "";
  const from = performance.now();
  writeFileSync(file, `${text.replace(/^title: .*$/m, `title: ${title}`)}A word more.\n`);
  await until(() => drawn.has(said), 2);
  const ofPage = performance.now() - from;
  await until(() => isListed(host, variant, title), 10);
  return { ofPage, ofLists: performance.now() - from };
}

async function measured(browser: Browser, host: string, root: string, edits: number): Promise<PreviewDelays> {
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  const drawn = new Set<string>();
  await page.exposeFunction("drawn", (found: string) => drawn.add(found));
  await page.addInitScript(tellOfWord);
  const items = readdirSync(path.join(root, "content/items"));
  const delays: Awaited<ReturnType<typeof edited>>[] = [];
  // A word that no earlier run has left behind.
  const first = Date.now();
  for (let edit = 0; edit < edits; edit++) {
    const item = items[Math.floor(((edit + 0.5) * items.length) / edits)] ?? "";
    const file = path.join(root, "content/items", item, "index.md");
    delays.push(await edited(page, drawn, host, file, `quernstone${first + edit}`));
    await pause(500);
  }
  return {
    page: delaysOf(delays.map(({ ofPage }) => ofPage)),
    lists: delaysOf(delays.map(({ ofLists }) => ofLists)),
  };
}

/** How soon an edited item is seen in a browser, over edits all through a collection. */
export async function previewDelays(root: string, edits: number): Promise<PreviewDelays> {
  const executablePath = process.env.FITTEDCASE_CHROMIUM ?? (await chromium.executablePath());
  const child = spawn(process.execPath, [command, "serve", "--root", root, "--port", "0"]);
  let said = "";
  child.stdout.on("data", (chunk) => {
    said += chunk;
  });
  const browser = await launcher.launch({
    executablePath,
    args: [...chromium.args.filter((arg) => arg !== "--single-process"), "--no-sandbox"],
  });
  try {
    await until(() => /127\.0\.0\.1:\d+/.test(said), 100);
    await pause(2000);
    return await measured(browser, `http://127.0.0.1:${/127\.0\.0\.1:(\d+)/.exec(said)?.[1]}`, root, edits);
  } finally {
    await browser.close();
    child.kill("SIGTERM");
  }
}
