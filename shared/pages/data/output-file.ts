/** A file of the site that is not a page. */
export interface OutputFile {
  /** From the root of the site, beginning with a slash. */
  readonly address: string;
  readonly text: string;
}

/** Every digit is kept: the same figures as on the pages, before rounding. */
export const jsonFile = (address: string, data: unknown): OutputFile => ({
  address,
  text: `${JSON.stringify(data)}\n`,
});
