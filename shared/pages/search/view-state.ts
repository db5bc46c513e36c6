/** What a reader asked of the catalogue, as the address has it; empty where nothing was asked. */
export interface ViewState {
  readonly q: string;
  readonly family: string;
  readonly variant: string;
  readonly level: string;
  readonly evidence: string;
  readonly status: string;
  readonly class: string;
  readonly hazard: string;
  readonly missing: string;
  readonly place: string;
  /** Whole percent: certainly at least, and possibly at most. */
  readonly least: string;
  readonly most: string;
  /** Years of issue. */
  readonly from: string;
  readonly to: string;
  readonly sort: string;
  readonly page: number;
}

export const fields = [
  "q",
  "family",
  "variant",
  "level",
  "evidence",
  "status",
  "class",
  "hazard",
  "missing",
  "place",
  "least",
  "most",
  "from",
  "to",
  "sort",
] as const satisfies readonly (keyof ViewState)[];
export type Field = (typeof fields)[number];

export const orders = ["title", "complete", "year", "rare", "place"] as const;

export function readState(search: string): ViewState {
  const given = new URLSearchParams(search);
  const page = Number(given.get("page") ?? "1");
  return {
    ...(Object.fromEntries(fields.map((field) => [field, (given.get(field) ?? "").trim()])) as Record<
      Field,
      string
    >),
    page: Number.isSafeInteger(page) && page > 0 ? page : 1,
  };
}

/** "?q=lamp&page=2", without what was not asked; empty where nothing was. */
export function writeState(state: ViewState): string {
  const written = new URLSearchParams();
  for (const field of fields) if (state[field] !== "") written.set(field, state[field]);
  if (state.page > 1) written.set("page", String(state.page));
  const text = written.toString();
  return text === "" ? "" : `?${text}`;
}

export const asksNothing = (state: ViewState): boolean => writeState(state) === "";
