import type { PageHead } from "../shared/pages/page.ts";
import type { Audience, PublishedCollection } from "../shared/publication/published.ts";
import type { Words } from "../shared/words/words.ts";
import type { html, markup } from "./html.ts";
import type { Templates } from "./templates.ts";

export interface SealedScript {
  readonly address: string;
  /** Its digest, by which a browser knows whether it is the one that was built. */
  readonly integrity: string;
}

export interface SiteScript extends SealedScript {
  readonly name: string;
  /** Modules that it imports. */
  readonly imports: readonly SealedScript[];
}

export interface SiteLogo {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** What is the same for every page. */
export interface Site {
  readonly templates: Templates;
  readonly words: Words;
  readonly settings: PublishedCollection["settings"];
  readonly audience: Audience;
  /** Where there is none, no page leads to their list. */
  readonly hasArticles: boolean;
  /** The sign of the collection, where it has one. */
  readonly logo: { readonly light: SiteLogo; readonly dark: SiteLogo | null } | null;
  /** Addresses from the root of the site. */
  readonly assets: {
    readonly style: string;
    /** For paper only. */
    readonly printStyle: string;
    readonly scripts: readonly SiteScript[];
    /** The words of the site as a module, for scripts. */
    readonly words: Omit<SiteScript, "name">;
    /** Type that is fetched at once. */
    readonly preload: readonly string[];
    /** Where a search begins; null where there is nothing to search. */
    readonly search: string | null;
  };
}

/** What a template is handed beside its view. */
export interface PageSite extends Site {
  readonly page: PageHead;
  /** The way from this page to an address that begins with a slash; any other address as it is. */
  readonly link: (address: string) => string;
  /** For templates of the user's own, which import nothing. */
  readonly html: typeof html;
  readonly markup: typeof markup;
}
