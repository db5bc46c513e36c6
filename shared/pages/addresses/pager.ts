import type { Link } from "../page.ts";

/** As many as a page of a list has, whoever makes it: the build or a reader's browser. */
export const entriesOnPage = 100;

/** Where a list that is cut into pages goes on. */
export interface PagerView {
  readonly page: number;
  readonly of: number;
  readonly previous: Link | null;
  readonly next: Link | null;
  /** By their numbers; null where some are left out. */
  readonly pages: readonly ((Link & { readonly isHere: boolean }) | null)[];
}

/** The first and the last, and those about this one: however many there are, a line of them stays short. */
export function pagesToName(page: number, of: number, about = 2): readonly (number | null)[] {
  const named: (number | null)[] = [];
  for (let number = 1; number <= of; number++) {
    if (number === 1 || number === of || Math.abs(number - page) <= about) named.push(number);
    else if (named.at(-1) !== null) named.push(null);
  }
  return named;
}

export function pagerView(
  page: number,
  of: number,
  addressOf: (page: number) => string,
  say: { readonly previous: string; readonly next: string },
): PagerView | null {
  if (of < 2) return null;
  return {
    page,
    of,
    previous: page > 1 ? { address: addressOf(page - 1), name: say.previous } : null,
    next: page < of ? { address: addressOf(page + 1), name: say.next } : null,
    pages: pagesToName(page, of).map((number) =>
      number === null ? null : { address: addressOf(number), name: String(number), isHere: number === page },
    ),
  };
}
