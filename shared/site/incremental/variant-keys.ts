import { addUnder } from "../../lists/grouping.ts";
import type { RecordText } from "../../source/read-texts.ts";
import { digest } from "../digest.ts";
import type { SoundGroup } from "../files/group-site.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";
import { mentioned } from "../groups/written-record.ts";
import { keyOfTexts } from "./site-keys.ts";

/**
 * By variant, the key of everything that the pages and data of its items are made from: all examples and sightings of
 * the variant, the references of the group, the outfits whose sets its marks name, and the serials that its texts
 * must not give away. There are no such keys where some text takes something from the data of others.
 */
export function variantKeys(
  { texts, compared }: FamilyGroup,
  {
    published: { items, variants },
    sightings,
    hidden,
  }: Pick<SoundGroup, "published" | "sightings" | "hidden">,
  /** Of all that a group is given besides its own files. */
  around: string,
  attachmentStamps: (items: readonly RecordText[]) => readonly string[],
): ReadonlyMap<string, string> {
  if (texts.some((text) => mentioned(text)?.length !== 0)) return new Map();
  const references = texts.filter(({ kind }) => kind === "family" || kind === "variant");
  const aroundAll = digest(around, keyOfTexts(references), JSON.stringify(hidden));

  const variantOf = new Map(items.map(({ id, variant }) => [id, variant.id]));
  const textsOf = new Map<string, RecordText[]>();
  for (const text of texts) {
    const variant = text.kind === "item" ? variantOf.get(text.id) : undefined;
    if (variant !== undefined) addUnder(textsOf, variant, text);
  }
  const namedIn = new Map<string, unknown[]>();
  for (const { variant, parts } of items) {
    for (const { matching } of parts) {
      if (matching?.otherItem) addUnder(namedIn, variant.id, matching.otherItem);
    }
  }
  const rowsOf = new Map<string, unknown[]>();
  for (const { variant, document } of sightings) addUnder(rowsOf, variant, document.data);

  return new Map(
    variants.map(({ id }) => {
      const own = textsOf.get(id) ?? [];
      const others = [compared.has(id), namedIn.get(id), rowsOf.get(id)];
      return [id, digest(aroundAll, id, keyOfTexts(own), JSON.stringify(others), ...attachmentStamps(own))];
    }),
  );
}
