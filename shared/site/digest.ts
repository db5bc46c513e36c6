import { createHash } from "node:crypto";

/** Of several texts, one after the other: those of other lengths have another. */
export const digest = (...texts: readonly string[]): string => {
  const hash = createHash("sha1");
  for (const text of texts) hash.update(`${text.length} `).update(text);
  return hash.digest("base64url");
};
