import type { Item, SerialPublishing } from "../records/item.ts";

const dot = "\u2022";

/** A serial without its last two digits, or without any where it has no more than two. */
export function maskSerial(serial: string): string {
  const digits = [...serial.matchAll(/\p{Nd}/gu)];
  const hidden = new Set(digits.slice(-2).map(({ index }) => index));
  // A serial without digits has no last ones: nothing of it can be shown safely.
  if (digits.length === 0) return serial.replace(/[\p{L}\p{N}]/gu, dot);
  return [...serial].map((letter, at) => (hidden.has(at) ? dot : letter)).join("");
}

export function publishSerial(serial: string | undefined, how: SerialPublishing): string | null {
  if (serial === undefined || how === "hidden") return null;
  return how === "shown" ? serial : maskSerial(serial);
}

/** Letters and digits of a serial, with whatever a writer may put between them. */
function spelling(serial: string): RegExp | null {
  const runs = serial.normalize("NFKC").match(/\p{L}+|\p{N}+/gu) ?? [];
  if (runs.join("").length < 3) return null;
  const pattern = runs
    .map((run) => run.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
    .join("[\\s./\u2010-\u2015-]*");
  return new RegExp(`(?<![\\p{L}\\p{N}])${pattern}(?![\\p{L}\\p{N}])`, "giu");
}

export type Redact = (text: string) => string;

/** Takes the serials that an item does not show out of whatever else its author wrote about it. */
export function redactorFor(item: Item): Redact {
  if (item.publish.serial === "shown") return (text) => text;
  const serials = [item.serial, ...[...item.parts.values()].flat().map(({ serial }) => serial)];
  const secrets = serials
    .flatMap((serial) => (serial === undefined ? [] : [serial]))
    .flatMap((serial) => {
      const pattern = spelling(serial);
      return pattern ? [{ pattern, shown: publishSerial(serial, item.publish.serial) ?? dot.repeat(3) }] : [];
    });
  return (text) => secrets.reduce((redacted, { pattern, shown }) => redacted.replace(pattern, shown), text);
}
