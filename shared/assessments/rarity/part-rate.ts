import type { Part } from "../../records/variant.ts";
import { wilson } from "../../statistics/wilson.ts";
import { type Basis, type Figure, figure, withheld } from "../figure.ts";
import { statement } from "../statement.ts";
import { type Example, recordedShare } from "./examples.ts";

/** Of the examples whose state of a part is recorded, the share that has it whole. A substitute is not it. */
export function assessPartRate(part: Part, examples: readonly Example[], confidence: number): Figure {
  let recorded = 0;
  let having = 0;
  const sources = new Set<string | undefined>();
  for (const example of examples) {
    const share = recordedShare(example, part.id);
    if (!share) continue;
    recorded++;
    if (share.low === 1) having++;
    for (const { source } of example.rows) sources.add(source);
  }
  const basis: Basis = {
    unit: "share",
    confidence,
    method: "wilson",
    inputs: { having, recorded },
    sources,
    caveats: [statement("assumes-even-chance")],
  };
  return recorded === 0
    ? withheld(statement("nothing-recorded-of-part"), basis)
    : figure(wilson(having, recorded, confidence), basis);
}
