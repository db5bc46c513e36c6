import type { Redact } from "../masking.ts";
import { linkAddresses } from "../spared-addresses.ts";
import type { TextProblem } from "./text-problems.ts";

/** Links to elsewhere whose address has a serial that no text may tell: it is printed as it is, so that it leads there. */
export function tellingAddresses(text: string, redact: Redact): TextProblem[] {
  if (redact(text) === text) return [];
  return linkAddresses(text).flatMap(({ start, end }) => {
    const address = text.slice(start, end);
    if (!/^(?:https?|mailto):/i.test(address) || redact(address) === address) return [];
    return {
      code: "private-in-text",
      finding: {
        found: `"${address}", an address with a serial that is masked or hidden`,
        expected: "no published text to contain it",
        remedy: 'Leave the link out, or write "publish: { serial: shown }" in the item.',
      },
      start,
      end,
    };
  });
}
