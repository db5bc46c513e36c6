import path from "node:path";
import { parseArgs } from "node:util";
import { isError } from "../../diagnostics/diagnostic.ts";
import { nearestSuggestion, type Renamed, suggestion } from "../../diagnostics/nearest-name.ts";
import { idSuggestion, wellFormedId } from "../../diagnostics/plain-words.ts";
import { reportAsText } from "../../diagnostics/report.ts";
import type { CollectionFile } from "../../source/collection-files.ts";
import { type KnownCollection, knownCollection } from "../collection/known-collection.ts";
import { recordProblems } from "../collection/record-problems.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, UsageError } from "../command.ts";
import { today } from "../today.ts";
import { cautionsOf } from "../words/cautions.ts";
import { writeNewFile } from "../writing/write-new-file.ts";
import { articleScaffold } from "./article-scaffold.ts";
import { familyScaffold } from "./family-scaffold.ts";
import { itemScaffold } from "./item-scaffold.ts";
import { variantFromItem, variantFromVariant, variantScaffold } from "./variant-scaffold.ts";

const options = {
  root: { type: "string" },
  title: { type: "string" },
  name: { type: "string" },
  maker: { type: "string" },
  variant: { type: "string" },
  serial: { type: "string" },
  set: { type: "string" },
  family: { type: "string" },
  from: { type: "string" },
  "from-item": { type: "string" },
} as const;

type Flag = Exclude<keyof typeof options, "root">;
type Flags = Partial<Record<keyof typeof options, string>>;

interface Scaffold extends CollectionFile {
  readonly text: string;
  /** What to do with it, in a sentence. */
  readonly next: string;
}

interface Kind {
  readonly flags: readonly Flag[];
  readonly make: (id: string, flags: Flags, known: KnownCollection, today: string) => Scaffold;
}

/** The record of that id, or a usage error that names the nearest. */
function known<Value extends Renamed>(records: ReadonlyMap<string, Value>, id: string, what: string): Value {
  const record = records.get(id);
  if (record !== undefined) return record;
  throw new UsageError(
    `Found "${id}"; expected the id of ${what}. ${suggestion(id, records.values()) ?? ""}`.trimEnd(),
  );
}

function needed(value: string | undefined, flag: string, records: ReadonlyMap<string, unknown>): string {
  if (value !== undefined) return value;
  const ids = [...records.keys()];
  const known_ =
    ids.length === 0 ? " There is none yet." : ids.length > 12 ? "" : ` Known: ${ids.join(", ")}.`;
  const apart =
    flag === "--variant" && ids.length > 1
      ? " If you do not know which it is, fittedcase checklist FAMILY makes a sheet that tells its variants apart."
      : "";
  throw new UsageError(`Found no ${flag}; expected one.${known_}${apart}`);
}

const titleFrom = (id: string) => `${id.charAt(0).toUpperCase()}${id.slice(1)}`.replaceAll("-", " ");

