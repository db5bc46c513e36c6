/**
 * The way from one page to an address of the same site, by way of its root: "../../items/x/". Pages joined
 * like this work at the root of a host, below a path, and from a folder on a disk alike.
 */
export function relativeAddress(from: string, to: string): string {
  if (!to.startsWith("/") || to.startsWith("//")) return to;
  const depth = from.split("/").length - 2;
  return depth > 0 ? `${"../".repeat(depth)}${to.slice(1)}` : `./${to.slice(1)}`;
}
