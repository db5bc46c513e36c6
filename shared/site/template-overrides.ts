import { existsSync, statSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { type Templates, templates } from "../../templates/templates.ts";
import { TemplateError } from "./template-error.ts";

/** The templates of the user's own, a file at a time: `templates/pages/item.js` stands in for ours of that name. */
export async function templateOverrides(folder: string): Promise<Partial<Templates>> {
  const overrides: Record<string, unknown> = {};
  for (const name of Object.keys(templates)) {
    const file = path.join(folder, `${name}.js`);
    if (!existsSync(file)) continue;
    const { mtimeMs, size } = statSync(file);
    const shown = `templates/${name}.js`;
    // A preview sees the same file more than once; a module is kept under its address for as long as a process lives.
    const address = `${pathToFileURL(file).href}?${mtimeMs}-${size}`;
    const module = (await import(address).catch((problem: unknown) => {
      throw new TemplateError(shown, problem);
    })) as { default?: unknown };
    if (typeof module.default !== "function") {
      throw new TemplateError(shown, "Found no default function; expected a template: (view, site) => HTML.");
    }
    overrides[name] = watched(shown, module.default as (...given: unknown[]) => unknown);
  }
  return overrides as Partial<Templates>;
}

/** What goes wrong within it is told with its name. */
const watched =
  (shown: string, template: (...given: unknown[]) => unknown) =>
  (...given: unknown[]): unknown => {
    try {
      return template(...given);
    } catch (problem) {
      throw problem instanceof TemplateError ? problem : new TemplateError(shown, problem);
    }
  };
