import type { PublishedArticle } from "../../publication/published.ts";
import { nameInFull } from "../../terms/person-name.ts";

export type Author = PublishedArticle["authors"][number];

/** As it is spoken. */
export const authorInWords = (author: Author): string =>
  typeof author === "string" ? author : nameInFull(author);

/** As CSL-JSON has it. A name in words is not taken apart: nobody but its author knows where. */
export const authorInCsl = (author: Author) => (typeof author === "string" ? { literal: author } : author);

/** As schema.org has it. What has a name in one piece is a body, as CSL holds. */
export function authorInLinkedData(author: Author): Readonly<Record<string, string>> {
  const name = authorInWords(author);
  if (typeof author === "string") return { "@type": "Person", name };
  const { family, given, literal } = author;
  if (literal !== undefined) return { "@type": "Organization", name };
  return {
    "@type": "Person",
    name,
    ...(family === undefined ? {} : { familyName: family }),
    ...(given === undefined ? {} : { givenName: given }),
  };
}
