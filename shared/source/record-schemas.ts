import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { packageFolder } from "./package-folder.ts";

export type JsonSchema = { readonly $id: string; readonly [keyword: string]: unknown };

/** The JSON Schemas that ship with the tool, by the name of the record they describe. */
export function readRecordSchemas(): ReadonlyMap<string, JsonSchema> {
  const folder = path.join(packageFolder, "schemas/records");
  return new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith(".schema.json"))
      .sort()
      .map((name) => [
        name.replace(".schema.json", ""),
        JSON.parse(readFileSync(path.join(folder, name), "utf8")) as JsonSchema,
      ]),
  );
}
