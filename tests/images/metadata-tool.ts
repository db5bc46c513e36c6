import { ExifTool } from "exiftool-vendored";
import { afterAll } from "vitest";

/** ExifTool, the reference reader and writer of metadata: nothing of it is shared with what is tested. */
export function metadataTool(): ExifTool {
  const tool = new ExifTool({ maxProcs: 1, taskTimeoutMillis: 30_000 });
  afterAll(() => tool.end());
  return tool;
}
