import { parseArgs } from "node:util";
import { suggestion } from "../../diagnostics/nearest-name.ts";
import { noMedia } from "../../images/media.ts";
import { indexCollection } from "../../pages/collection-index.ts";
import { itemData } from "../../pages/data/item-data.ts";
import { rarityData } from "../../pages/data/variant-data.ts";
import { publishCollection } from "../../publication/publish-collection.ts";
import { wordsFor } from "../../words/languages.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { soundCollection } from "../collection/sound-collection.ts";
import { type Command, UsageError } from "../command.ts";
import { paintFor } from "../terminal/paint.ts";
import { groupsInOrder } from "../words/groups-in-order.ts";
import { itemReport } from "./item-report.ts";

export const explain: Command = {
  usage: "fittedcase explain ITEM [--root DIR] [--json]",
  help: [
    "Shows what is known of one item: whether it is what it is held to be, how much of it is there, whether its parts",
    "belong to the time of issue, how rare one as complete is, and who has held it. Each figure comes with its method,",
    "inputs, sources and caveats. Where the evidence is not enough for a figure, the reason is given instead.",
    "This is the owner's view: nothing is masked.",
    "",
    "  --root DIR   the collection's folder (default: the current one)",
    "  --json       the same as JSON, with every digit",
    "",
    "Example: fittedcase explain brennock-school-outfit",
    "Exit codes: 0 done; 1 the content has errors; 2 there is no such item, or the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, err, colour, columns }) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { root: { type: "string" }, json: { type: "boolean", default: false } },
    });
    const [id, ...more] = positionals;
    if (id === undefined || more.length > 0) {
      throw new UsageError(`Found ${positionals.length} ids of items; expected one.`);
    }
    const sound = soundCollection(rootFolder(cwd, values.root), err);
    if (!sound) return 1;
    const { collection, assessments } = sound;
    const words = wordsFor("en");
    const published = publishCollection(collection, assessments, "private", words);
    const item = published.items.find((each) => each.id === id || each.formerly.includes(id));
    const variant = published.variants.find((each) => each.id === item?.variant.id);
    if (!item || !variant) {
      const hint = suggestion(id, collection.items.keys()) ?? "";
      throw new UsageError(`Found "${id}"; expected the id of an item. ${hint}`.trimEnd());
    }
    if (values.json) {
      const data = JSON.parse(
        itemData(item, indexCollection(published, words, noMedia, new Map())).text,
      ) as Record<string, unknown>;
      out(JSON.stringify({ ...data, variantRarity: rarityData(variant) }, null, 2));
      return 0;
    }
    const family = published.families.find((each) => each.id === item.family.id);
    const groups = collection.families.get(item.family.id)?.groups.keys() ?? [];
    const { scale } = published;
    const report = itemReport(
      {
        item,
        variant,
        family,
        groups: groupsInOrder(item.parts, groups),
        classWords: (each) => scale?.classes.find((known) => known.id === each)?.words ?? each,
        scaleName: scale?.name ?? null,
      },
      {
        words,
        paint: paintFor(colour),
        width: Math.max(60, Math.min(columns ?? 100, 100)),
        titleOf: (source) => collection.sources.get(source)?.title ?? source,
      },
    );
    out(report);
    return 0;
  },
};
