/** The words of the site in German, for scripts: the same that its pages are made with. */
export { german as words } from "../../../shared/words/de/german.ts";
