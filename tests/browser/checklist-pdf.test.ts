import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, inject, it } from "vitest";
import { pilotageFolder } from "../commands/pilotage.ts";
import { run } from "../commands/run.ts";

it("a checklist is printed as a PDF, on A4, by a browser that is there", async () => {
  const root = pilotageFolder();
  const ran = await run(["checklist", "pilot-mk2", "--pdf"], root, { CHROME_PATH: inject("browser") });
  expect(ran).toMatchObject({ code: 0, err: "", out: "Wrote checklist-pilot-mk2.pdf.\n" });
  const pdf = readFileSync(path.join(root, "checklist-pilot-mk2.pdf"), "latin1");
  expect(pdf).toMatch(/^%PDF-1\.\d/);
  // ISO 216: A4 is 210 by 297 mm, 595.28 by 841.89 points.
  const [, width, height] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
  expect(Number(width)).toBeCloseTo(595.28, -0.5);
  expect(Number(height)).toBeCloseTo(841.89, -0.5);
});
