/** No line ends between 'no.' and its number, in either language of the site. */
export const keptNumbers = (text: string): string => text.replace(/\b(nos?|nrn?)\. (?=\d)/gi, "$1.\u00a0");
