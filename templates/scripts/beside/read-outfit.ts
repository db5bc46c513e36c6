import type { ComparedOutfit } from "../../../shared/pages/compare/compare-rows.ts";
import type { PublishedItem, PublishedItemPart } from "../../../shared/publication/published.ts";
import type { ComparedUnits } from "../../../shared/publication/unit-contrast.ts";

/** As much of an outfit's data file as is read here. */
interface OutfitRecord extends Omit<PublishedItem, "parts"> {
  readonly parts: Readonly<
    Record<string, Omit<PublishedItemPart, "id" | "marks"> & { readonly marksExpected: readonly string[] }>
  >;
}

/** Null where there is no such outfit. */
export async function readOutfit(address: URL): Promise<ComparedOutfit | null> {
  const response = await fetch(address);
  if (response.status === 404) return null;
  if (!response.ok) throw response;
  const record = (await response.json()) as OutfitRecord;
  return {
    ...record,
    verdict: record.identification.verdict,
    issued: record.dating.issued,
    parts: Object.entries(record.parts).map(([id, part]) => ({ ...part, id, marks: part.marksExpected })),
  };
}

/** What tells outfits apart by a part; null where its variant has no such part. */
export function unitsOf({ parts }: ComparedOutfit, id: string): ComparedUnits | null {
  const part = parts.find((each) => each.id === id);
  if (!part) return null;
  const mark = part.matching?.verdict ?? null;
  return {
    ...part.units,
    share: part.share,
    models: part.lines.flatMap(({ model }) => model ?? []),
    marks: mark === "unread" ? null : mark,
    dating: part.dating?.verdict === "later" ? "later" : null,
  };
}
