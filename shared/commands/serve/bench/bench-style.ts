/** What the page for the bench needs beside the site's own type and ink: large targets, one column, room for thumbs. */
export const benchStyle = `
html { scroll-padding-block: 1rem 5rem; }
main { max-inline-size: 46rem; padding-block: var(--line); }
main h1 { font-size: clamp(1.9rem, 1.4rem + 2vw, 2.75rem); padding-block-end: calc(var(--line) / 2); }
main section > h2 { padding-block: calc(1.5 * var(--line)) calc(var(--line) / 2); font-size: 1.5rem; }
.trail { font: 0.875rem / var(--line) var(--font-sans); }
.trail a, .divisions a { display: inline-block; padding-block: 0.5rem; }
.lead { padding-block-end: calc(var(--line) / 2); }
.cautions { border: 3px double var(--ink); padding: 0 1rem 1rem; margin-block: var(--line); }
main .cautions > h2 { padding-block-start: calc(var(--line) / 2); }
.cautions dt { font: 600 1rem / var(--line) var(--font-sans); padding-block-start: 0.75rem; }
cite { display: block; font: 0.8125rem / 1.35rem var(--font-sans); color: var(--ink-soft); }
.part { border-block-start: 1px solid var(--hairline); padding-block: calc(var(--line) / 2) var(--line); }
.part h3 { font-style: normal; font-size: 1.375rem; }
.part h3 small { padding-inline-start: 0.5rem; }
.caution { border-inline-start: 4px solid var(--ink); padding-inline-start: 0.75rem; margin-block: 0.5rem; }
.look { padding-block: 0.25rem 0.5rem; }
fieldset.choices { border: 0; margin: 0.5rem 0; padding: 0; min-inline-size: 0; display: grid; gap: 0.5rem;
  grid-template-columns: repeat(auto-fill, minmax(8.25rem, 1fr)); }
.choices label { position: relative; display: block; }
.choices input { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; margin: 0; opacity: 0; cursor: pointer; }
.choices span { display: flex; align-items: center; min-block-size: 3rem; padding: 0.25rem 0.75rem; gap: 0.5rem;
  border: 1px solid var(--ink-soft); font: 1rem / 1.25 var(--font-sans); overflow-wrap: anywhere; }
.choices span::before { content: ""; flex: none; inline-size: 1rem; block-size: 1rem; border: 1px solid currentcolor; border-radius: 50%; }
.choices input:checked + span { border: 3px solid var(--accent); padding: calc(0.25rem - 2px) calc(0.75rem - 2px);
  background: var(--accent-soft); font-weight: 600; }
.choices input:checked + span::before { border-width: 5px; }
.choices input:focus-visible + span { outline: 3px solid var(--accent); outline-offset: 2px; }
.field { display: block; margin-block: 0.75rem 0; font: 0.9375rem / 1.35 var(--font-sans); }
.field span { display: block; padding-block-end: 0.25rem; }
.field input, .field select, .field textarea { inline-size: 100%; min-block-size: 3rem; padding: 0.5rem 0.75rem;
  border: 1px solid var(--ink-soft); border-radius: 0; background: var(--paper); color: var(--ink);
  font: 1.0625rem / 1.4 var(--font-sans); }
.field input:focus-visible, .field select:focus-visible, .field textarea:focus-visible { outline: 3px solid var(--accent); outline-offset: 0; }
summary { display: flex; align-items: center; min-block-size: 3rem; font: 1rem / 1.3 var(--font-sans); cursor: pointer; }
summary::before { content: "+"; inline-size: 1.25rem; font-weight: 600; }
details[open] > summary::before { content: "\\2212"; }
.entry { padding-block-start: 0.75rem; font: 600 0.9375rem / 1.35 var(--font-sans); }
.saving { min-block-size: 1.5rem; padding-block-start: 0.25rem; font: 0.9375rem / 1.4 var(--font-sans); color: var(--ink-soft); white-space: pre-line; }
.saving .failed { color: var(--ink); font-weight: 600; }
.save, .button { display: inline-block; min-block-size: 3rem; padding: 0.5rem 1.25rem; border: 1px solid var(--ink);
  background: var(--paper-deep); color: var(--ink); font: 1rem / 1.75 var(--font-sans); text-decoration: none; }
.saves-itself .save { display: none; }
.asking { display: flex; flex-wrap: wrap; gap: 0.75rem; padding-block: 0.5rem; }
.small a { display: inline-block; padding-block: 0.75rem; }
.notice-panel { border: 3px double var(--ink); padding: 1rem; margin-block: var(--line); }
.notice-panel pre { margin: 0; overflow-x: auto; font: 0.875rem / 1.4 ui-monospace, monospace; white-space: pre-wrap; }
main > .notice-panel { position: sticky; inset-block-start: 0; z-index: 1; max-block-size: 40vh; overflow-y: auto; background: var(--paper); }
.foot { position: sticky; inset-block-end: 0; padding-block: 0.75rem; border-block-start: 3px double var(--ink);
  background: var(--paper); font: 1rem / 1.4 var(--font-sans); }
.unsaved { max-block-size: 5.5rem; overflow-y: auto; padding-block-end: 0.5rem; font-weight: 600; }
.outfits { list-style: none; padding: 0; }
.outfits li { border-block-start: 1px solid var(--hairline); }
.outfits a { display: inline-block; padding-block: 0.75rem; min-block-size: 3rem; }
@media (forced-colors: active) { .choices input:checked + span { background: Highlight; color: HighlightText; forced-color-adjust: none; } }
`;
