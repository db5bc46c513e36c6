const creativeCommons =
  /\bhttps?:\/\/creativecommons\.org\/((?:licenses|publicdomain)\/[a-z+-]+\/\d\.\d(?:\/[a-z]{2,3})?)\b/;
const rightsStatements = /\bhttps?:\/\/rightsstatements\.org\/(vocab\/[A-Za-z-]+\/\d\.\d)\b/;

/**
 * The licence or rights statement that a collection's rights name, as its maker identifies it: by http, and with a
 * slash at the end; null where it names none that is known to programs.
 * Sources  IIIF Presentation 3.0, 3.1, rights; Creative Commons licence addresses; RightsStatements.org vocabulary
 */
export function licenceAddress(rights: string | null): string | null {
  const licence = creativeCommons.exec(rights ?? "")?.[1];
  if (licence !== undefined) return `http://creativecommons.org/${licence}/`;
  const statement = rightsStatements.exec(rights ?? "")?.[1];
  return statement === undefined ? null : `http://rightsstatements.org/${statement}/`;
}
