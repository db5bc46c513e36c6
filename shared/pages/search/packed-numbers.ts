/**
 * Whole numbers as text, one character for each below `most`: what compresses well, stands in JSON without an
 * escape, and is read back without parsing. A larger number is written as several that add up to it.
 *
 * The first 91 numbers are printable ASCII less the quotation mark and the backslash; above them the controls
 * from U+007F to U+009F are left out, and the surrogates are never reached.
 */
const most = 50_000;

const codeOf = (digit: number): number => {
  const code = digit + 0x23;
  if (code < 0x5c) return code;
  return code + 1 < 0x7f ? code + 1 : code + 34;
};

const digitOf = (code: number): number => {
  if (code < 0x5c) return code - 0x23;
  return code < 0x7f ? code - 0x24 : code - 0x45;
};

const longest = 8192;

export function packNumbers(numbers: Iterable<number>): string {
  let text = "";
  let codes: number[] = [];
  for (const number of numbers) {
    if (!Number.isSafeInteger(number) || number < 0)
      throw new RangeError(`Found ${number}; expected a whole number of at least 0.`);
    let left = number;
    for (; left >= most; left -= most) codes.push(codeOf(most));
    codes.push(codeOf(left));
    if (codes.length >= longest) {
      text += String.fromCharCode(...codes);
      codes = [];
    }
  }
  return text + String.fromCharCode(...codes);
}

export function unpackNumbers(text: string): number[] {
  const numbers: number[] = [];
  let above = 0;
  for (let at = 0; at < text.length; at++) {
    const digit = digitOf(text.charCodeAt(at));
    if (digit === most) above += most;
    else {
      numbers.push(above + digit);
      above = 0;
    }
  }
  return numbers;
}

/** Rising numbers as the gaps between them, which are small. */
export function packRising(numbers: readonly number[]): string {
  return packNumbers(numbers.map((number, at) => (at === 0 ? number : number - (numbers[at - 1] ?? 0))));
}

export function unpackRising(text: string): number[] {
  let last = 0;
  return unpackNumbers(text).map((gap) => {
    last += gap;
    return last;
  });
}

/** Packed rising numbers, made out of lists that were packed each by itself and follow one another. */
export class JoinedRising {
  packed = "";
  #last = 0;

  /** A list of numbers, each of which stands for `from` more, and is then above all that are here. */
  add(list: string, from: number): void {
    let [length, first] = [0, 0];
    let digit = most;
    while (digit === most) {
      digit = digitOf(list.charCodeAt(length++));
      first += digit;
    }
    // Gaps, and the digits of one, add up to the number that stands last.
    let last = first;
    for (let at = length; at < list.length; at++) last += digitOf(list.charCodeAt(at));
    this.packed += packNumbers([from + first - this.#last]) + list.slice(length);
    this.#last = from + last;
  }
}

/** Whether some of the rising numbers is one, without a list of them being made. */
export function someRising(text: string, is: (number: number) => boolean): boolean {
  let number = 0;
  for (let at = 0; at < text.length; at++) {
    const digit = digitOf(text.charCodeAt(at));
    number += digit;
    if (digit !== most && is(number)) return true;
  }
  return false;
}
