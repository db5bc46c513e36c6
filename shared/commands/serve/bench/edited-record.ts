import { isDeepStrictEqual } from "node:util";
import { frontMatterIn, frontMatterOf } from "../../../source/front-matter.ts";
import { readYaml } from "../../../source/yaml.ts";
import { type Change, editedYaml } from "./edited-yaml.ts";

type Raw = Readonly<Record<string, unknown>>;

const isRaw = (value: unknown): value is Raw =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const dataOf = (block: string): unknown =>
  readYaml({ file: "", text: block, start: 0, end: block.length }).data ?? {};

/** What a record says once a value is put at a path, or taken away from it. */
function changed(data: unknown, path: Change["path"], value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(data)) {
    const next = [...data];
    const entry = changed(data[Number(step)], rest, value);
    next.splice(Number(step), 1, ...(entry === undefined ? [] : [entry]));
    return next;
  }
  const own: Record<string, unknown> = isRaw(data) ? { ...data } : {};
  const key = String(step);
  const next = changed(Object.hasOwn(own, key) ? own[key] : undefined, rest, value);
  if (next === undefined) delete own[key];
  else own[key] = next;
  return own;
}

/** A mapping of nothing and no mapping say the same. */
const meaning = (data: unknown): unknown =>
  isRaw(data)
    ? Object.fromEntries(
        Object.entries(data).filter(
          ([key, value]) =>
            !(
              (key === "parts" || key === "features") &&
              (value === null || (isRaw(value) && Object.keys(value).length === 0))
            ),
        ),
      )
    : (data ?? {});

/**
 * A Markdown record with changes made in its front matter, and every other byte as it was. Null where that cannot be
 * done so: the result is read again, and must say what was meant and nothing else.
 */
export function editedRecord(text: string, changes: readonly Change[]): string | null {
  const stretch = frontMatterIn(text);
  if (!stretch) return null;
  let block = frontMatterOf(text);
  let meant = dataOf(block);
  for (const change of changes) {
    const edited = editedYaml(block, change);
    if (edited === null) return null;
    block = edited;
    meant = changed(meant, change.path, change.value);
  }
  if (/^---/m.test(block) || !isDeepStrictEqual(meaning(dataOf(block)), meaning(meant))) return null;
  return text.slice(0, stretch.start) + block + text.slice(stretch.end);
}
