import { UsageError } from "./command.ts";

export interface Today {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
}

/**
 * The day here, where the case stands on the table. Where SOURCE_DATE_EPOCH says when it is, in seconds since 1970, the
 * day then at Greenwich: what is written and reported is the same again on any machine.
 * Source  https://reproducible-builds.org/specs/source-date-epoch/, whose malformed values end a command
 */
export function today(): Today {
  const seconds = process.env.SOURCE_DATE_EPOCH;
  if (!seconds) {
    const now = new Date();
    return { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() };
  }
  const then = new Date(/^\d+$/.test(seconds) ? Number(seconds) * 1000 : Number.NaN);
  if (Number.isNaN(then.getTime()))
    throw new UsageError(
      `Found SOURCE_DATE_EPOCH "${seconds}"; expected whole seconds since 1970, as "date +%s" prints them.`,
    );
  return { year: then.getUTCFullYear(), month: then.getUTCMonth() + 1, day: then.getUTCDate() };
}
