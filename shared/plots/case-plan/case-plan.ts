import type { PartSummary } from "../../publication/published.ts";
import type { PlotOptions } from "../../words/plot-words.ts";
import { type Box, inset } from "../drawing/box.ts";
import { coordinate, element, escapeXml } from "../drawing/svg-markup.ts";
import { textWidth } from "../drawing/text-width.ts";
import { twoWidths } from "../drawing/two-widths.ts";
import { type Band, bandsOf, type CasePlanPart, type StateWord, stateOfPart } from "./case-plan-part.ts";
import { type CasePlanTray, casePlanTray, type PlanPlace, rim } from "./case-plan-tray.ts";
import { type CompartmentLabel, keyLabel, usualSize } from "./compartment-label.ts";
import { type Surface, surfaceMarkup } from "./surface.ts";

export { casePlanThumbnail } from "./case-plan-thumbnail.ts";
export type { CasePlanPart };

export interface CasePlanOptions extends PlotOptions {
  /** A state by itself, or with how many units are in it. */
  readonly stateWord: StateWord;
  /** What stands before a part's id in its link; "#part-" where unsaid. */
  readonly linkPrefix?: string;
  /** Whether the wider of the two is for a display card. */
  readonly onCard?: boolean;
}

/** Every state that a compartment may be in. */
const states: readonly PartSummary[] = [
  "present",
  "substitute",
  "unverified",
  "unexamined",
  "absent",
  "not-issued",
];

/**
 * The sign of an item: its parts as compartments of a fitted tray, each in its state and linked to its line in
 * the list. The links are the text equivalent: each names its part and the state.
 */
export function casePlan(parts: readonly CasePlanPart[], options: CasePlanOptions): string {
  const ofIssue = parts.every((part) => part.summary === undefined);
  const stateWords = states.map((state) => options.stateWord(state));
  const longest = stateWords.reduce((a, b) => (textWidth(b, 10) > textWidth(a, 10) ? b : a));
  return twoWidths("case-plan", options.idPrefix, (breadth) =>
    drawPlan(
      parts,
      options,
      breadth === "wide" && options.onCard ? "card" : breadth,
      ofIssue ? null : longest,
    ),
  );
}

/** A compartment with its part as it was found; its number is given where all compartments of a plan are known. */
interface Compartment {
  readonly part: CasePlanPart;
  readonly box: Box;
  readonly surface: Surface;
  readonly bands: readonly Band[];
  readonly wording: string;
  /** All that is said of its state, and as much of it as there is room for. */
  readonly state: string | null;
  readonly shown: string | null;
  /** In place of all of it, where there is room for a number alone. */
  readonly sign: string;
  readonly label: CompartmentLabel;
  /** As it is drawn, by its number; an empty one where it has room for a name. */
  readonly drawn: Map<string, string>;
}

/** All that the plans of one variant's examples have in common, with every compartment that one of them needed. */
interface PlanSheet {
  readonly words: CasePlanOptions["words"]["plots"]["casePlan"];
  readonly tray: CasePlanTray;
  /** As the eye meets the compartments in the tray. */
  readonly readingOrder: readonly number[];
  readonly compartmentOf: (at: number, part: CasePlanPart) => Compartment;
}

/** Most compartments of an example look as they do in the next: a plan is put together from those that were drawn. */
const sheets = new WeakMap<CasePlanTray, Map<string, PlanSheet>>();

function planSheet(
  parts: readonly CasePlanPart[],
  options: CasePlanOptions,
  planPlace: PlanPlace,
  longestState: string | null,
): PlanSheet {
  const words = options.words.plots.casePlan;
  const wordings = parts.map((part) => words.part(part.name, part.quantity));
  const tray = casePlanTray(
    parts.map(({ weight, plan }, at) => ({ weight, plan, wording: wordings[at] ?? "" })),
    longestState,
    planPlace,
  );
  const ofTray = sheets.get(tray) ?? new Map<string, PlanSheet>();
  sheets.set(tray, ofTray);
  const key = [options.linkPrefix, ...parts.map(({ id }) => id)].join(" ");
  const before = ofTray.get(key);
  if (before?.words === words) return before;

  const nowhere: Box = { x: 0, y: 0, width: 0, height: 0 };
  const boxOf = (at: number): Box => tray.boxes[at] ?? nowhere;
  const known = new Map<string, Compartment>();
  const sheet: PlanSheet = {
    words,
    tray,
    readingOrder: [...parts.keys()].sort((a, b) => boxOf(a).y - boxOf(b).y || boxOf(a).x - boxOf(b).x),
    compartmentOf(at, part) {
      const said = stateOfPart(part, options.stateWord);
      const state = said?.full ?? null;
      const look = `${at} ${part.summary} ${state}`;
      const before = known.get(look);
      if (before) return before;
      const bands = bandsOf(part);
      const surface: Surface = bands.length > 0 ? "several" : (part.summary ?? "issued");
      const wording = wordings[at] ?? "";
      const shown = tray.hasRoomFor(at, said) ? state : (said?.short ?? null);
      const label = tray.labelOf(at, shown);
      const sign = said?.sign ?? "";
      const box = boxOf(at);
      const now = { part, box, surface, bands, wording, state, shown, sign, label, drawn: new Map() };
      known.set(look, now);
      return now;
    },
  };
  // Links from many pages differ: a sheet for one of them alone is not worth keeping for long.
  if (ofTray.size >= 32) ofTray.clear();
  ofTray.set(key, sheet);
  return sheet;
}

