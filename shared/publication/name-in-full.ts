/** A name is spoken alike in a source and under an article. */
export { nameInFull } from "../records/person-name.ts";
