/** Of items, or of the photographs of some of them, how many are done. */
export type OnProgress = (what: "items" | "photographs", done: number, of: number) => void;

export type OnPhotographs = (done: number, of: number) => void;