function drawPlan(
  parts: readonly CasePlanPart[],
  options: CasePlanOptions,
  planPlace: PlanPlace,
  longestState: string | null,
): string {
  const { tray, readingOrder, compartmentOf } = planSheet(parts, options, planPlace, longestState);
  const compartments = parts.map((part, at) => compartmentOf(at, part));
  // Numbers for the compartments that have no room for a name.
  const keyed = readingOrder.filter((at) => (compartments[at]?.label.level ?? 0) >= 3);
  const keys = new Map(keyed.map((at, place) => [at, String(place + 1)]));
  const edge = rim[planPlace];
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
    element("rect", { class: "case-plan-edge", ...outer, rx: edge }),
    element("rect", { class: "case-plan-lip", ...inner, rx: edge / 2 + 1 }),
    ...compartments.map((compartment, at) => compartmentIn(compartment, keys.get(at), options)),
  );
  return (
    svg +
    drawKey(
      keyed.flatMap((at) => compartments[at] ?? []),
      options,
    )
  );
}

function compartmentIn(compartment: Compartment, key: string | undefined, options: CasePlanOptions): string {
  const before = compartment.drawn.get(key ?? "");
  if (before !== undefined) return before;
  const now = drawCompartment(compartment, key, options);
  compartment.drawn.set(key ?? "", now);
  return now;
}

function drawCompartment(
  { part, box, surface, bands, wording, state, shown, sign, label: itsOwn }: Compartment,
  key: string | undefined,
  options: CasePlanOptions,
): string {
  const label = key === undefined ? itsOwn : keyLabel(box, shown, key, sign);
  const words = options.words.plots.casePlan;
  // About its own middle, where its writing stands, so that no line of it has to say where that is.
  const { width, height } = box;
  const middle = { x: box.x + width / 2, y: box.y + height / 2 };
  const lines = label.lines
    .map(({ text, kind, y }) =>
      element("text", { class: kind === "name" ? undefined : kind, y: y - middle.y }, escapeXml(text)),
    )
    .join(" ");
  const size = label.lines[0]?.size;
  // What is written in full is the name of the link; a number, and what is cut short, need one.
  const named = words.partState(wording, state);
  const written = label.lines[0]?.text ?? "";
  const title = key === undefined ? (shown === state ? null : named) : words.keyed(written, named);
  return element(
    "a",
    {
      class: `surface-${surface}`,
      href: `${options.linkPrefix ?? "#part-"}${part.id}`,
      transform: `translate(${coordinate(middle.x)} ${coordinate(middle.y)})`,
      "font-size": size === usualSize ? undefined : size,
    },
    title === null ? "" : element("title", {}, escapeXml(title)),
    surfaceMarkup(surface, { x: -width / 2, y: -height / 2, width, height }, bands),
    label.turned ? element("g", { transform: "rotate(-90)" }, lines) : lines,
  );
}

/** What the numbers stand for. The links say it already, so it is for the eye alone. */
function drawKey(keyed: readonly Compartment[], { words }: CasePlanOptions): string {
  const entries = keyed.map(({ box, wording, state, shown, sign }, place) => {
    const text = escapeXml(words.plots.casePlan.partState(wording, state));
    const [number] = keyLabel(box, shown, String(place + 1), sign).lines;
    return element("li", {}, element("b", {}, escapeXml(number?.text ?? "")), ` ${text}`);
  });
  return entries.length === 0
    ? ""
    : element("ul", { class: "case-plan-keys", "aria-hidden": "true" }, ...entries);
}
