import { stringify } from "yaml";

/** A value as YAML on one line, quoted where it would be read as something else. */
export const yamlLine = (value: unknown): string =>
  stringify(value, { collectionStyle: "flow", lineWidth: 0, version: "1.2" }).trimEnd();
