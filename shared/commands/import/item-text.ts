import { yamlLine } from "../writing/yaml-line.ts";

/** The file of an item: its front matter, one line a part, and the description below it. */
export function itemText(data: Readonly<Record<string, unknown>>, body: string): string {
  const lines = Object.entries(data).flatMap(([field, value]) => {
    if (Array.isArray(value)) {
      return value.length === 0
        ? [`${field}: []`]
        : [`${field}:`, ...value.map((entry) => `  - ${yamlLine(entry)}`)];
    }
    if (field === "parts" || field === "features") {
      const entries = Object.entries(value as object);
      return [`${field}:`, ...entries.map(([id, entry]) => `  ${yamlLine(id)}: ${yamlLine(entry)}`)];
    }
    return [`${field}: ${yamlLine(value)}`];
  });
  return ["---", ...lines, "---", ...(body === "" ? [] : ["", body]), ""].join("\n");
}
