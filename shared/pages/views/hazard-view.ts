import type { PublishedHazard } from "../../publication/published.ts";
import type { Link } from "../page.ts";
import type { Named } from "../search/search-index.ts";

export interface HazardView {
  readonly id: string;
  readonly name: string;
  readonly caution: string;
  readonly source: string;
  readonly url: string | null;
  readonly concerns: readonly Link[];
}

/** The hazards of a part by the names of their cautions on the same page. */
export const namedHazards = (ids: readonly string[], cautions: readonly Named[]): Named[] =>
  cautions.flatMap(({ id, name }) => (ids.includes(id) ? { id, name } : []));

/** A caution with the parts that it concerns, by name. */
export const hazardViews = (
  hazards: readonly PublishedHazard[],
  parts: readonly { readonly id: string; readonly name: string }[],
): HazardView[] =>
  hazards.map((hazard) => ({
    id: hazard.id,
    name: hazard.name,
    caution: hazard.caution,
    source: hazard.source,
    url: hazard.url !== null && /^https?:\/\//i.test(hazard.url) ? hazard.url : null,
    concerns: [
      ...hazard.parts.map((id) => ({
        address: `#part-${id}`,
        name: parts.find((part) => part.id === id)?.name ?? id,
      })),
      ...hazard.extras.map((name) => ({ address: "", name })),
    ],
  }));
