/** What Node tells of an import that it is to resolve (Node.js, Modules: customization hooks). */
interface Context {
  readonly parentURL?: string | undefined;
}

type Next = (specifier: string, context: Context) => Promise<{ readonly url: string }>;

/** The folders of templates, as addresses; their files may be imported by one another, and by nobody else. */
const folders = new Set<string>();

export const initialize = (folder: string): void => {
  folders.add(folder);
};

/**
 * Node keeps a module under its address for as long as a process lives. The address of a template depends on the
 * content of its folder, and this makes the address of whatever it imports from there do the same. A module from
 * elsewhere would be kept and its changes missed, so it is refused, unless it belongs to a package, which has a
 * version.
 */
export async function resolve(specifier: string, context: Context, next: Next): Promise<{ url: string }> {
  const found = await next(specifier, context);
  const [parent = "", key] = context.parentURL?.split("?") ?? [];
  const folder = [...folders].find((each) => parent.startsWith(each));
  if (folder === undefined || key === undefined || !found.url.startsWith("file:")) return found;
  if (found.url.startsWith(folder)) return { ...found, url: `${found.url.split("?")[0]}?${key}` };
  if (found.url.includes("/node_modules/")) return found;
  throw new Error(
    `Found an import of "${specifier}", which lies outside templates/; expected a file inside it`,
  );
}
