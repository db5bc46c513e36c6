import { createHash } from "node:crypto";
import type { OutputFile } from "../pages/data/output-file.ts";

/** Of each file, by its address: the first twelve hexadecimal digits of the SHA-256 (FIPS 180-4) of its text. */
export const versionsOf = (files: readonly OutputFile[]): ReadonlyMap<string, string> =>
  new Map(
    files.map(({ address, text }) => [address, createHash("sha256").update(text).digest("hex").slice(0, 12)]),
  );
