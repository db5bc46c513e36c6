import { itemSchemaFor, namesOnlyKnown } from "../../validation/item-schema.ts";
import type { Validate, Validator } from "../../validation/validator.ts";
import type { Family } from "../family.ts";
import type { Variant } from "../variant.ts";

/** What holds items against the schema that all share, and against that of their variant only where something is wrong. */
export function itemValidators(
  validator: Validator,
  families: ReadonlyMap<string, Family>,
): (variant: Variant | undefined) => Validate {
  const shared = validator.of("item");
  const schema = validator.schemas.get("item");
  const narrowed = new Map<string, Validate>();
  const narrowedTo = (variant: Variant, features: Family["features"]): Validate => {
    const known = narrowed.get(variant.id);
    if (known || !schema) return known ?? shared;
    const validate = validator.by(itemSchemaFor(schema, variant, features));
    narrowed.set(variant.id, validate);
    return validate;
  };
  return (variant) => {
    if (!variant) return shared;
    const features = families.get(variant.family)?.features ?? new Map();
    return (document) => {
      const isSound = shared(document).length === 0 && namesOnlyKnown(document.data, variant, features);
      return isSound ? [] : narrowedTo(variant, features)(document);
    };
  };
}
