import { countedIn, digitsIn } from "../counted.ts";

const counted = countedIn("en-GB");

export const inDigits = digitsIn("en-GB");

/** A number with what is counted; most words of English take an s. */
export const plural = (number: number, one: string, many = `${one}s`): string => counted(number, one, many);
