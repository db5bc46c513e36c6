import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import chromium from "@sparticuz/chromium";
import type { TestProject } from "vitest/node";
import { repository, run } from "../commands/run.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** The folder of the demonstration site, built once for all tests. */
    demonstration: string;
    /** A browser that came with `npm ci`, or the one that FITTEDCASE_CHROMIUM names. */
    browser: string;
  }
}

/** Before any test: the site is built, and the browser unpacked once, since parallel tests would do it over each other. */
export default async function setup({ provide }: TestProject): Promise<void> {
  const out = path.join(mkdtempSync(path.join(tmpdir(), "fittedcase-demonstration-")), "site");
  const built = await run(["build", "--root", repository, "--out", out], repository);
  if (built.code !== 0) throw new Error(`The demonstration site does not build.\n${built.err}`);
  provide("demonstration", out);
  provide("browser", process.env.FITTEDCASE_CHROMIUM ?? (await chromium.executablePath()));
}
