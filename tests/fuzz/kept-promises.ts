import type { Assessments } from "../../shared/assessments/assess-collection.ts";
import type { Diagnostic } from "../../shared/diagnostics/diagnostic.ts";
import { reportAsJson, reportAsText } from "../../shared/diagnostics/report.ts";
import type { Collection } from "../../shared/records/collection.ts";
import type { EveryFile } from "../../shared/site/eleventy/every-file.ts";
import { renderPage } from "../../templates/render-page.ts";

/** These hold in every one of many thousand cases, so they are asked in the cheapest way. */
function mustBe(isSo: boolean, told: () => string): void {
  if (!isSo) throw new Error(told());
}

/** What only a fault of ours prints. */
const wordOfAFault = /undefined|\[object|\bNaN\b|Infinity|\n\s+at |\.[jt]s:\d/;
/** They move a terminal's cursor, change its colours, or turn the order of letters. */
const unprintable = /(?!\n)[\p{Cc}\p{Bidi_C}\p{Cs}\u2028\u2029]/u;

/** Every problem has its place in a file of the collection, is told in words, and shows no fault of ours. */
export function expectPlainWords(diagnostics: readonly Diagnostic[], written: string): void {
  for (const { code, file, line, column, message, frame } of diagnostics) {
    const told = (what: string) => () => `${what} (${code}): ${file}:${line}:${column} ${message}\n${frame}`;
    mustBe(!/^\/|(?:^|\/)\.\.(?:\/|$)/.test(file), told("A place outside the collection"));
    mustBe(line > 0 && column > 0 && frame.includes("^"), told("No place"));
    // The values that were written are quoted.
    mustBe(wordOfAFault.test(written) || !wordOfAFault.test(message), told("A word of a fault"));
    mustBe(!unprintable.test(message + frame), told("A control character for the terminal"));
    mustBe(message.length < 5000, told("A message that nobody reads"));
  }
  const report = reportAsText(diagnostics, 1);
  mustBe(!unprintable.test(report), () => `A control character in ${JSON.stringify(report)}`);
  JSON.parse(reportAsJson(diagnostics, 1));
}

/** An estimate is a number within its bounds; nothing that was computed is no number at all. */
export function expectNumbers(assessments: Assessments): void {
  const seen = new Set<object>();
  const walk = (value: unknown, path: readonly unknown[]): void => {
    const told = () => `${path.map(String).join(".")} is ${JSON.stringify(value)} ${String(value)}`;
    if (typeof value === "number") mustBe(Number.isFinite(value), told);
    if (typeof value !== "object" || value === null || seen.has(value)) return;
    seen.add(value);
    // A date that is open has bounds without end, by its own definition (shared/dates/edtf-interval.ts).
    if ("earliestEnd" in value) return;
    const { low, high, value: middle } = value as { low?: unknown; high?: unknown; value?: unknown };
    if (typeof low === "number" && typeof high === "number") {
      mustBe(low <= high, told);
      if (typeof middle === "number") mustBe(low <= middle && middle <= high, told);
    }
    const entries = value instanceof Map ? value.entries() : Object.entries(value);
    for (const [key, each] of entries) walk(each, [...path, key]);
  };
  walk(assessments, []);
}

/** No two records have names that some machine takes for one. */
export function expectOwnNames({ items, variants, families, articles }: Collection): void {
  for (const records of [items, variants, families, articles]) {
    const names = new Set([...records.keys()].map((id) => id.normalize("NFKC").toLowerCase()));
    const told = () => `Names that are not their own: ${[...records.keys()].join(", ")}`;
    mustBe(names.size === records.size && [...names].every((name) => /^[a-z0-9-]{1,80}$/.test(name)), told);
  }
}

const isForeign = (to: string): boolean =>
  /^\s*[a-z][a-z\d+.-]*:/i.test(to) && !/^\s*(?:https?|mailto):/i.test(to);
/** What XML 1.0 has no way to write. */
const unwritable = /(?![\t\n\r])[\p{Cc}\uFFFE\uFFFF](?<![\u007f-\u009f])|\p{Cs}/u;
const runs = /<script>|<[a-z][^<>"']*(?:"[^"]*"[^<>"']*)*\son[a-z]+=/i;

/** Every page and file of the site can be made, and holds nothing that runs or leads astray. */
export function expectSoundSite(site: EveryFile): void {
  if ("problems" in site) throw new Error(`No site of a sound collection: ${JSON.stringify(site.problems)}`);
  const addresses = new Set<string>();
  for (const { files, site: around } of site.parts) {
    for (const file of files) {
      const { address } = file;
      const told = (what: string) => () => `${what}: ${address}`;
      mustBe(/^\/(?!.*(?:\/\/|\/\.\.?\/))[\x21-\x7e]*$/.test(address), told("An address that leads astray"));
      mustBe(
        address.split("/").every(({ length }) => length < 200),
        told("A long name"),
      );
      const folded = address.toLowerCase();
      mustBe(!addresses.has(folded) || file.kind === "copy", told("An address that is there twice"));
      addresses.add(folded);
      if (file.kind === "text" && address.endsWith(".json")) JSON.parse(file.text);
      if (file.kind === "text") mustBe(!/\p{Cs}/u.test(file.text), told("Half a letter"));
      if (file.kind === "text" && address.endsWith(".xml"))
        mustBe(!unwritable.test(file.text), told("No XML"));
      if (file.kind !== "page") continue;
      const html = renderPage(file.make(), around);
      mustBe(!runs.test(html), told("Something that runs"));
      mustBe(!/\p{Cs}/u.test(html), told("Half a letter"));
      for (const [, to = ""] of html.matchAll(/(?:href|src|srcset|action|poster)="([^"]*)"/g))
        mustBe(!isForeign(to), () => `${address} leads to ${to}`);
    }
  }
}
