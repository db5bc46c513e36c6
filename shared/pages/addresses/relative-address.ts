/**
 * The way to an address from the root of its host, for the page that a host shows at any address of the site:
 * from there no relative way leads anywhere.
 */
export function rootedAddress(url: string, to: string): string {
  if (!to.startsWith("/") || to.startsWith("//")) return to;
  return new URL(url).pathname.replace(/\/*$/, "") + to;
}

/**
 * The way from one page to an address of the same site, by way of its root: "../../items/x/". Pages joined
 * like this work at the root of a host, below a path, and from a folder on a disk alike.
 */
export function relativeAddress(from: string, to: string): string {
  if (!to.startsWith("/") || to.startsWith("//")) return to;
  const depth = from.split("/").length - 2;
  return depth > 0 ? `${"../".repeat(depth)}${to.slice(1)}` : `./${to.slice(1)}`;
}

/**
 * Where a way leads that begins at a page: however many steps up it takes, never out of the site. Null for what
 * cannot be an address.
 */
export function addressFrom(
  page: string,
  to: string,
): { readonly path: string; readonly rest: string } | null {
  const from = `https://host.invalid${page}`;
  if (!URL.canParse(to, from)) return null;
  const { pathname, search, hash } = new URL(to, from);
  return { path: pathname.replace(/^\/{2,}/, "/"), rest: search + hash };
}
