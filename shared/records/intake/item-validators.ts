import { isLeftOut } from "../../source/document.ts";
import { itemSchemaFor, namesOnlyKnown } from "../../validation/item-schema.ts";
import type { Validate, Validator } from "../../validation/validator.ts";
import type { Family } from "../family.ts";
import { mayHaveMore } from "../names-left-out.ts";
import type { Variant } from "../variant.ts";

/** What holds items against the schema that all share, and against that of their variant only where something is wrong. */
export function itemValidators(
  validator: Validator,
  families: ReadonlyMap<string, Family>,
): (variant: Variant | undefined) => Validate {
  const shared = validator.of("item");
  const schema = validator.schemas.get("item");
  const narrowed = new Map<Variant, Validate>();
  return (variant) => {
    if (!variant || !schema) return shared;
    // Of a variant of which nothing is known it is not even known which family it is of.
    const family = isLeftOut(variant) ? undefined : families.get(variant.family);
    const features = family?.features ?? new Map();
    const more = {
      parts: mayHaveMore(variant, "parts"),
      features: !family || mayHaveMore(family.document, "features"),
    };
    return (document) => {
      const isSound = shared(document).length === 0 && namesOnlyKnown(document.data, variant, features, more);
      if (isSound) return [];
      const validate = narrowed.get(variant) ?? validator.by(itemSchemaFor(schema, variant, features, more));
      narrowed.set(variant, validate);
      return validate(document);
    };
  };
}
