import { reportAsText } from "../../../diagnostics/report.ts";
import { xmlText } from "../../../pages/data/xml.ts";
import type { BenchWords } from "../../../words/en/bench.ts";
import { benchWordsFor, wordsFor } from "../../../words/languages.ts";
import { beforeYouBegin, cautionsOf } from "../../words/cautions.ts";
import { groupName, groupsInOrder } from "../../words/groups-in-order.ts";
import type { BenchRecord, BenchReference } from "./bench-record.ts";
import { chosenOf, type FormFrame, field, filled, hidden, partCard, savingForm } from "./part-card.ts";
import { itemValue, linesOf, shownValue } from "./submitted-changes.ts";

export const benchAddress = "/__fittedcase/bench/";
export const benchItemAddress = (id: string): string => `${benchAddress}${encodeURIComponent(id)}/`;

type Raw = Readonly<Record<string, unknown>>;
const mapOf = (value: unknown): Raw => (typeof value === "object" && value !== null ? (value as Raw) : {});

/** What every page has around it. */
export interface BenchFrame {
  readonly collection: string;
  readonly language: string;
  readonly say: BenchWords;
}

export function benchFrame({ collection }: BenchReference): BenchFrame {
  const { language } = wordsFor(collection?.settings.language ?? "en");
  const say = benchWordsFor(language);
  return { collection: collection?.settings.title ?? say.title, language, say };
}

function page(title: string, { collection, language, say }: BenchFrame, body: string): string {
  return `<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<meta name="color-scheme" content="light dark">
<title>${xmlText(title)}</title>
<link rel="stylesheet" href="/__fittedcase/bench.css">
<script type="module" src="/__fittedcase/bench.js"></script>
</head>
<body class="page-bench" data-words="${xmlText(JSON.stringify(say.script))}">
<a class="skip" href="#text">${say.toText}</a>
<header class="running-head"><div class="running-line"><p class="book-title"><a href="/">${xmlText(collection)}</a></p><nav aria-label="${say.title}"><ul class="divisions"><li><a href="${benchAddress}">${say.all}</a></li></ul></nav></div></header>
<main id="text">
${body}
</main>
</body>
</html>
`;
}

/** How far one has come: parts of which the record says anything. */
const progress = ({ script }: BenchWords, examined: number, of: number): string =>
  filled(script.progress, { examined, of });

/** The list of outfits to choose from. */
export function benchIndex(reference: BenchReference, records: readonly BenchRecord[]): string {
  const frame = benchFrame(reference);
  const { say } = frame;
  const rows = records.map(({ file, data, problems }) => {
    const variant = reference.collection?.variants.get(shownValue(data.variant));
    const examined = Object.keys(mapOf(data.parts)).length;
    const state =
      problems.length > 0
        ? say.unreadable
        : variant
          ? progress(say, examined, variant.parts.size)
          : say.noReference;
    return `<li><a href="${benchItemAddress(file.id)}">${xmlText(shownValue(data.title) || file.id)}</a> <small>${xmlText(state)}</small></li>`;
  });
  const list =
    rows.length > 0
      ? `<ul class="outfits">${rows.join("")}</ul>`
      : `<p>${say.none("fittedcase new item ID --variant VARIANT")}</p>`;
  return page(say.title, frame, `<h1>${say.title}</h1><p class="lead">${say.choose}</p>${list}`);
}

/** What is said when something stands in the way; of problems the same as in the terminal, and in English. */
export const benchNotice = (
  frame: BenchFrame,
  title: string,
  said: string,
  back: string,
  isReport = false,
): string =>
  page(
    title,
    frame,
    `<h1>${xmlText(title)}</h1><section class="notice-panel" role="alert"><pre${isReport ? ' lang="en"' : ""}>${xmlText(said)}</pre></section><p><a class="button" href="${xmlText(back)}">${frame.say.loadAgain}</a></p>`,
  );

