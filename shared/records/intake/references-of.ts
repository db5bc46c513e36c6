import { suggestion } from "../../diagnostics/nearest-name.ts";
import { grouping } from "../../lists/grouping.ts";
import type { SourceDocument } from "../../source/document.ts";
import { LeftOut } from "../../source/left-out.ts";
import { type Family, familyFrom } from "../family.ts";
import { variantsFrom } from "../inheritance.ts";
import type { Variant } from "../variant.ts";
import type { Intake } from "./intake.ts";
import { namedRecords } from "./named-records.ts";
import { inOrderOfIssue } from "./order-of-issue.ts";

export interface References {
  readonly families: ReadonlyMap<string, Family>;
  /** In the order of issue. */
  readonly variants: ReadonlyMap<string, Variant>;
  /** The variant that a record names; undefined where there is none, or it cannot be read. */
  readonly variantOf: (document: SourceDocument) => Variant | undefined;
}

/** Families and variants, with what a variant takes from another. */
export function referencesOf(intake: Intake): References {
  const { recordsOf, filesOf, validator, report, tell, fitting, unsound } = intake;
  const families = new Map<string, Family>();
  for (const record of namedRecords(recordsOf("family"), "a different id for each family", report)) {
    const document = fitting(record.document, validator.of("family"));
    const family = familyFrom(record.id, document);
    families.set(record.key, family);
    if (document.leftOut || !record.isNamed) unsound.add(family);
  }

  const named = namedRecords(
    recordsOf("variant"),
    "a different id for each variant in the whole collection",
    report,
  ).map((record) => ({
    ...record,
    family: record.file.split("/")[2] ?? "",
    document: fitting(record.document, validator.of("variant")),
  }));
  const idsOfFiles = new Set(filesOf("variant").map(({ id }) => id));
  const resolved = variantsFrom(named, (id) => idsOfFiles.has(id));
  tell(resolved.diagnostics);
  const claimants = grouping(named, ({ id }) => id);
  const keyed = new Map<Variant, string>();
  for (const [at, variant] of resolved.variants.entries()) {
    const { id, key, isNamed } = named[at] ?? { id: "", key: "", isNamed: false };
    // Of two with one id nobody knows which is meant, so that nothing is known of what is named by it.
    const isClear = claimants.get(id)?.length === 1;
    const known = isClear ? variant : { ...variant, leftOut: new LeftOut([[]]) };
    keyed.set(known, key);
    if (known.leftOut || !isNamed) unsound.add(known);
  }
  const variants = new Map(
    inOrderOfIssue([...keyed.keys()]).map((variant) => [keyed.get(variant) ?? "", variant]),
  );

  return {
    families,
    variants,
    variantOf: (document) => {
      const { variant: id, serial } = (document.data ?? {}) as { variant?: unknown; serial?: unknown };
      if (typeof id !== "string") return undefined;
      // Whoever refers to a record that is there but cannot be read is told of the record only.
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
