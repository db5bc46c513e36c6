import { createHash } from "node:crypto";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { checkCollection } from "../../shared/site/checks/check-collection.ts";
import { siteFiles } from "../collections/site-files.ts";
import { generateCollection } from "./generate-collection.ts";

const generated = (items: number, seed: number) => {
  const folder = mkdtempSync(path.join(tmpdir(), "fittedcase-generated-"));
  const said = generateCollection({ folder, items, seed });
  const digest = createHash("sha256");
  for (const [file, bytes] of siteFiles(folder)) digest.update(file).update(bytes);
  return { folder, said, digest: digest.digest("hex") };
};

describe("a generated collection", () => {
  it("is the same for the same seed, and another for another", () => {
    const first = generated(50, 1);
    expect(generated(50, 1).digest).toBe(first.digest);
    expect(generated(50, 2).digest).not.toBe(first.digest);
  });

  it("has no error, and the size that the benchmark is to have", () => {
    const { folder, said } = generated(100, 1);
    const { sound, diagnostics } = checkCollection(folder);
    expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
    const { items, variants, families, sightings } = sound?.collection ?? {};
    expect(items?.size).toBe(100);
    expect(sightings?.length).toBe(1000);
    expect(said.sightings).toBe(1000);
    for (const { parts } of variants?.values() ?? []) expect(parts.size).toBe(30);
    for (const { features } of families?.values() ?? []) expect(features.size).toBe(10);
    for (const { description, provenance } of items?.values() ?? []) {
      expect(description.trim().split(/\s+/)).toHaveLength(150);
      expect(provenance.length).toBeGreaterThan(1);
    }
  });
});
