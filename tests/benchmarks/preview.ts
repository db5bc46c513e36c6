import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { command } from "../commands/run.ts";

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function until(condition: () => Promise<boolean>, each: number): Promise<void> {
  const patience = performance.now() + 120_000;
  while (!(await condition())) {
    if (performance.now() > patience) throw new Error("The preview did not show what was written.");
    await pause(each);
  }
}

/** From the saving of an item's file to its page as the preview serves it, in milliseconds. */
export async function previewDelays(
  root: string,
  edits: number,
): Promise<{ readonly median: number; readonly most: number }> {
  const child = spawn(process.execPath, [command, "serve", "--root", root, "--port", "0"]);
  let said = "";
  child.stdout.on("data", (chunk) => {
    said += chunk;
  });
  try {
    await until(async () => /127\.0\.0\.1:\d+/.test(said), 100);
    const host = `http://127.0.0.1:${/127\.0\.0\.1:(\d+)/.exec(said)?.[1]}`;
    const items = readdirSync(path.join(root, "content/items"));
    const delays: number[] = [];
    for (let edit = 0; edit < edits; edit++) {
      const item = items[Math.floor(((edit + 0.5) * items.length) / edits)] ?? "";
      const file = path.join(root, "content/items", item, "index.md");
      const word = `quernstone${edit}`;
      const from = performance.now();
      writeFileSync(file, `${readFileSync(file, "utf8")}${word}\n`);
      // Between two builds a connection may be closed.
      const shown = () =>
        fetch(`${host}/items/${item}/`)
          .then((answer) => answer.text())
          .catch(() => "");
      await until(async () => (await shown()).includes(word), 10);
      delays.push(performance.now() - from);
      // Lists and search come after.
      await pause(2000);
    }
    delays.sort((a, b) => a - b);
    return {
      median: delays[Math.floor(delays.length / 2)] ?? Number.NaN,
      most: delays[Math.ceil(0.95 * delays.length) - 1] ?? Number.NaN,
    };
  } finally {
    child.kill("SIGTERM");
  }
}
