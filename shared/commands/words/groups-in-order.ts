import { addUnder } from "../../lists/grouping.ts";
import type { Family } from "../../records/family.ts";
import { englishBench } from "../../words/en/bench.ts";

/** Parts by their group: the groups in the order of unpacking, those that the family does not name after them. */
export function groupsInOrder<Part extends { readonly group?: string | null | undefined }>(
  parts: Iterable<Part>,
  order: Iterable<string>,
): Part[][] {
  const groups = new Map<string | undefined, Part[]>([...order].map((group) => [group, []]));
  const ungrouped: Part[] = [];
  for (const part of parts) {
    if (part.group === null || part.group === undefined) {
      ungrouped.push(part);
      continue;
    }
    addUnder(groups, part.group, part);
  }
  return [...groups.values(), ungrouped].filter((group) => group.length > 0);
}

/** What a group of them is headed by. */
export function groupName(
  [part]: readonly { readonly group?: string | null | undefined }[],
  family: Pick<Family, "groups"> | undefined,
  say = englishBench,
): string {
  const id = part?.group;
  return id === null || id === undefined
    ? say.otherGroup
    : (family?.groups.get(id) ?? id.replaceAll("-", " "));
}
