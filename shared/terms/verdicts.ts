/** Whether an object agrees with its label. */
export const verdicts = ["confirmed", "consistent", "contradicted"] as const;
export type Verdict = (typeof verdicts)[number];
