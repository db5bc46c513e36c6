/**
 * What the preview adds to each page: it reloads when the site was built again, and shows what is wrong with the
 * content over the last good page until it is mended.
 */
export const previewClient = `
const panel = document.createElement("section");
panel.id = "fittedcase-problems";
panel.setAttribute("role", "alert");
panel.hidden = true;
document.body.prepend(panel);
let built;
const events = new EventSource("/__fittedcase/events");
events.addEventListener("state", ({ data }) => {
  const state = JSON.parse(data);
  if (built !== undefined && state.build !== built) location.reload();
  built = state.build;
  panel.hidden = state.problems === null;
  panel.replaceChildren();
  if (state.problems !== null) {
    const report = document.createElement("pre");
    report.textContent = state.problems;
    panel.append(report);
  }
});
`;

export const previewStyle = `
#fittedcase-problems { position: sticky; top: 0; z-index: 10; max-height: 60vh; overflow: auto; padding: 1rem;
  background: Canvas; color: CanvasText; border-block-end: 3px solid currentcolor; }
#fittedcase-problems pre { margin: 0; font: 0.875rem/1.4 ui-monospace, monospace; white-space: pre-wrap; }
`;
