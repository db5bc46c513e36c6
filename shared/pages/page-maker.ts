import type { Page } from "./site-pages.ts";

/** A page that is made when it is to be written, and let go. */
export interface PageMaker<Made extends Page = Page> {
  readonly address: string;
  readonly make: () => Made;
}
