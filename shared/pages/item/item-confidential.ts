import type { Confidential, PublishedItem } from "../../publication/published.ts";
import type { CollectionIndex } from "../collection-index.ts";
import { type ObjectIdRecord, objectIdRecord } from "./object-id.ts";

/** What only the owner's own build shows of an item, on its page and in its data. */
export interface ConfidentialView extends Pick<Confidential, "storage" | "paid" | "fields"> {
  readonly objectId: ObjectIdRecord;
}

export function confidentialView(item: PublishedItem, index: CollectionIndex): ConfidentialView | null {
  if (!item.confidential) return null;
  const { distinguishing, maker, storage, paid, fields } = item.confidential;
  return { objectId: objectIdRecord(item, distinguishing, maker, index), storage, paid, fields };
}
