import type { EdtfDate } from "../../dates/edtf-interval.ts";
import type { Variant } from "../variant.ts";

/** A beginning that is open came first; one that is not known is told apart by the end, or comes last. */
const first = (issued: EdtfDate | undefined): number => issued?.earliest ?? issued?.latest ?? Infinity;
const last = (issued: EdtfDate | undefined): number => issued?.latest ?? Infinity;

const compare = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

/** Family by family as they came, and within each by when it was first issued, then by when last, then by id. */
export function inOrderOfIssue<Dated extends Pick<Variant, "id" | "family" | "issued">>(
  variants: readonly Dated[],
): Dated[] {
  const families = [...new Set(variants.map(({ family }) => family))];
  const place = new Map(families.map((family, at) => [family, at]));
  return [...variants].sort(
    (a, b) =>
      compare(place.get(a.family) ?? 0, place.get(b.family) ?? 0) ||
      compare(first(a.issued), first(b.issued)) ||
      compare(last(a.issued), last(b.issued)) ||
      (a.id < b.id ? -1 : 1),
  );
}
