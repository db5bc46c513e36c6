import type { SourceDocument } from "../source/document.ts";
import { namesLeftOut } from "./names-left-out.ts";
import { type RawRevisions, type Revision, revisionsFrom } from "./revision.ts";
import { asList, type Typed } from "./text.ts";

export interface Feature {
  readonly id: string;
  readonly name: string;
  /** None only where they do not fit. */
  readonly values: readonly string[];
  readonly look: string | undefined;
  /** 1 a glance, 2 handling, 3 dismantling. */
  readonly effort: number;
  readonly note: string | undefined;
}

export interface Family {
  readonly id: string;
  readonly name: string;
  readonly maker: string | undefined;
  readonly description: string | undefined;
  readonly features: ReadonlyMap<string, Feature>;
  /** Names of the groups of parts, in the order of unpacking. */
  readonly groups: ReadonlyMap<string, string>;
  readonly sources: readonly string[];
  readonly formerly: readonly string[];
  /** The newest first. */
  readonly revisions: readonly Revision[];
  readonly document: SourceDocument;
}

interface RawFamily {
  name: string;
  maker?: string;
  description?: string;
  features?: Record<
    string,
    { name: string; values?: Typed[]; look?: string; effort?: number; note?: string }
  >;
  groups?: Record<string, string>;
  sources?: string[];
  formerly?: string[];
  revisions?: RawRevisions;
}

export function familyFrom(id: string, document: SourceDocument): Family {
  const raw = document.data as RawFamily;
  const broken = namesLeftOut(document, "features").map((feature) => [feature, { name: feature }] as const);
  const features: RawFamily["features"] = { ...raw.features, ...Object.fromEntries(broken) };
  return {
    id,
    name: raw.name,
    maker: raw.maker,
    description: raw.description,
    features: new Map(
      Object.entries(features).map(([feature, { name, values, look, effort, note }]) => [
        feature,
        { id: feature, name, values: asList(values).map(String), look, effort: effort ?? 1, note },
      ]),
    ),
    groups: new Map(Object.entries(raw.groups ?? {})),
    sources: asList(raw.sources),
    formerly: asList(raw.formerly),
    revisions: revisionsFrom(raw.revisions),
    document,
  };
}
