import type { Explained } from "./explained.ts";
import { labelled, type Setting } from "./figure-lines.ts";

const verdicts = {
  confirmed:
    "Confirmed. What was observed agrees, and something speaks against every other variant of the family.",
  consistent: "Consistent. Nothing speaks against it, but something else is still possible.",
  contradicted: "Contradicted. Something observed is not found with this variant.",
} as const;
const alone = "Confirmed. What was observed agrees, and its family has no other variant on record.";
const verdictColours = { confirmed: "green", consistent: "yellow", contradicted: "red" } as const;

/** Is it what it is held to be, and what to look at next. */
export function identificationLines({ item, family }: Explained, setting: Setting): string[] {
  const { verdict, candidates, lookNext, caveats } = item.identification;
  const featureName = (id: string) =>
    id === "serial" ? "serial" : (item.features.find((feature) => feature.id === id)?.name ?? id);
  const seen = item.features.filter(({ value }) => value !== null);
  const isAlone = verdict === "confirmed" && candidates.length === 1;
  const [first, ...others] = (isAlone ? alone : verdicts[verdict]).split(". ");
  return [
    `  ${setting.paint(verdictColours[verdict], `${first}.`)} ${others.join(". ")}`,
    ...(seen.length > 0
      ? labelled("observed", seen.map(({ name, value }) => `${name}: ${value}`).join("; "), setting)
      : labelled("observed", "no feature", setting)),
    ...caveats.flatMap((caveat) => labelled("bear in mind", caveat, setting)),
    ...candidates.flatMap(({ name, variant, contradictions, unobserved }) => [
      `  ${name} (${variant})`,
      ...labelled(
        "against it",
        contradictions.length > 0 ? contradictions.map(featureName).join(", ") : "nothing",
        setting,
        4,
      ),
      ...(unobserved.length > 0
        ? labelled("not looked at", unobserved.map(featureName).join(", "), setting, 4)
        : []),
    ]),
    ...lookNext.flatMap((id, at) => {
      const look =
        id === "serial"
          ? setting.words.pages.item.serialTells
          : family?.features.find((feature) => feature.id === id)?.look;
      return labelled(
        at === 0 ? "look next at" : "",
        `${featureName(id)}${look ? `. ${look}` : ""}`,
        setting,
      );
    }),
  ];
}
