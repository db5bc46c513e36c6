import { renameSync, rmSync } from "node:fs";
import path from "node:path";
import { type EditedCollection, type Edits, idOf } from "./edited-collection.ts";

/** Edits of families and variants. */
export function referenceEdits(edited: EditedCollection): Edits {
  const { at, read, write, replace, random, step, items, variant, variants, family, namesIn } = edited;
  const familyFile = () => `schemas/reference/${family()}/family.yaml`;
  const ofVariant = (id: string) => new RegExp(`^variant: ${id}$`, "m");
  /** Items and sightings follow a variant to its new name. */
  const follow = (id: string, to: string) => {
    for (const file of items()) replace(file, ofVariant(id), `variant: ${to}`);
    for (const log of namesIn("content/sightings"))
      replace(`content/sightings/${log}`, new RegExp(`(^|[, ])${id}(?=[,}\\r\\n])`, "gm"), `$1${to}`);
  };
  const rename = (file: string, id: string) => {
    renameSync(at(file), at(`${path.posix.dirname(file)}/${id}.yaml`));
    replace(`${path.posix.dirname(file)}/${id}.yaml`, /^id: .*$/m, `id: ${id}`);
  };
  return {
    "a weight": () => replace(variant(), /weight: \d+/, `weight: ${1 + random.below(20)}`),
    "a standing": () =>
      replace(
        variant(),
        /standing: \w+/,
        `standing: ${random.pick(["core", "issued", "consumable", "optional"])}`,
      ),
    "a quantity": () => replace(variant(), /quantity: \d+/, `quantity: ${2 + random.below(4)}`),
    "the name of a variant": () => replace(variant(), /^name: .*$/m, `name: Pattern of step ${step}`),
    "when a variant was issued": () => {
      const year = 1850 + random.below(90);
      replace(variant(), /^issued: .*$/m, `issued: ${year}/${year + random.below(9)}`);
    },
    "how many were made": () =>
      replace(variant(), /^made: .*$/m, `made: { count: ${500 + random.below(900)} }`),
    "how many were made, unknown": () => replace(variant(), /^made: .*\n/m, ""),
    "a feature of a variant": () =>
      replace(
        variant(),
        /feature-(\d+): \w+$/m,
        `feature-$1: ${random.pick(["plain", "ribbed", "pierced"])}`,
      ),
    "a level": () => replace(variant(), /name: Complete as issued/, `name: Complete in step ${step}`),
    "a part added": () => replace(variant(), /^parts:$/m, `parts:\n  new-${step}: { name: New ${step} }`),
    "a part taken away": () => replace(variant(), /^ {2}part-\d+: .*\n/m, ""),
    "a variant that extends another": () => {
      const [file, base] = [variant(), variant()];
      if (!/^extends:/m.test(read(file)) && file !== base)
        replace(file, /^name: /m, `extends: ${idOf(base)}\nname: `);
    },
    "a variant that extends nothing": () => {
      const file = variants().find((each) => /^extends:/m.test(read(each)));
      if (file) replace(file, /^extends: .*\n/m, "");
    },
    "a variant added": () => {
      const file = variant();
      const text = read(file).replace(/^id: .*$/m, `id: variant-new-${step}`);
      write(`${path.posix.dirname(file)}/variant-new-${step}.yaml`, text);
    },
    "a variant renamed": () => {
      const file = variant();
      const id = `variant-called-${step}`;
      rename(file, id);
      follow(idOf(file), id);
    },
    "a variant renamed, with its former address": () => {
      const file = variant();
      const id = `variant-moved-${step}`;
      rename(file, id);
      follow(idOf(file), id);
      const moved = `${path.posix.dirname(file)}/${id}.yaml`;
      write(moved, `formerly: [${idOf(file)}]\n${read(moved).replace(/^formerly: .*\n/m, "")}`);
    },
    "a variant renamed, which nothing follows": () => rename(variant(), `variant-alone-${step}`),
    "a variant in another family": () => {
      const file = variant();
      const to = `schemas/reference/${family()}/${path.basename(file)}`;
      renameSync(at(file), at(to));
    },
    "a variant deleted": () => {
      const unused = variants().filter(
        (file) => !items().some((item) => ofVariant(idOf(file)).test(read(item))),
      );
      rmSync(at(unused[0] ?? variant()));
    },
    "two variants exchanged": () => {
      const [one, other] = [variant(), variant()];
      const text = read(one);
      write(one, read(other).replace(/^id: .*$/m, `id: ${idOf(one)}`));
      write(other, text.replace(/^id: .*$/m, `id: ${idOf(other)}`));
    },
    "the maker of a family": () => replace(familyFile(), /^maker: .*$/m, `maker: Maker ${step}`),
    "where to look": () => replace(familyFile(), /look: "[^"]*"/, `look: "Below the lid, in step ${step}."`),
    "how hard it is to look": () => replace(familyFile(), /effort: \d/, `effort: ${1 + random.below(3)}`),
    "a family renamed": () =>
      renameSync(at(`schemas/reference/${family()}`), at(`schemas/reference/family-called-${step}`)),
    "a family renamed, with its former address": () => {
      const former = family();
      const file = `schemas/reference/family-moved-${step}/family.yaml`;
      renameSync(at(`schemas/reference/${former}`), at(path.posix.dirname(file)));
      write(file, `formerly: [${former}]\n${read(file).replace(/^formerly: .*\n/m, "")}`);
    },
    "a family added": () => {
      const from = family();
      const variants = namesIn(`schemas/reference/${from}`).filter((name) => name !== "family.yaml");
      // Each of its variants may have been deleted.
      if (variants.length === 0) return;
      const variantOf = random.pick(variants);
      write(
        `schemas/reference/family-new-${step}/family.yaml`,
        read(`schemas/reference/${from}/family.yaml`),
      );
      write(
        `schemas/reference/family-new-${step}/variant-apart-${step}.yaml`,
        read(`schemas/reference/${from}/${variantOf}`).replace(/^id: .*$/m, `id: variant-apart-${step}`),
      );
    },
    "a family deleted": () => {
      const added = namesIn("schemas/reference").filter((name) => name.startsWith("family-new"));
      if (added[0]) rmSync(at(`schemas/reference/${added[0]}`), { recursive: true });
    },
  };
}
