import { chmodSync, mkdtempSync } from "node:fs";
import { readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

/** Whatever a run of the tests writes lies in one folder, which goes with it. */
export default function setup(): () => Promise<void> {
  const scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-tests-"));
  // As the machine's own folder for what is temporary: some tests run the command as another user.
  chmodSync(scratch, 0o1777);
  process.env.TMPDIR = scratch;
  const remove = (name: string) =>
    rm(path.join(scratch, name), { recursive: true, force: true, maxRetries: 3 });
  // Of so many files, several at a time: to take them away one by one lasts so long that vitest gives up its workers.
  return async () => {
    await Promise.all((await readdir(scratch)).map(remove));
    await remove("");
  };
}
