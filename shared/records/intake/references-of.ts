import { suggestion } from "../../diagnostics/nearest-name.ts";
import { grouping } from "../../lists/grouping.ts";
import type { SourceDocument } from "../../source/document.ts";
import { type Family, familyFrom } from "../family.ts";
import { type Variant, variantsFrom } from "../variant.ts";
import type { Intake } from "./intake.ts";
import { namedRecords } from "./named-records.ts";
import { inOrderOfIssue } from "./order-of-issue.ts";

export interface References {
  readonly families: ReadonlyMap<string, Family>;
  /** In the order of issue. */
  readonly variants: ReadonlyMap<string, Variant>;
  /** The variant that a record names; undefined where there is none that is sound. */
  readonly variantOf: (document: SourceDocument) => Variant | undefined;
}

/** Families and variants, with what a variant takes from another. */
export function referencesOf(intake: Intake): References {
  const { recordsOf, filesOf, validator, report, tell, isSound } = intake;
  const families = new Map<string, Family>();
  for (const { id, document } of namedRecords(
    recordsOf("family"),
    "a different id for each family",
    report,
  )) {
    if (isSound(document, validator.of("family"))) families.set(id, familyFrom(id, document));
  }

  // A variant of a family that is there but broken is left out, since it is the family that is to be mended.
  const isBroken = (family: string) =>
    !families.has(family) && filesOf("family").some(({ id }) => id === family);
  // So is one of two with one id: nobody knows which of them is meant by it.
  const claimants = grouping(recordsOf("variant"), ({ id }) => id);
  const variantFiles = namedRecords(
    recordsOf("variant"),
    "a different id for each variant in the whole collection",
    report,
  )
    .filter(({ document }) => isSound(document, validator.of("variant")))
    .map(({ id, file, document }) => ({ id, family: file.split("/")[2] ?? "", document }))
    .filter(({ id, family }) => !isBroken(family) && claimants.get(id)?.length === 1);
  const idsOfFiles = new Set(filesOf("variant").map(({ id }) => id));
  const resolved = variantsFrom(variantFiles, (id) => idsOfFiles.has(id));
  tell(resolved.diagnostics);
  const variants = new Map(inOrderOfIssue(resolved.variants).map((variant) => [variant.id, variant]));

  return {
    families,
    variants,
    variantOf: (document) => {
      const { variant: id, serial } = (document.data ?? {}) as { variant?: unknown; serial?: unknown };
      if (typeof id !== "string") return undefined;
      // Whoever refers to a record that is there but broken is told of the record only.
      if (!idsOfFiles.has(id)) {
        report("unknown-variant", document, ["variant"], {
          found: `"${id}"`,
          expected: "the id of a variant reference",
          remedy: idsOfFiles.has(String(serial))
            ? "Variant and serial are swapped."
            : suggestion(id, variants.values()),
        });
      }
      return variants.get(id);
    },
  };
}
