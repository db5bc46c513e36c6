import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { UsageError } from "../command.ts";
import { type BrowserPipe, startBrowser } from "./browser-pipe.ts";

/** A browser on a busy machine takes its time to start; one that never answers must not keep the user for ever. */
const patience = 90_000;

async function printed(browser: BrowserPipe, url: string): Promise<Buffer> {
  const { targetId } = await browser.ask("Target.createTarget", { url: "about:blank" });
  const { sessionId } = await browser.ask("Target.attachToTarget", { targetId, flatten: true });
  const session = String(sessionId);
  await browser.ask("Page.enable", {}, session);
  const loaded = browser.until("Page.loadEventFired");
  await browser.ask("Page.navigate", { url }, session);
  await loaded;
  // The size of the paper and its margins are the sheet's own.
  const { data } = await browser.ask("Page.printToPDF", { preferCSSPageSize: true }, session);
  return Buffer.from(String(data), "base64");
}

/** Prints a page of ours, as it stands, by a browser without a window; nothing of it is left but the PDF. */
export async function printPdf(file: string, html: string, target: string): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-print-"));
  const page = path.join(folder, "sheet.html");
  writeFileSync(page, html);
  const browser = startBrowser(file, [
    "--headless",
    "--disable-gpu",
    "--no-first-run",
    `--user-data-dir=${path.join(folder, "profile")}`,
    // A browser refuses to run for the superuser with its sandbox; the page is ours, and runs nothing.
    ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  ]);
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`It did not answer in ${patience / 1000} seconds.`)), patience);
  });
  try {
    const pdf = await Promise.race([printed(browser, pathToFileURL(page).href), tooLong]);
    writeFileSync(target, pdf);
  } catch (problem) {
    throw new UsageError(
      `The browser ${file} did not print. ${problem instanceof Error ? problem.message : String(problem)}`,
    );
  } finally {
    clearTimeout(timer);
    await browser.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}
