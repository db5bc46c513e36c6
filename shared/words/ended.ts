/** What has its end has no second one, within quotation marks or without: "What is a lamp?", "Ferry House Ltd." */
const isEnded = /[.?!…]["'”’“»›]*$/u;

/** The point that ends a text, where it has no end of its own. */
export const endOf = (text: string): "." | "" => (isEnded.test(text) ? "" : ".");

export const ended = (text: string): string => text + endOf(text);

/** Remarks one after another, a point between them; the last ends as it is written. */
export const remarksInARow = (remarks: readonly string[]): string =>
  remarks.map((remark, at) => (at < remarks.length - 1 ? ended(remark) : remark)).join(" ");
