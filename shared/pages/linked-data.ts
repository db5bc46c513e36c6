import type { PublishedCollection } from "../publication/published.ts";

type Fields = Readonly<Record<string, unknown>>;

/** An address of the site as the web knows it. */
export const absoluteAddress = (url: string, address: string): string =>
  `${url.replace(/\/+$/, "")}/${address.replace(/^\/+/, "")}`;

/** schema.org, with what has no value left out. */
export function linkedData(
  { settings }: PublishedCollection,
  type: string,
  address: string,
  fields: Fields,
): Fields {
  const all = {
    "@context": "https://schema.org",
    "@type": type,
    "@id": absoluteAddress(settings.url, address),
    url: absoluteAddress(settings.url, address),
    inLanguage: settings.language,
    ...fields,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null && value !== undefined));
}
