import { type Html, html, markup } from "../html.ts";
import type { PageSite } from "../site.ts";

export interface Drawing {
  /** SVG. */
  readonly svg: string | null;
  readonly kind: string;
}

/** A drawing that scrolls within itself, should it ever be wider than the page. */
export function drawing({ svg, kind }: Drawing, _site: PageSite): Html {
  return svg === null ? html`` : html`<div class="drawing drawing-${kind}">${markup(svg)}</div>`;
}
