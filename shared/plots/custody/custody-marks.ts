import type { CalendarYears } from "../../dates/calendar-years.ts";
import { inclusiveList } from "../../dates/inclusive-list.ts";
import type { PublishedItem } from "../../publication/published.ts";
import { gapLength, isWorthTelling } from "../../words/gap-length.ts";
import type { WordsForPlots, YearsOf } from "../../words/plot-words.ts";

export type Custody = Pick<PublishedItem["provenance"], "events" | "gaps">;

/** Something that the line of custody is labelled with. */
export interface CustodyMark {
  readonly kind: "event" | "bound" | "gap";
  /** Calendar years, the last one included. */
  readonly first: number;
  readonly last: number;
  /** The years of these that it certainly goes through; null where it lies in any one of them. */
  readonly through: CalendarYears["through"];
  /** Goes on, for all that is known. */
  readonly open: boolean;
  /** Its place among what was in the same year: the issue first, else by month and day as they are written. */
  readonly within: string;
  readonly date: string;
  readonly text: string;
}

export interface CustodyMarks {
  /** In the order of time. */
  readonly marks: readonly CustodyMark[];
  readonly undated: number;
}

/** Where on the line its label leads to: the year in which it begins; what is told of a gap stands in its middle. */
export const anchorYear = ({ kind, first, last }: CustodyMark): number =>
  kind === "gap" ? (first + last + 1) / 2 : first + 0.5;

interface Around {
  readonly words: WordsForPlots;
  readonly yearsOf: YearsOf;
  readonly issued?: string | null;
  readonly examined?: string | null;
}

/** Behind every date as it is written. */
const afterAll = "~";

/** Events, the issue, the examination and the gaps between, each in its years. */
export function custodyMarks({ events, gaps }: Custody, around: Around): CustodyMarks {
  const { words, yearsOf, issued, examined } = around;
  const { custody } = words.plots;
  const mark = (kind: CustodyMark["kind"], date: string, text: string, within = date): CustodyMark[] => {
    const years = spanOf(date, yearsOf);
    return years ? [{ kind, ...years, within, date: words.date(date), text }] : [];
  };
  const ofEvents = events.map((event) =>
    inclusiveList(event.date).flatMap((date) => mark("event", date, custody.event(event))),
  );
  const ofGaps = gaps.filter(isWorthTelling).map(({ from, to, years, longest }): CustodyMark => {
    const text = custody.gap(gapLength({ years, longest }, words.numbers));
    return {
      kind: "gap",
      first: from,
      last: to,
      through: null,
      open: false,
      within: afterAll,
      date: "",
      text,
    };
  });
  const marks = [
    ...(issued ? mark("bound", issued, custody.issued, "") : []),
    ...ofEvents.flat(),
    ...ofGaps,
    ...(examined ? mark("bound", examined, custody.examined) : []),
  ];
  return {
    marks: marks.sort(
      (a, b) => anchorYear(a) - anchorYear(b) || (a.within === b.within ? 0 : a.within < b.within ? -1 : 1),
    ),
    undated: ofEvents.filter((dated) => dated.length === 0).length,
  };
}

function spanOf(
  date: string,
  yearsOf: YearsOf,
): Pick<CustodyMark, "first" | "last" | "through" | "open"> | null {
  const years = yearsOf(date);
  const ends = [years?.first, years?.last].flatMap((year) =>
    typeof year === "number" && Number.isFinite(year) ? [year] : [],
  );
  const [first, last] = [ends[0], ends.at(-1)];
  if (first === undefined || last === undefined) return null;
  return { first, last, through: years?.through ?? null, open: years?.last === Number.POSITIVE_INFINITY };
}
