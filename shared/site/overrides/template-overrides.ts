import { existsSync, realpathSync } from "node:fs";
import { register } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { Html, markup } from "../../../templates/html.ts";
import { type Templates, templates } from "../../../templates/templates.ts";
import { packageFolder } from "../../source/package-folder.ts";
import { contentsBelow } from "../files-below.ts";
import { TemplateError } from "./template-error.ts";

const followed = new Set<string>();

/** Has what the templates of a folder import from it be loaded again as they are. */
function followImports(folder: string): void {
  if (followed.has(folder)) return;
  followed.add(folder);
  const hooks = pathToFileURL(path.join(packageFolder, "dist/shared/site/overrides/template-imports.js"));
  register(hooks, { data: `${pathToFileURL(folder).href}/` });
}

/** The templates of the user's own, a file at a time: `templates/pages/item.js` stands in for ours of that name. */
export async function templateOverrides(folder: string): Promise<Partial<Templates>> {
  const overrides: Record<string, unknown> = {};
  const names = Object.keys(templates).filter((name) => existsSync(path.join(folder, `${name}.js`)));
  if (names.length === 0) return {};
  const real = realpathSync(folder);
  followImports(real);
  const key = contentsBelow(real);
  for (const name of names) {
    const shown = `templates/${name}.js`;
    // A preview sees the same file more than once.
    const address = `${pathToFileURL(path.join(real, `${name}.js`)).href}?${key}`;
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

/** A plain string that it returns is markup all the same; what goes wrong within it is told with its name. */
const watched =
  (shown: string, template: (...given: unknown[]) => unknown) =>
  (...given: unknown[]): Html => {
    try {
      const written = template(...given);
      return written instanceof Html ? written : markup(String(written));
    } catch (problem) {
      throw problem instanceof TemplateError ? problem : new TemplateError(shown, problem);
    }
  };
