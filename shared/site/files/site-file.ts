import type { Page } from "../../pages/site-pages.ts";

/** A file of the site, made when it is to be written. */
export type SiteFile = { readonly address: string } & (
  | { readonly kind: "page"; readonly make: () => Page }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  /** A file that is copied as it is. */
  | { readonly kind: "copy"; readonly from: string }
);

/** Where the file of an address lies below the site's folder. */
export const fileOf = (address: string): string =>
  `${address.slice(1)}${address.endsWith("/") ? "index.html" : ""}`;
