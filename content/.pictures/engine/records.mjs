import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const need = createRequire(import.meta.url);
const yaml = need('js-yaml');
const matter = need('gray-matter');

export const readYaml = (file) => yaml.load(readFileSync(file, 'utf8'), { schema: yaml.CORE_SCHEMA });

/** The variants of a family by id, each with what it takes from the variant that it extends. */
export function readVariants(folder) {
  const raw = new Map(
    readdirSync(folder)
      .filter((f) => f.endsWith('.yaml') && f !== 'family.yaml')
      .map((f) => readYaml(join(folder, f)))
      .map((x) => [x.id, x]),
  );
  const whole = (id) => {
    const own = raw.get(id);
    if (!own.extends) return own;
    const base = whole(own.extends);
    const drop = (o) => Object.fromEntries(Object.entries(o).filter(([, x]) => x !== null));
    return { ...base, ...own, parts: drop({ ...base.parts, ...own.parts }), features: drop({ ...base.features, ...own.features }) };
  };
  return new Map([...raw.keys()].map((id) => [id, whole(id)]));
}

/** The items of a collection: id and front matter. */
export function readItems(folder) {
  return readdirSync(folder)
    .filter((id) => existsSync(join(folder, id, 'index.md')))
    .sort()
    .map((id) => ({ id, file: join(folder, id, 'index.md'), ...readFrontMatter(join(folder, id, 'index.md')) }));
}
function readFrontMatter(file) {
  const { data } = matter(readFileSync(file, 'utf8'), { engines: { yaml: (s) => yaml.load(s, { schema: yaml.CORE_SCHEMA }) } });
  return data;
}

/** A part's record as one entry a unit, in the order of the lines; what no line speaks for is 'unexamined'. */
export function unitsOf(record, quantity) {
  if (record === undefined) return Array.from({ length: quantity }, (_, index) => ({ state: 'unexamined', index }));
  const lines = (Array.isArray(record) ? record : [record]).map((x) => (typeof x === 'string' ? { state: x } : x));
  const units = lines.flatMap((line) => Array.from({ length: line.quantity ?? (lines.length === 1 ? quantity : 1) }, () => line));
  const rest = lines.find((x) => x.rest)?.rest ?? 'unexamined';
  while (units.length < quantity) units.push({ state: rest });
  return units.map((unit, index) => ({ ...unit, index, surplus: index >= quantity }));
}
