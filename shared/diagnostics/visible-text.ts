/**
 * Control characters would move a terminal's cursor, and format characters and halves of letters hide text or turn it round
 * (Unicode categories Cc, Cf, Cs, Zl and Zp): a dot shows that they are there.
 */
export const visible = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "\u00b7");

const longest = 400;

/** Words of a message: visible, and no longer than somebody reads. */
export const readable = (text: string): string =>
  visible(text.length > longest ? `${text.slice(0, longest - 1)}…` : text);
