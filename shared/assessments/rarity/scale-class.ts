import type { Scale } from "../../records/register.ts";
import type { Figure } from "../figure.ts";

export interface RarityClass {
  readonly scale: string;
  /** Ids of the classes in which the ends of the survivors' interval lie; null outside the scale or without one. */
  readonly low: string | null;
  readonly high: string | null;
}

/**
 * The class of a number. Classes tile the whole numbers, so it is that of the nearest whole number, which is how a
 * page writes it (shared/words/numbers.ts): an end of 16.65 is read as 17, and classed with 17.
 */
export function classOf(scale: Scale, count: number): string | null {
  const whole = Math.round(count);
  const found = scale.classes.find(
    ({ low = 0, high = Number.POSITIVE_INFINITY }) => low <= whole && whole <= high,
  );
  return found?.id ?? null;
}

export function assessClass(scale: Scale | undefined, survivors: Figure): RarityClass | null {
  if (!scale) return null;
  const { low, high } = survivors;
  return {
    scale: scale.id,
    low: low === null ? null : classOf(scale, low),
    high: high === null ? null : classOf(scale, high),
  };
}
