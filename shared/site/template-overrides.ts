import { existsSync, statSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { type Templates, templates } from "../../templates/templates.ts";

/** The templates of the user's own, a file at a time: `templates/pages/item.js` stands in for ours of that name. */
export async function templateOverrides(folder: string): Promise<Partial<Templates>> {
  const overrides: Record<string, unknown> = {};
  for (const name of Object.keys(templates)) {
    const file = path.join(folder, `${name}.js`);
    if (!existsSync(file)) continue;
    // A preview sees the same file more than once; a module is kept under its address for as long as a process lives.
    const { mtimeMs, size } = statSync(file);
    const module = (await import(`${pathToFileURL(file).href}?${mtimeMs}-${size}`)) as { default?: unknown };
    if (typeof module.default !== "function") {
      throw new TypeError(
        `Found no default function in "${file}"; expected a template: (view, site) => HTML.`,
      );
    }
    overrides[name] = module.default;
  }
  return overrides as Partial<Templates>;
}
