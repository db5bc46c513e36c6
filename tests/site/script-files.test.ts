import path from "node:path";
import { expect, it } from "vitest";
import { readAssets } from "../../shared/site/assets/assets.ts";
import { smallCollection, writeCollection } from "../collections/collection.ts";

const specifier = /^(?:import|export)\s*(?:[\w$*\s{},]*\bfrom\s*)?["']([^"']+)["']/gm;

// A browser finds a module by its address: a package's bare name, which Node.js finds, is nothing to it.
it("the scripts of a page import files of the site, and no package by its name", () => {
  const root = writeCollection(smallCollection("parts: { p: {} }\n"));
  for (const language of ["en", "de"]) {
    const scripts = readAssets(root, {}, language).files.filter(({ address }) => address.endsWith(".js"));
    const known = new Set(scripts.map(({ address }) => address));
    const imported = scripts.flatMap(({ address, text }) =>
      [...text.matchAll(specifier)].map(([, name = ""]) => ({ address, name })),
    );
    for (const { address, name } of imported) {
      expect(name, address).toMatch(/^\.\//);
      expect(known, address).toContain(path.posix.join("/assets", name));
    }
    expect(imported.length).toBeGreaterThan(20);
  }
});
