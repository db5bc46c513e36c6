import { nearestName } from "../diagnostics/nearest-name.ts";

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

const reference =
  /^<\s*(?:(figure|table|plot)(?:\s*:|\s+(?=(?:items|variants)[/?]))|([a-z][a-z0-9+.-]{1,31})\s*:\s*(?=(?:items|variants)[/?]))([^<>\n]*>|\S*)/i;
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
    const meant = within === undefined ? `[${unclosed}]` : `${words.trim()} [${within}]`.trim();
    return { kind: "citation", raw, meant, sources: meant.match(/(?<=@)[^\s,;\]]+/g) ?? [] };
  }
  const referred = reference.exec(text);
  if (!referred) return null;
  const [raw, scheme, other, rest = ""] = referred;
  const target = rest.replace(/\s+/g, "").replace(/>$|[.,:!)]+$/, "");
  return {
    kind: "reference",
    raw,
    meant: `<${(scheme ?? other ?? "").toLowerCase()}:${target}>`,
    sources: [],
  };
}

/** The word after a fence that is nearly the one which opens a block of assertions. */
export function fenceSlip(info: string): Slip | null {
  const written = info.trim();
  const word = /^\S*/.exec(written)?.[0] ?? "";
  if (written === expectFence || nearestName(word, [expectFence]) === undefined) return null;
  return { kind: "fence", raw: written, meant: expectFence, sources: [] };
}
