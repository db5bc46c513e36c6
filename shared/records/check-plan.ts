import type { Report } from "./report.ts";
import type { Part, Variant } from "./variant.ts";

type Plan = NonNullable<Part["plan"]>;

/** Two compartments may touch; a tenth of a thousandth of the tray is a matter of rounding. */
function overlap(one: Plan, other: Plan, tray: number): boolean {
  const least = tray * 1e-4;
  const shared = (from: 0 | 1, size: 2 | 3) =>
    Math.min(one[from] + one[size], other[from] + other[size]) - Math.max(one[from], other[from]);
  return shared(0, 2) > least && shared(1, 3) > least;
}

/** The compartments of a case plan: inside the tray, whose corner is 0, 0, and beside one another. */
export function checkPlan(
  { parts, document }: Variant,
  report: Report,
  isOwn: (part: string) => boolean,
): void {
  const placed = [...parts.values()].flatMap(({ id, plan }) => (plan ? [{ id, plan }] : []));
  const tray = Math.max(
    0,
    ...placed.map(({ plan: [x, y, width, height] }) => Math.max(x + width, y + height)),
  );
  for (const [at, { id, plan }] of placed.entries()) {
    const path = ["parts", id, "plan"];
    const [x, y, width, height] = plan;
    if (isOwn(id) && (x < 0 || y < 0 || width <= 0 || height <= 0)) {
      const finding = {
        found: `[${plan.join(", ")}]`,
        expected: "left and top of at least 0, width and height above 0",
      };
      report("plan-overlap", document, path, finding);
      continue;
    }
    // Of two inherited compartments, the variant that they come from is told.
    const other = placed
      .slice(0, at)
      .find((each) => (isOwn(id) || isOwn(each.id)) && overlap(plan, each.plan, tray));
    if (!other) continue;
    report("plan-overlap", document, ["parts", isOwn(id) ? id : other.id, "plan"], {
      found: `a compartment of "${id}" that lies over that of "${other.id}"`,
      expected: "compartments side by side",
    });
  }
}
