import { isOneSlip, nearestName } from "../diagnostics/nearest-name.ts";
import { schemes } from "./reference.ts";

/** What looks like something of ours and cannot be read as it: it would be printed as it stands. */
export interface Slip {
  readonly kind: "reference" | "citation" | "footnote" | "fence";
  readonly raw: string;
  /** How it is written, as far as that can be told. */
  readonly meant: string | undefined;
  /** The sources that a citation may be of: where none of them is known, it is a text in brackets. */
  readonly sources: readonly string[];
}

/** The word after the fence that opens a block of assertions. */
export const expectFence = "expect";

/** Before a path that could only be ours. A line is not searched to its end for what would close it. */
const reference =
  /^<\s*(?:(figure|table|plot)(?:\s*:\s*|\s+)|([a-z][a-z0-9+.-]{1,31})\s*:\s*)((?:items|variants)(?:[^<>\n]{0,200}>|[/?][^\s<>]{0,200}))/i;
const footnote = /^\[\^[^[\]\s]+\]/;
/** With words before the at sign; or one that is never closed. Links are left alone. */
const citation =
  /^\[(?:([^[\]@]*\s)(@[^[\]\s][^[\]]*)\](?![([])|(@[^\s,;[\]]+)(?![^\s,;[\]])(?=[^[\]]*(?:\[|$)))/;

/** Whatever begins at the beginning of a text like something of ours that it is not. */
export function slipAt(text: string): Slip | null {
  const note = footnote.exec(text);
  if (note) return { kind: "footnote", raw: note[0], meant: undefined, sources: [] };
  const cited = citation.exec(text);
  if (cited) {
    const [raw, words = "", within, unclosed] = cited;
    const meant = within === undefined ? `[${unclosed}]` : `${words.trim()} ${closed(within)}`.trim();
    return { kind: "citation", raw, meant, sources: meant.match(/(?<=@)[^\s,;\]]+/g) ?? [] };
  }
  const referred = reference.exec(text);
  if (!referred) return null;
  const [raw, scheme, other = "", rest = ""] = referred;
  const target = rest.replace(/\s+/g, "").replace(/>$|[.,:!)]+$/, "");
  const kind = (scheme ?? nearestName(other, schemes) ?? other).toLowerCase();
  return { kind: "reference", raw, meant: `<${kind}:${target}>`, sources: [] };
}

/** A citation with its comma before a place in the source, and before words about it with its bracket. */
function closed(within: string): string {
  const told = /^(@[^\s,;]+) ([^\d,;@]+)$/.exec(within.trim());
  return told ? `[${told[1]}] ${told[2]}` : `[${within.replace(/(@[^\s,;@]+)\s+(?=[^,;@])/g, "$1, ")}]`;
}

/**
 * Whether such brackets are a footnote to a reader, too: behind words, or with the note in the same text. Elsewhere they
 * are an isotope, or the signs that an expression does not take.
 */
export function footnotesOf(text: string): (raw: string, at: number) => boolean {
  let noted: ReadonlySet<string> | undefined;
  return (raw, at) => {
    if (/[\p{L}\p{N}\p{Pe}\p{Pf}.,;:!?"'*_`]/u.test(text[at - 1] ?? "")) return true;
    noted ??= new Set(text.match(/\[\^[^[\]\s]+\](?=:)/g));
    return noted.has(raw);
  };
}

/** The word after a fence that is nearly the one which opens a block of assertions. */
export function fenceSlip(info: string): Slip | null {
  const written = info.trim();
  const word = (/^\S*/.exec(written)?.[0] ?? "").toLowerCase();
  // An expert is another word by one letter.
  const isMeant = word === "expected" || (isOneSlip(word, expectFence) && word !== "expert");
  if (written === expectFence || (word !== expectFence && !isMeant)) return null;
  return { kind: "fence", raw: written, meant: expectFence, sources: [] };
}
