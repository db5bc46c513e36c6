const key = "fittedcase-ticked";

/** Which outfits are ticked. What the browser keeps is a copy: one that keeps nothing has them on this page all the same. */
let ticks: ReadonlySet<string> = kept() ?? new Set();

/** Null where nothing is kept. */
function kept(): Set<string> | null {
  try {
    const read: unknown = JSON.parse(sessionStorage.getItem(key) ?? "null");
    return Array.isArray(read) ? new Set(read.filter((id): id is string => typeof id === "string")) : null;
  } catch {
    return null;
  }
}

/** They are kept while the tab is open, so that they last from one list to another. */
function keep(): void {
  try {
    sessionStorage.setItem(key, JSON.stringify([...ticks]));
  } catch {
    // Nothing to do: they are known on this page all the same.
  }
}

export function tick(id: string, isTicked: boolean): void {
  const others = [...ticks].filter((each) => each !== id);
  ticks = new Set(isTicked ? [...others, id] : others);
  keep();
}

export function untickAll(): void {
  ticks = new Set();
  keep();
}

/** In the order in which they were ticked. */
export const ticked = (): readonly string[] => [...ticks];

/** Another page may have been ticked on since. */
export function readTicks(): void {
  ticks = kept() ?? ticks;
}

export function showTicks(within: ParentNode): void {
  for (const box of within.querySelectorAll<HTMLInputElement>(".tick-box"))
    box.checked = ticks.has(box.value);
}
