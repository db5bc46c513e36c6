import type { Link } from "../../shared/pages/page.ts";
import { type Html, html, joined } from "../html.ts";
import type { PageSite } from "../site.ts";

/** Names in one line, linked where there is somewhere to go. */
export function links(list: readonly Link[], { link }: PageSite): Html {
  const written = list.map(({ address, name }) =>
    address === "" ? html`${name}` : html`<a href="${link(address)}">${name}</a>`,
  );
  // A name that has a comma of its own would read as two.
  const between = list.length > 1 && list.some(({ name }) => name.includes(",")) ? "; " : ", ";
  return html`${joined(written, between)}`;
}
