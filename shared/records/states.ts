/** What a record may say of a part, and of an item as a whole: as the schemas have it, in the order in which it is offered. */
export const states = ["present", "absent", "substitute", "unverified", "not-issued"] as const;
export type State = (typeof states)[number];

export const statuses = ["collection", "offered", "sold", "reference"] as const;
export type Status = (typeof statuses)[number];
