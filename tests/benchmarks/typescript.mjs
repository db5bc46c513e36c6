// `node --import ./tests/benchmarks/typescript.mjs FILE.ts`: runs TypeScript as it stands, types taken off.
import { readFile } from "node:fs/promises";
import { register } from "node:module";
import { isMainThread } from "node:worker_threads";
import ts from "typescript";

// Node loads this file a second time, on the thread of the hooks.
if (isMainThread) register(import.meta.url);

export async function load(url, context, next) {
  if (!url.startsWith("file:") || !url.endsWith(".ts")) return next(url, context);
  const { outputText } = ts.transpileModule(await readFile(new URL(url), "utf8"), {
    compilerOptions: {
      module: ts.ModuleKind.ESNext,
      target: ts.ScriptTarget.ES2023,
      verbatimModuleSyntax: true,
    },
  });
  return { format: "module", source: outputText, shortCircuit: true };
}
