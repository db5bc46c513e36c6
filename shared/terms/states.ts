/** What a record may say of a part, and of an item as a whole: as the schemas have it, in the order in which it is offered. */
export const states = ["present", "absent", "substitute", "unverified", "not-issued"] as const;
export type State = (typeof states)[number];

/** How a part belongs to its outfit. */
export const standings = ["core", "issued", "consumable", "optional"] as const;
export type Standing = (typeof standings)[number];

/** The standings that make an outfit complete; consumables and optional parts are counted apart. */
export const isMain = (standing: Standing): boolean => standing === "core" || standing === "issued";

/** What has become of an outfit that is nowhere to be had. */
export const fates = ["lost", "stolen", "destroyed"] as const;
export type Fate = (typeof fates)[number];

export const statuses = ["collection", "offered", "sold", "reference", ...fates] as const;
export type Status = (typeof statuses)[number];

export const isFate = (status: Status): status is Fate => (fates as readonly string[]).includes(status);

/** Whether an outfit is at hand, so that a part can be put into it or taken out of it. */
export const isAtHand = ({ status }: { readonly status: Status }): boolean =>
  status === "collection" || status === "offered";
