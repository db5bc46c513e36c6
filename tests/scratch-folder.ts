import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

/** Whatever a run of the tests writes lies in one folder, which goes with it. */
export default function setup(): () => void {
  const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-tests-"));
  // As the machine's own folder for what is temporary: some tests run the command as another user.
  chmodSync(scratch, 0o1777);
  process.env.TMPDIR = scratch;
  return () => rmSync(scratch, { recursive: true, force: true, maxRetries: 3 });
}
