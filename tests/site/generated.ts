import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { generateCollection } from "../benchmarks/generate-collection.ts";
import { writeFiles } from "../collections/collection.ts";
import { repository } from "../commands/run.ts";
import { plain, quartersPicture } from "../images/quarters.ts";

/** Two families, with a scale of their own. */
export function generated(): string {
  const root = mkdtempSync(path.join(tmpdir(), "fittedcase-edits-"));
  generateCollection({ folder: root, items: 30, itemsInVariant: 3, seed: 5 });
  const scale = readFileSync(path.join(repository, "schemas/scales/universal.yaml"), "utf8");
  writeFiles(root, { "schemas/scales/own.yaml": scale.replace("id: universal", "id: own") });
  return root;
}

/** Small ones, which differ. */
export const pictures = (): Promise<Buffer[]> =>
  Promise.all(
    [plain, { ...plain, topLeft: [9, 9, 9] as const }].map((quarters) =>
      quartersPicture(quarters, 60, 40).png().toBuffer(),
    ),
  );