/** Where there is no script: asks before something recorded goes, with the whole form to be sent again. */
export const benchQuestion = (
  frame: BenchFrame,
  said: string,
  address: string,
  form: URLSearchParams,
  asks: string,
): string =>
  page(
    frame.say.askTitle,
    frame,
    `<h1>${frame.say.askTitle}</h1><p role="alert">${xmlText(said)}</p><form method="post" action="${xmlText(address)}">${[
      ...form,
    ]
      .filter(([name]) => name !== "confirmed")
      .map(([name, value]) => hidden(name, value))
      .join(
        "",
      )}${hidden("confirmed", asks)}<p class="asking"><button type="submit" class="button">${frame.say.script.takeOut}</button> <a class="button" href="${xmlText(address)}#part-${xmlText(form.get("part") ?? "")}">${frame.say.script.keep}</a></p></form>`,
  );

/** The page of one outfit: cautions, the case itself, what tells the variants apart, then every part. */
export function benchItem(
  reference: BenchReference,
  { file, data, problems }: BenchRecord,
  key: string,
  another: string | null,
): string {
  const { collection } = reference;
  const around = benchFrame(reference);
  const { say, language } = around;
  const all = [...reference.problems, ...problems];
  const variant = collection?.variants.get(shownValue(data.variant));
  if (!collection || problems.length > 0 || !variant)
    return benchNotice(
      around,
      shownValue(data.title) || file.id,
      reportAsText(all, reference.read.files.length),
      benchItemAddress(file.id),
      true,
    );
  const family = collection.families.get(variant.family);
  const [parts, seen] = [mapOf(data.parts), mapOf(data.features)];
  const of = (map: Raw, id: string) => (Object.hasOwn(map, id) ? map[id] : undefined);
  const words = wordsFor(language);
  const frame: FormFrame = { action: benchItemAddress(file.id), key, say, words };
  const set = shownValue(data.set) || undefined;

  const cautions = cautionsOf(collection);
  const features = [...(family?.features.values() ?? [])].sort((a, b) => a.effort - b.effort);
  const featureForms = features.map(
    ({ id, name, look, values }) =>
      `<article class="part" id="feature-${id}" data-name="${xmlText(name)}"><h3>${xmlText(name)}</h3>${look ? `<p class="look">${xmlText(look)}</p>` : ""}${savingForm(
        frame,
        of(seen, id),
        `data-feature="${id}"`,
        `${hidden("feature", id)}${chosenOf(
          "value",
          name,
          [
            ["", say.notLookedAt],
            ...[
              ...new Set([...values, ...(of(seen, id) === undefined ? [] : [shownValue(of(seen, id))])]),
            ].map((value) => [value, value] as const),
          ],
          shownValue(of(seen, id)),
        )}`,
      )}</article>`,
  );
  const groups = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? []).map((group) => {
    return `<section><h2>${xmlText(groupName(group, family, say))}</h2>${group.map((part) => partCard(part, of(parts, part.id), set, cautions, frame, another === part.id)).join("\n")}</section>`;
  });
  const examined = [...variant.parts.keys()].filter((id) => linesOf(of(parts, id)).length > 0).length;
  const itemTitle = shownValue(data.title);
  return page(
    say.titleOf(itemTitle),
    around,
    `<p class="trail"><a href="/items/${encodeURIComponent(file.id)}/">${say.itsPage}</a></p>
<h1>${xmlText(itemTitle)}</h1>
<p class="lead">${xmlText(say.lead(variant.name, file.file))}</p>
${beforeYouBegin(cautions, [...variant.parts.values()], say, "page")}
<section><h2>${say.theCase}</h2><article class="part" id="the-case" data-name="${say.theCase}">${savingForm(
      frame,
      itemValue(data),
      'data-fields="item"',
      `${field("set", say.set, shownValue(data.set))}${field("serial", variant.serials.length > 0 ? say.serial : say.serialIfAny, shownValue(data.serial))}${field("examined", say.examined, shownValue(data.examined))}`,
    )}</article></section>
${featureForms.length > 0 ? `<section><h2>${say.features}</h2>${featureForms.join("\n")}</section>` : ""}
${groups.join("\n")}
<div class="foot"><p class="unsaved" role="status" hidden></p><p class="tally" role="status" data-of="${variant.parts.size}">${progress(say, examined, variant.parts.size)}</p></div>`,
  );
}
