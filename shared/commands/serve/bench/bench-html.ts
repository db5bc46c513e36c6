import { reportAsText } from "../../../diagnostics/report.ts";
import { xmlText } from "../../../pages/data/xml.ts";
import { beforeYouBegin, cautionsOf } from "../../words/cautions.ts";
import { groupName, groupsInOrder } from "../../words/groups-in-order.ts";
import type { BenchRecord, BenchReference } from "./bench-record.ts";
import { chosenOf, type FormFrame, field, hidden, partCard, savingForm } from "./part-card.ts";
import { itemValue, linesOf, shownValue } from "./submitted-changes.ts";

export const benchAddress = "/__fittedcase/bench/";
export const benchItemAddress = (id: string): string => `${benchAddress}${encodeURIComponent(id)}/`;

const [takeOut, keep] = ["Take it out", "Keep it"];

type Raw = Readonly<Record<string, unknown>>;
const mapOf = (value: unknown): Raw => (typeof value === "object" && value !== null ? (value as Raw) : {});

function page(title: string, collection: string, body: string): string {
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<meta name="color-scheme" content="light dark">
<title>${xmlText(title)}</title>
<link rel="stylesheet" href="/__fittedcase/bench.css">
<script type="module" src="/__fittedcase/bench.js"></script>
</head>
<body class="page-bench">
<a class="skip" href="#text">To the text</a>
<header class="running-head"><div class="running-line"><p class="book-title"><a href="/">${xmlText(collection)}</a></p><nav aria-label="At the bench"><ul class="divisions"><li><a href="${benchAddress}">All outfits at the bench</a></li></ul></nav></div></header>
<main id="text">
${body}
</main>
</body>
</html>
`;
}

/** How far one has come: parts of which the record says anything. */
const progress = (examined: number, of: number): string => `${examined} of ${of} parts examined`;

/** The list of outfits to choose from. */
export function benchIndex(reference: BenchReference, records: readonly BenchRecord[]): string {
  const title = reference.collection?.settings.title ?? "At the bench";
  const rows = records.map(({ file, data, problems }) => {
    const variant = reference.collection?.variants.get(shownValue(data.variant));
    const examined = Object.keys(mapOf(data.parts)).length;
    const state =
      problems.length > 0
        ? "the file cannot be read"
        : variant
          ? progress(examined, variant.parts.size)
          : "its variant has no reference";
    return `<li><a href="${benchItemAddress(file.id)}">${xmlText(shownValue(data.title) || file.id)}</a> <small>${xmlText(state)}</small></li>`;
  });
  const list =
    rows.length > 0
      ? `<ul class="outfits">${rows.join("")}</ul>`
      : "<p>There is no item yet. Start one with: fittedcase new item ID --variant VARIANT</p>";
  return page(
    "At the bench",
    title,
    `<h1>At the bench</h1><p class="lead">Choose the case in front of you. What you tick is written into its file at once.</p>${list}`,
  );
}

/** What is said when something stands in the way: the same as in the terminal. */
export const benchNotice = (collection: string, title: string, said: string, back: string): string =>
  page(
    title,
    collection,
    `<h1>${xmlText(title)}</h1><section class="notice-panel" role="alert"><pre>${xmlText(said)}</pre></section><p><a class="button" href="${xmlText(back)}">Load the page again</a></p>`,
  );

/** Where there is no script: asks before something recorded goes, with the whole form to be sent again. */
export const benchQuestion = (
  collection: string,
  said: string,
  address: string,
  form: URLSearchParams,
  asks: string,
): string =>
  page(
    "Take it out of the record?",
    collection,
    `<h1>Take it out of the record?</h1><p role="alert">${xmlText(said)}</p><form method="post" action="${xmlText(address)}">${[
      ...form,
    ]
      .filter(([name]) => name !== "confirmed")
      .map(([name, value]) => hidden(name, value))
      .join(
        "",
      )}${hidden("confirmed", asks)}<p class="asking"><button type="submit" class="button">${takeOut}</button> <a class="button" href="${xmlText(address)}#part-${xmlText(form.get("part") ?? "")}">${keep}</a></p></form>`,
  );

/** The page of one outfit: cautions, the case itself, what tells the variants apart, then every part. */
export function benchItem(
  reference: BenchReference,
  { file, data, problems }: BenchRecord,
  key: string,
  another: string | null,
): string {
  const { collection } = reference;
  const title = collection?.settings.title ?? "At the bench";
  const all = [...reference.problems, ...problems];
  const variant = collection?.variants.get(shownValue(data.variant));
  if (!collection || problems.length > 0 || !variant)
    return benchNotice(
      title,
      shownValue(data.title) || file.id,
      reportAsText(all, reference.read.files.length),
      benchItemAddress(file.id),
    );
  const family = collection.families.get(variant.family);
  const [parts, seen] = [mapOf(data.parts), mapOf(data.features)];
  const of = (map: Raw, id: string) => (Object.hasOwn(map, id) ? map[id] : undefined);
  const frame: FormFrame = { action: benchItemAddress(file.id), key };
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
            ["", "Not looked at"],
            ...[
              ...new Set([...values, ...(of(seen, id) === undefined ? [] : [shownValue(of(seen, id))])]),
            ].map((value) => [value, value] as const),
          ],
          shownValue(of(seen, id)),
        )}`,
      )}</article>`,
  );
  const groups = groupsInOrder(variant.parts.values(), family?.groups.keys() ?? []).map((group) => {
    return `<section><h2>${xmlText(groupName(group, family))}</h2>${group.map((part) => partCard(part, of(parts, part.id), set, cautions, frame, another === part.id)).join("\n")}</section>`;
  });
  const examined = [...variant.parts.keys()].filter((id) => linesOf(of(parts, id)).length > 0).length;
  const itemTitle = shownValue(data.title);
  return page(
    `${itemTitle}: at the bench`,
    title,
    `<p class="trail"><a href="/items/${encodeURIComponent(file.id)}/">Its page in the preview</a></p>
<h1>${xmlText(itemTitle)}</h1>
<p class="lead">${xmlText(variant.name)}. What you tick is written into ${xmlText(file.file)} at once. What you leave at ‘Not examined’ stays out of the record.</p>
${beforeYouBegin(cautions, [...variant.parts.values()], "this page")}
<section><h2>The case</h2><article class="part" id="the-case" data-name="The case">${savingForm(
      frame,
      itemValue(data),
      'data-fields="item"',
      `${field("set", "Set no.", shownValue(data.set))}${field("serial", variant.serials.length > 0 ? "Serial" : "Serial, if any", shownValue(data.serial))}${field("examined", "Examined on (such as 2026-03-14)", shownValue(data.examined))}`,
    )}</article></section>
${featureForms.length > 0 ? `<section><h2>What tells the variants apart</h2>${featureForms.join("\n")}</section>` : ""}
${groups.join("\n")}
<div class="foot"><p class="unsaved" role="status" hidden></p><p class="tally" role="status" data-of="${variant.parts.size}">${progress(examined, variant.parts.size)}</p></div>`,
  );
}
