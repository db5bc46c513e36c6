import type { Token } from "markdown-it";
import { escapeHtml } from "markdown-it/lib/common/utils.mjs";
import { citesIn } from "../../prose/citation.ts";
import type { Mark } from "../../prose/markdown-parser.ts";
import { referenceFrom } from "../../prose/reference.ts";
import { readingAt } from "../../publication/references/reading-at.ts";
import { addresses } from "../addresses/addresses.ts";
import { relativeAddress } from "../addresses/relative-address.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { type Notes, noteAddress, sourceAddress } from "./notes.ts";
import { readingInWords } from "./reading-in-words.ts";

export interface TextPlace {
  /** Address of the page that the text stands on: what begins with a slash is linked from there. */
  readonly page: string;
  readonly index: CollectionIndex;
  /** Where the page lists at its end what the figures rest on, and the sources. */
  readonly notes?: Notes | undefined;
}

/** What a mark is to a reader: its words, and the same with what they rest on a step away. */
interface Told {
  readonly text: string;
  readonly html: string;
}

/** A link within a link is none: there the words stand alone. */
export function telling(mark: Token, place: TextPlace, isInLink: boolean): Told {
  const { raw } = mark.meta as Mark;
  const told = mark.type === "citation" ? citation(raw, place) : figure(raw, place, isInLink);
  return isInLink ? { ...told, html: escapeHtml(told.text) } : told;
}

function figure(raw: string, { page, index, notes }: TextPlace, isInLink: boolean): Told {
  const { scheme, path } = referenceFrom(raw);
  const found = scheme === "figure" ? readingAt(path, index) : null;
  // What leads nowhere has been reported, and no site is made of it.
  if (!found || "problem" in found) return { text: raw, html: escapeHtml(raw) };
  const { text, basis, address, isSentence } = readingInWords(found.value, index);
  const said = `<span>${escapeHtml(text)}</span>`;
  if (!notes || !basis || isInLink) {
    return { text, html: `<a class="told" href="${escapeHtml(relativeAddress(page, address))}">${said}</a>` };
  }
  const { number, place } = notes.figure(basis);
  const say = index.words.pages.articles;
  const sign = `<sup><span class="unseen">, ${escapeHtml(say.note)} </span>${number}</sup>`;
  const link = (content: string) =>
    `<a class="told" role="doc-noteref" href="${noteAddress(number)}" id="${place}">${content}</a>`;
  return { text, html: isSentence ? `${escapeHtml(text)}${link(sign)}` : link(`${said}${sign}`) };
}

/** Author and year, or title, in round brackets; hyphens between numbers become dashes. */
function citation(raw: string, { page, index, notes }: TextPlace): Told {
  const cites = citesIn(raw).map(({ source, locator }) => {
    const reference = index.shortReferences.get(source);
    const name = reference?.text ?? source;
    const set = reference?.isTitle ? `<cite>${escapeHtml(name)}</cite>` : escapeHtml(name);
    if (index.sources.has(source)) notes?.cite(source);
    const where =
      locator === "" ? "" : `, ${locator.replace(/(\d)-(?=\d)/g, "$1–").replace(/\. (?=\d)/g, ".\u00a0")}`;
    const address = notes ? sourceAddress(source) : relativeAddress(page, addresses.source(source));
    return {
      text: `${name}${where}`,
      html: `<a href="${escapeHtml(address)}">${set}</a>${escapeHtml(where)}`,
    };
  });
  const joined = (list: readonly string[]) => `(${list.join("; ")})`;
  return { text: joined(cites.map(({ text }) => text)), html: joined(cites.map(({ html }) => html)) };
}
