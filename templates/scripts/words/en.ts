/** The words of the site in English, for scripts: the same that its pages are made with. */
export { english as words } from "../../../shared/words/en/english.ts";
