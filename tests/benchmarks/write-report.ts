import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";

/** What a benchmark found, for programs. */
export function writeReport(file: string, report: unknown): void {
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(report, null, 2)}\n`);
}
