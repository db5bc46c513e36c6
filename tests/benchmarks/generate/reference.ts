import type { Random } from "./random.ts";

export interface GeneratedVariant {
  readonly id: string;
  readonly name: string;
  readonly family: string;
  readonly prefix: string;
  readonly firstSerial: number;
  readonly made: number;
  readonly issuedFrom: number;
  readonly issuedTo: number;
  /** One value a feature; null where it is found with several. */
  readonly features: readonly (string | null)[];
  readonly parts: readonly GeneratedPart[];
}

export interface GeneratedPart {
  readonly id: string;
  readonly quantity: number;
  readonly bearsSet: boolean;
}

export const featureCount = 10;
export const partCount = 30;
const variantsInFamily = 6;
const values = ["plain", "ribbed", "pierced"] as const;
const hazards = ["flammable", "mercury"] as const;

const standingOf = (part: number): string =>
  part < 6 ? "core" : part < 24 ? "issued" : part < 28 ? "consumable" : "optional";

/** Families and variants as the contract has them, by path. */
export function generateReference(
  random: Random,
  count: number,
  words: readonly string[],
  names: readonly string[],
): { readonly variants: readonly GeneratedVariant[]; readonly files: ReadonlyMap<string, string> } {
  const files = new Map<string, string>();
  const variants: GeneratedVariant[] = [];
  for (let family = 0; variants.length < count; family++) {
    const id = `family-${family + 1}`;
    const name = `${names[family % names.length]} outfit`;
    const groups = ["case", "instrument", "tools"];
    files.set(
      `schemas/reference/${id}/family.yaml`,
      [
        `name: ${name}`,
        `maker: ${names[(family * 7 + 3) % names.length]} and Sons (invented)`,
        "groups:",
        ...groups.map((group) => `  ${group}: The ${group}`),
        "features:",
        ...Array.from(
          { length: featureCount },
          (_, at) =>
            `  feature-${at + 1}: { name: ${words[200 + family * 3 + at]} ${at + 1}, values: [${values.join(", ")}], look: "On the ${words[at + 20]}.", effort: ${1 + (at % 3)} }`,
        ),
        "",
      ].join("\n"),
    );
    const partWords = Array.from(
      { length: partCount },
      (_, at) => words[300 + ((family * 31 + at) % 900)] ?? "",
    );
    for (let within = 0; within < variantsInFamily && variants.length < count; within++) {
      const issuedFrom = 1860 + random.below(80);
      const made = 400 + random.below(1600);
      const variant: GeneratedVariant = {
        id: `variant-${variants.length + 1}`,
        name: `${name}, pattern ${within + 1}`,
        family: id,
        prefix: String.fromCharCode(65 + (family % 26), 65 + within),
        firstSerial: 1001,
        made,
        issuedFrom,
        issuedTo: issuedFrom + 1 + random.below(8),
        // The first features tell the variants of a family apart, as digits of their number do.
        features: Array.from({ length: featureCount }, (_, at) => {
          if (at < 2) return values[Math.floor(within / 3 ** at) % 3] ?? null;
          return random.chance(0.2) ? null : random.pick(values);
        }),
        parts: partWords.map((_, at) => ({
          id: `part-${at + 1}`,
          quantity: at % 10 === 3 ? 2 + (at % 3) : 1,
          bearsSet: at < 8,
        })),
      };
      variants.push(variant);
      files.set(`schemas/reference/${id}/${variant.id}.yaml`, variantText(variant, partWords, random));
    }
  }
  return { variants, files };
}

function variantText(variant: GeneratedVariant, partWords: readonly string[], random: Random): string {
  const { prefix, firstSerial, made, issuedFrom, issuedTo } = variant;
  return [
    `id: ${variant.id}`,
    `name: ${variant.name}`,
    `issued: ${issuedFrom}/${issuedTo}`,
    `made: { count: ${made}, source: ledger }`,
    "serials:",
    `  - { prefix: ${prefix}, from: ${firstSerial}, to: ${firstSerial + made - 1}, made: ${issuedFrom}/${issuedTo}, source: ledger }`,
    "features:",
    ...variant.features.map((value, at) => `  feature-${at + 1}: ${value ?? `[${values.join(", ")}]`}`),
    "parts:",
    ...variant.parts.map(({ id, quantity, bearsSet }, at) => {
      const fields = [
        `name: The ${partWords[at]} no. ${at + 1}`,
        `group: ${at < 4 ? "case" : at < 14 ? "instrument" : "tools"}`,
        `standing: ${standingOf(at)}`,
        ...(quantity === 1 ? [] : [`quantity: ${quantity}`]),
        `weight: ${1 + random.below(10)}`,
        ...(bearsSet ? ['marks: ["{set}"]'] : []),
        ...(at === 25 || at === 26 ? [`hazards: [${hazards[at - 25]}]`] : []),
        ...(at % 7 === 5 ? ["accepts: [{ model: later, credit: 0.5 }]"] : []),
      ];
      return `  ${id}: { ${fields.join(", ")} }`;
    }),
    "levels:",
    "  - { id: as-issued, name: Complete as issued, needs: { standing: [core, issued, consumable] } }",
    "  - { id: less-consumables, name: Complete less consumables, needs: { standing: [core, issued] } }",
    "  - { id: principal-parts, name: Principal parts only, needs: { standing: [core] } }",
    "",
  ].join("\n");
}
