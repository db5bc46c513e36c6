import { benchWordsFor, spokenLanguages } from "../../words/languages.ts";

const toBench = Object.fromEntries(
  spokenLanguages.map((language) => [language, benchWordsFor(language).fromPage]),
);

/**
 * What the preview adds to each page: it reloads when what it shows was made again, and shows what is wrong
 * with the content over the last good page until it is mended.
 */
export const previewClient = `
const panel = document.createElement("section");
panel.id = "fittedcase-problems";
panel.setAttribute("role", "alert");
panel.hidden = true;
document.body.prepend(panel);
const own = document.querySelector('script[src="/__fittedcase/preview.js"]');
let built = own?.dataset.build;
const outfit = /^\\/items\\/([^/]+)\\/$/.exec(location.pathname);
if (outfit) {
  const toBench = document.createElement("p");
  toBench.id = "fittedcase-bench";
  const link = document.createElement("a");
  link.href = "/__fittedcase/bench/" + outfit[1] + "/";
  const said = ${JSON.stringify(toBench)};
  link.textContent = said[document.documentElement.lang.split("-")[0]] ?? said.en;
  toBench.append(link);
  document.body.append(toBench);
}
const events = new EventSource("/__fittedcase/events?page=" + encodeURIComponent(location.pathname));
events.addEventListener("state", ({ data }) => {
  const state = JSON.parse(data);
  if (built !== undefined && state.build !== built) location.reload();
  built = state.build;
  panel.hidden = state.problems === null;
  panel.replaceChildren();
  if (state.problems !== null) {
    const report = document.createElement("pre");
    report.lang = "en";
    report.textContent = state.problems;
    panel.append(report);
  }
});
`;

export const previewStyle = `
#fittedcase-problems { position: sticky; top: 0; z-index: 10; max-height: 60vh; overflow: auto; padding: 1rem;
  background: Canvas; color: CanvasText; border-block-end: 3px solid currentcolor; }
#fittedcase-bench { position: fixed; inset: auto 0.75rem 0.75rem auto; z-index: 9; margin: 0; }
#fittedcase-bench a { display: block; padding: 0.75rem 1rem; background: CanvasText; color: Canvas;
  font: 1rem/1.4 system-ui, sans-serif; text-decoration: none; }
#fittedcase-problems pre { margin: 0; font: 0.875rem/1.4 ui-monospace, monospace; white-space: pre-wrap; }
`;
