import type { Report } from "../report.ts";
import type { Part, Variant } from "../variant.ts";

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
  const sound = placed.filter(({ id, plan }) => {
    const [x, y, width, height] = plan;
    if (x >= 0 && y >= 0 && width > 0 && height > 0) return true;
    const finding = {
      found: `[${plan.join(", ")}]`,
      expected: "left and top of at least 0, width and height above 0",
    };
    if (isOwn(id)) report("plan-overlap", document, ["parts", id, "plan"], finding);
    return false;
  });

  let clashes = sound.flatMap(({ id, plan }, at) =>
    sound.slice(0, at).flatMap((other) => (overlap(plan, other.plan, tray) ? [[id, other.id]] : [])),
  );
  // One that lies over many is the one to mend: it is told of once, and not at each of those below it.
  while (clashes.length > 0) {
    const counts = new Map<string, number>();
    for (const id of clashes.flat()) counts.set(id, (counts.get(id) ?? 0) + 1);
    const most = Math.max(...counts.values());
    const worst = [...counts].filter(([, count]) => count === most).map(([id]) => id);
    const id = worst.find(isOwn) ?? worst[0] ?? "";
    const others = clashes.flatMap((pair) =>
      pair.includes(id) ? pair.filter((other) => other !== id).reverse() : [],
    );
    clashes = clashes.filter((pair) => !pair.includes(id));
    // Of two inherited compartments, the variant that they come from is told.
    if (isOwn(id)) tell(id, others);
    else if (others.every(isOwn)) for (const other of others) tell(other, [id]);
  }

  function tell(id: string, others: readonly string[]): void {
    const named = others.slice(0, 3).map((other) => `"${other}"`);
    const more = others.length - named.length;
    const list = more > 0 ? [...named, `${more} more`] : named;
    const isHolder = others.length > 2 && others.length === sound.length - 1;
    report("plan-overlap", document, ["parts", id, "plan"], {
      found: `a compartment of "${id}" that overlaps ${others.length > 1 ? "those" : "that"} of ${joined(list)}`,
      expected: isHolder
        ? "compartments side by side, and none for the part that holds all the others"
        : "compartments side by side",
    });
  }
}

const joined = (list: readonly string[]): string =>
  list.length < 2 ? list.join("") : `${list.slice(0, -1).join(", ")} and ${list.at(-1)}`;
