import type { Part } from "../../records/variant.ts";
import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { statement } from "../statement.ts";
import { type Example, recordedShare } from "./examples.ts";
import { namelessInput, namelessOf, namingNameless } from "./nameless.ts";
import { sourcesOfExamples } from "./survivors.ts";

/** Of the examples whose state of a part is recorded, the share that has it whole. A substitute is not it. */
export function assessPartRate(part: Part, examples: readonly Example[], confidence: number): Figure {
  const recorded: Example[] = [];
  let having = 0;
  let disputed = 0;
  for (const example of examples) {
    const share = recordedShare(example, part.id);
    if (!share) continue;
    recorded.push(example);
    if (share.low === 1 && !example.substituted.has(part.id)) having++;
    if (example.disputed.has(part.id)) disputed++;
  }
  const nameless = namelessOf(recorded);
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: { having, recorded: recorded.length, ...namelessInput(nameless) },
    sources: sourcesOfExamples(recorded),
    caveats: [
      ...(disputed > 0 ? [statement("sightings-differ", { examples: disputed })] : []),
      ...namingNameless(nameless),
      statement("assumes-even-chance"),
    ],
  };
  return recorded.length === 0
    ? withheld(statement("nothing-recorded-of-part"), basis)
    : figure(wilson(having, recorded.length, confidence), basis);
}
