import type { PartSummary } from "../publication/published.ts";
import type { PlotOptions } from "../words/plot-words.ts";
import { type Box, inset } from "./box.ts";
import { type CasePlanPart, filledShare } from "./case-plan-part.ts";
import { type CasePlanTray, casePlanTray, rim } from "./case-plan-tray.ts";
import { type CompartmentLabel, keyLabel, usualSize } from "./compartment-label.ts";
import { type Surface, surfaceDefinitions, surfaceMarkup } from "./surface.ts";
import { coordinate, element, escapeXml } from "./svg-markup.ts";
import { textWidth } from "./text-width.ts";
import { type Breadth, twoWidths } from "./two-widths.ts";

export { casePlanThumbnail } from "./case-plan-thumbnail.ts";
export type { CasePlanPart };

export interface CasePlanOptions extends PlotOptions {
  readonly stateWord: (summary: PartSummary) => string;
  /** What stands before a part's id in its link; "#part-" where unsaid. */
  readonly linkPrefix?: string;
}

const summaries: Readonly<Record<PartSummary, true>> = {
  present: true,
  incomplete: true,
  substitute: true,
  unverified: true,
  unexamined: true,
  absent: true,
  "not-issued": true,
};

/**
 * The sign of an item: its parts as compartments of a fitted tray, each in its state and linked to its line in
 * the list. The links are the text equivalent: each names its part and the state.
 */
export function casePlan(parts: readonly CasePlanPart[], options: CasePlanOptions): string {
  const ofIssue = parts.every((part) => part.summary === undefined);
  const stateWords = (Object.keys(summaries) as PartSummary[]).map(options.stateWord);
  const longest = stateWords.reduce((a, b) => (textWidth(b, 10) > textWidth(a, 10) ? b : a));
  return twoWidths("case-plan", options.idPrefix, (breadth, idPrefix) =>
    drawPlan(parts, options, breadth, idPrefix, ofIssue ? null : longest),
  );
}

interface Compartment {
  readonly part: CasePlanPart;
  readonly box: Box;
  readonly surface: Surface;
  readonly wording: string;
  readonly state: string | null;
  readonly label: CompartmentLabel;
  readonly key: string | null;
}

function drawPlan(
  parts: readonly CasePlanPart[],
  options: CasePlanOptions,
  breadth: Breadth,
  idPrefix: string,
  longestState: string | null,
): string {
  const words = options.words.plots.casePlan;
  const wordings = parts.map((part) => words.part(part.name, part.quantity));
  const tray = casePlanTray(
    parts.map(({ weight, plan }, at) => ({ weight, plan, wording: wordings[at] ?? "" })),
    longestState,
    breadth,
  );
  const edge = rim[breadth];
  const unkeyed = parts.map((part, at): Compartment => {
    const box = tray.boxes[at] ?? { x: 0, y: 0, width: 0, height: 0 };
    const wording = wordings[at] ?? "";
    const state = part.summary ? options.stateWord(part.summary) : null;
    const label = tray.labelOf(at, state);
    return { part, box, surface: part.summary ?? "issued", wording, state, label, key: null };
  });
  const compartments = withKeys(unkeyed);
  const { width, height } = tray;
  const outer = inset({ x: 0, y: 0, width, height }, 0.5);
  const inner = inset(outer, edge / 2 - 1);
  const svg = element(
    "svg",
    {
      class: "case-plan-drawing",
      role: "group",
      "aria-label": options.label,
      viewBox: `0 0 ${coordinate(width)} ${coordinate(height)}`,
      width,
      height,
      "font-size": usualSize,
      "text-anchor": "middle",
    },
    surfaceDefinitions(
      compartments.map(({ surface }) => surface),
      idPrefix,
    ),
    element("rect", { class: "case-plan-edge", ...outer, rx: edge }),
    element("rect", { class: "case-plan-lip", ...inner, rx: edge / 2 + 1 }),
    ...compartments.map((compartment) => compartmentIn(tray, compartment, options, idPrefix)),
  );
  return svg + drawKey(compartments, options);
}

/** Numbers for the compartments that have no room for a name, as the eye meets them in the tray. */
function withKeys(compartments: readonly Compartment[]): readonly Compartment[] {
  const places = compartments
    .filter(({ label }) => label.level >= 3)
    .sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x);
  return compartments.map((compartment) => {
    const place = places.indexOf(compartment);
    if (place < 0) return compartment;
    const key = String(place + 1);
    return { ...compartment, key, label: keyLabel(compartment.box, compartment.state, key) };
  });
}

/** Most compartments of an example look as they do in the next: each that was drawn is kept with its tray. */
const drawn = new WeakMap<CasePlanTray, Map<string, string>>();

function compartmentIn(
  tray: CasePlanTray,
  compartment: Compartment,
  options: CasePlanOptions,
  idPrefix: string,
): string {
  const { part, box, surface, wording, state, key } = compartment;
  const words = options.words.plots.casePlan;
  const plain = words.partState(wording, state);
  const name = key === null ? plain : words.keyed(key, plain);
  const link = `${options.linkPrefix ?? "#part-"}${part.id}`;
  const looks = [
    part.id,
    name,
    state,
    surface,
    surface === "incomplete" ? filledShare(part) : 0,
    key,
    idPrefix,
    link,
    box.x,
    box.y,
  ];
  const known = drawn.get(tray) ?? new Map<string, string>();
  drawn.set(tray, known);
  const look = looks.join("\n");
  const before = known.get(look);
  if (before !== undefined) return before;
  const now = drawCompartment(compartment, name, link, idPrefix);
  // Links from many pages differ: what is drawn for one of them alone is not worth keeping for long.
  if (known.size >= 2000) known.clear();
  known.set(look, now);
  return now;
}

function drawCompartment(
  { part, box, surface, label, key }: Compartment,
  name: string,
  link: string,
  idPrefix: string,
): string {
  // About its own middle, where its writing stands, so that no line of it has to say where that is.
  const { width, height } = box;
  const middle = { x: box.x + width / 2, y: box.y + height / 2 };
  const lines = label.lines
    .map(({ text, kind, y }) =>
      element("text", { class: kind === "name" ? undefined : kind, y: y - middle.y }, escapeXml(text)),
    )
    .join(" ");
  const size = label.lines[0]?.size;
  return element(
    "a",
    {
      class: `surface-${surface}`,
      href: link,
      transform: `translate(${coordinate(middle.x)} ${coordinate(middle.y)})`,
      "font-size": size === usualSize ? undefined : size,
    },
    // What is written in full is the name of the link; a number needs one.
    key === null ? "" : element("title", {}, escapeXml(name)),
    surfaceMarkup(surface, { x: -width / 2, y: -height / 2, width, height }, idPrefix, {
      filled: filledShare(part),
    }),
    label.turned ? element("g", { transform: "rotate(-90)" }, lines) : lines,
  );
}

/** What the numbers stand for. The links say it already, so it is for the eye alone. */
function drawKey(compartments: readonly Compartment[], { words }: CasePlanOptions): string {
  const keyed = compartments.filter(({ key }) => key !== null).sort((a, b) => Number(a.key) - Number(b.key));
  const entries = keyed.map(({ key, wording, state }) => {
    const text = escapeXml(words.plots.casePlan.partState(wording, state));
    return element("li", {}, element("b", {}, key ?? ""), ` ${text}`);
  });
  return entries.length === 0
    ? ""
    : element("ul", { class: "case-plan-keys", "aria-hidden": "true" }, ...entries);
}
