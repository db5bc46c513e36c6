import { type Html, html } from "../html.ts";

/** That what the address asks for needs a script: where none runs, and where one has failed. */
export const noAnswer = (sentence: string): Html =>
  html`<noscript><p>${sentence}</p></noscript><p class="no-answer" role="status">${sentence}</p>`;
