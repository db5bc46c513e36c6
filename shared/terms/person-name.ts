/** A name in parts, as CSL-JSON has it; `literal` for a body, and for a name that has none. */
export interface PersonName {
  readonly family?: string;
  readonly given?: string;
  readonly literal?: string;
}

/** As it is spoken. */
export const nameInFull = ({ literal, family, given }: PersonName): string =>
  literal ?? [given, family].filter(Boolean).join(" ");
