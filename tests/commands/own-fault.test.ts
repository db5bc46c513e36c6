import { expect, it } from "vitest";
import { pilotageFolder } from "./pilotage.ts";
import { run } from "./run.ts";

/** The program's first word to the terminal goes wrong. */
const wrong = (fault: string) => ({
  NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(`process.stdout.write = () => { ${fault} }`)}`,
});

// 1 would say that the content has errors.
it.each([
  ["in a command", "throw new RangeError('unforeseen')"],
  ["beside it", "setTimeout(() => { throw new RangeError('unforeseen') })"],
  ["in a promise that nobody waits for", "Promise.reject(new RangeError('unforeseen'))"],
])("a fault of the program's own, %s, ends it with 2 and says where it was", async (_, fault) => {
  const { code, err } = await run(["check"], pilotageFolder(), wrong(fault));
  expect(code, err).toBe(2);
  expect(err).toMatch(/^Fittedcase itself failed\.\nRangeError: unforeseen\n {4}at /m);
});
