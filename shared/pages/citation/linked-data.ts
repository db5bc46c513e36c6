import type { PublishedCollection } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";

type Fields = Readonly<Record<string, unknown>>;

/** An address of the site as the web knows it. */
export const absoluteAddress = (url: string, address: string): string =>
  `${url.replace(/\/+$/, "")}/${address.replace(/^\/+/, "")}`;

/** What schema.org holds to be no CreativeWork, and says of no such thing that it is in a language. */
const things: ReadonlySet<string> = new Set(["IndividualProduct", "ProductGroup", "ProductModel"]);

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
    inLanguage: things.has(type) ? null : settings.language,
    ...fields,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null && value !== undefined));
}

/** The family of an item or a variant, by which its own page is known. */
export function familyGroup(
  { settings }: PublishedCollection,
  { id, name }: { readonly id: string; readonly name: string },
): Fields {
  const url = absoluteAddress(settings.url, addresses.family(id));
  return { "@type": "ProductGroup", "@id": url, url, name, productGroupID: id };
}
