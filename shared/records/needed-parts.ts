import type { Level, Part } from "./variant.ts";

/** The parts that a level of completeness needs: by standing, by name, or by group. */
export const neededBy = ({ needs }: Level, parts: ReadonlyMap<string, Part>): Part[] =>
  [...parts.values()].filter(
    ({ id, standing, group }) =>
      needs.standing.includes(standing) ||
      needs.parts.includes(id) ||
      (group !== undefined && needs.groups.includes(group)),
  );
