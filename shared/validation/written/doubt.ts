/** What a person puts to a date of which they are not sure. */
export interface Doubt {
  readonly approximate: boolean;
  readonly uncertain: boolean;
}

const about =
  /^(?:circa|approximately|approx\.?|around|about|abt\.?|vers|environ|um|c\.\s?a\.|ca\.?|c\.?)(?:\s+|(?<=\.)|(?=\d))/i;
const unsure = /\s*(?:\?|\(\?\))$/;

/** A date as written, and the doubt that is put to it or to the whole of which it is a part. */
export function withoutDoubt(
  written: string,
  ofWhole: Doubt = { approximate: false, uncertain: false },
): { readonly text: string; readonly doubt: Doubt } {
  return {
    text: written.replace(about, "").replace(unsure, ""),
    doubt: {
      approximate: ofWhole.approximate || about.test(written),
      uncertain: ofWhole.uncertain || unsure.test(written),
    },
  };
}

/** The sign that EDTF puts after a date. */
export const signOf = ({ approximate, uncertain }: Doubt): string =>
  approximate && uncertain ? "%" : approximate ? "~" : uncertain ? "?" : "";
