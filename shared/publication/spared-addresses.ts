import { linksIn } from "../prose/links.ts";
import type { Stretch } from "../prose/mentions.ts";

/** A link that is nothing but its address (CommonMark 0.31.2, section 6.5). */
const autolink = /(?<=<)(?:https?|mailto):[^\s<>]*(?=>)/gi;

/** The addresses of a text's links, where they stand, in order. That of a picture is on no page. */
export function linkAddresses(text: string): Stretch[] {
  const found = new Map<number, Stretch>();
  for (const { isPicture, start, end } of linksIn(text)) if (!isPicture) found.set(start, { start, end });
  for (const { 0: address, index } of text.matchAll(autolink))
    found.set(index, { start: index, end: index + address.length });
  return [...found.values()].sort((a, b) => a.start - b.start);
}

/**
 * Takes something out of a text, but of the addresses of its links nothing: these would lead nowhere. `check` warns where
 * one of them tells what is taken out elsewhere.
 */
export const sparingAddresses =
  <More extends readonly unknown[]>(takeOut: (text: string, ...more: More) => string) =>
  (text: string, ...more: More): string => {
    const whole = takeOut(text, ...more);
    if (whole === text) return text;
    let from = 0;
    let spared = "";
    for (const { start, end } of linkAddresses(text)) {
      if (start < from) continue;
      spared += takeOut(text.slice(from, start), ...more) + text.slice(start, end);
      from = end;
    }
    return from === 0 ? whole : spared + takeOut(text.slice(from), ...more);
  };
