/** Which outfits are ticked: kept while the tab is open, so that they last from one list to another. */
const key = "fittedcase-ticked";

export function readTicks(): Set<string> {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(key) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((id): id is string => typeof id === "string") : []);
  } catch {
    return new Set();
  }
}

/** A browser that keeps nothing still has what is ticked on this page. */
export function keepTicks(ticks: ReadonlySet<string>): void {
  try {
    sessionStorage.setItem(key, JSON.stringify([...ticks]));
  } catch {
    // Nothing to do: the boxes themselves say it.
  }
}

export function showTicks(within: ParentNode): void {
  const ticks = readTicks();
  for (const box of within.querySelectorAll<HTMLInputElement>(".tick-box"))
    box.checked = ticks.has(box.value);
}
