import type { Words } from "../../../shared/words/words.ts";

/**
 * The words of the site's language, once there is something to say. `import()` takes no digest, so the head of the page
 * holds, in a template, which loads nothing, a link for each module that is to come, with the digest of what was built.
 * Put into the page, the links fetch the modules; one that is altered is then there for nobody to import (HTML
 * Standard, 'fetch a modulepreload module script graph').
 */
export async function siteWords(): Promise<Words> {
  const sealed = document.querySelector<HTMLTemplateElement>("template.site-words");
  if (!sealed) throw new Error("The page names no words.");
  document.head.append(sealed.content);
  const { words } = (await import(new URL(sealed.dataset.module ?? "", location.href).href)) as {
    words: Words;
  };
  return words;
}