const kinds: Readonly<Record<string, Kind>> = {
  item: {
    flags: ["variant", "title", "serial", "set"],
    make(id, flags, { collection, read }, today) {
      const variant = known(
        collection.variants,
        needed(flags.variant, "--variant", collection.variants),
        "a variant",
      );
      const other = read.files.find((file) => file.kind === "item" && file.id === id);
      if (other) throw new UsageError(`Found "${other.file}", which already exists; it was left as it is.`);
      const title = flags.title ?? `${variant.name}, ${titleFrom(id)}`;
      const family = collection.families.get(variant.family);
      const { serial, set } = flags;
      return {
        kind: "item",
        id,
        file: `content/items/${id}/index.md`,
        text: itemScaffold({ title, serial, set, today }, variant, family, cautionsOf(collection)),
        next: "Open it beside the case, tick what you see, and run: fittedcase check",
      };
    },
  },
  variant: {
    flags: ["family", "name", "from", "from-item"],
    make(id, flags, { collection, read }) {
      if (flags.from !== undefined && flags["from-item"] !== undefined) {
        throw new UsageError("Found both --from and --from-item; expected one of the two.");
      }
      const item =
        flags["from-item"] === undefined ? undefined : known(collection.items, flags["from-item"], "an item");
      const base = item
        ? known(collection.variants, item.variant, "a variant")
        : flags.from === undefined
          ? undefined
          : known(collection.variants, flags.from, "a variant");
      const familyId = flags.family ?? base?.family ?? needed(undefined, "--family", collection.families);
      const family = known(collection.families, familyId, "a family");
      const other = read.files.find((file) => file.kind === "variant" && file.id === id);
      if (other) throw new UsageError(`Found "${other.file}", which already exists; it was left as it is.`);
      const name = flags.name ?? titleFrom(id);
      return {
        kind: "variant",
        id,
        file: `schemas/reference/${familyId}/${id}.yaml`,
        text:
          item && base
            ? variantFromItem(id, name, item, base, family)
            : base
              ? variantFromVariant(id, name, base, family)
              : variantScaffold(id, name, family),
        next: [
          `Fill it in, then start an item of it with: fittedcase new item ID --variant ${id}`,
          ...(item || ![...collection.variants.values()].some((each) => each.family === familyId)
            ? []
            : [
                "Until it has features or serials of its own, they cannot tell it from the others of its family: an outfit",
                "that was confirmed as one of those is then only consistent with it.",
              ]),
        ].join("\n"),
      };
    },
  },
  family: {
    flags: ["name", "maker"],
    make: (id, flags) => ({
      kind: "family",
      id,
      file: `schemas/reference/${id}/family.yaml`,
      text: familyScaffold(id, flags.name ?? titleFrom(id), flags.maker),
      next: `Name its groups and features, then start a variant with: fittedcase new variant ID --family ${id}`,
    }),
  },
  article: {
    flags: ["title"],
    make(id, flags, { collection }, today) {
      // The example is of the variant that most is known of: a drawing needs something to draw.
      const seen = (variant: string) => collection.sightings.filter((row) => row.variant === variant).length;
      const [best] = [...collection.variants.values()].sort((one, other) => seen(other.id) - seen(one.id));
      const [family, variant] = [best?.family, best?.id];
      const [source] = collection.sources.keys();
      return {
        kind: "article",
        id,
        file: `content/articles/${id}.md`,
        text: articleScaffold(flags.title ?? titleFrom(id), today, { family, variant, source }),
        next: "Write below the second line of hyphens.",
      };
    },
  },
};

function todayAsWritten(): string {
  const { year, month, day } = today();
  return [year, month, day].map((number) => String(number).padStart(2, "0")).join("-");
}

export const newRecord: Command = {
  usage: "fittedcase new item|variant|family|article ID [flags] [--root DIR]",
  help: [
    "Writes the file of a new record. Everything that the record can say is in it as comments, for you to use. The file",
    "passes check as it is. An existing file is never overwritten.",
    "",
    "  new item ID --variant V [--title T] [--serial S] [--set N]",
    "      every part of the variant to tick, in the order of unpacking, with cautions and what to look for",
    "  new variant ID --family F [--name N]",
    "  new variant ID --from VARIANT      a variant that takes over another, for you to say where it differs",
    "  new variant ID --from-item ITEM    a variant started from an item that does not fit the one it is held to be",
    "  new family ID [--name N] [--maker M]",
    "  new article ID [--title T]",
    "  --root DIR   the collection's folder (default: the current one)",
    "",
    "An id is part of an address: small letters, digits and single hyphens.",
    "Example: fittedcase new item attic-case --variant first-pattern --set 118",
    "Exit codes: 0 done; 1 errors in the content stand in the way; 2 the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options });
    const [word, id, ...more] = positionals;
    if (word === undefined)
      throw new UsageError(`Found nothing to make; expected ${Object.keys(kinds).join(", ")}.`);
    const kind = Object.hasOwn(kinds, word) ? kinds[word] : undefined;
    if (!kind) {
      const hint = nearestSuggestion(word, Object.keys(kinds)) ?? "";
      throw new UsageError(`Found "${word}"; expected ${Object.keys(kinds).join(", ")}. ${hint}`.trimEnd());
    }
    if (id === undefined || more.length > 0)
      throw new UsageError(`Found ${positionals.length - 1} ids; expected one.`);
    const stray = Object.keys(values).find((flag) => flag !== "root" && !kind.flags.includes(flag as Flag));
    if (stray) throw new UsageError(`Found --${stray}, which is not for a new ${word}.`);
    if (!wellFormedId.test(id)) {
      const hint = idSuggestion(id) ?? "";
      throw new UsageError(
        `Found "${id}"; expected small letters, digits and single hyphens. ${hint}`.trimEnd(),
      );
    }
    const root = rootFolder(cwd, values.root);
    const collection = knownCollection(root, err);
    if (!collection) return 1;
    const { text, next, ...record } = kind.make(id, values, collection, todayAsWritten());
    const problems = recordProblems(collection.read, record, text).filter(isError);
    if (problems.length > 0) {
      err(`${reportAsText(problems, 1)}\nNothing was written.`);
      return 2;
    }
    writeNewFile(root, record.file, text);
    out(`Wrote ${path.relative(cwd, path.join(root, record.file)) || record.file}.\n${next}`);
    return 0;
  },
};
