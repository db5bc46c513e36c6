import type { Path } from "../source/document.ts";

/** The names and indexes of a JSON Pointer (RFC 6901). */
export const pathOf = (pointer: string): Path =>
  pointer
    .split("/")
    .slice(1)
    .map((segment) => segment.replaceAll("~1", "/").replaceAll("~0", "~"));
