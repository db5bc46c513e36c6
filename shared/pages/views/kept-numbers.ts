const named = /(?<![\p{L}\p{N}])(nos?|nrn?)\. (?=\d)/giu;
const lettered = /(?<![\p{L}\p{N}])(\p{Lu}{1,3}) (?=\d)/gu;

/** No line ends before the number of 'no. 7', in either language of the site, nor before that of 'TY 1'. */
export const keptNumbers = (text: string): string =>
  text.replace(named, "$1.\u00a0").replace(lettered, "$1\u00a0");
