import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** Whatever a run of the tests writes lies in one folder, which goes with it. */
export default function setup(): () => void {
  const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-tests-"));
  process.env.TMPDIR = scratch;
  return () => rmSync(scratch, { recursive: true, force: true, maxRetries: 3 });
}
