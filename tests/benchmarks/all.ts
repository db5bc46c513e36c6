import { parseArgs } from "node:util";
import { benchmarkBuild } from "./build.ts";
import { benchmarkImages } from "./images.ts";
import { benchmarkSearchOf } from "./search.ts";
import { benchmarkSeparatingSets } from "./separating-sets.ts";

// `npm run bench` for all, `npm run bench -- build --items 10000` or `npm run bench -- search --items 10000` for one.
const { values, positionals } = parseArgs({
  options: { items: { type: "string", default: "1000" } },
  allowPositionals: true,
});
const wanted = (name: string) => positionals.length === 0 || positionals.includes(name);
const print = (line: string) => void process.stdout.write(`${line}\n`);

if (wanted("separating-sets")) benchmarkSeparatingSets(print);
if (wanted("build")) await benchmarkBuild(Number(values.items), print);
if (wanted("images")) await benchmarkImages(print);
if (wanted("search")) await benchmarkSearchOf(Number(values.items), print);
