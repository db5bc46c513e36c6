import type { PublishedItem } from "../../publication/published.ts";
import { addresses } from "../addresses/addresses.ts";
import type { CollectionIndex } from "../collection-index.ts";
import type { Link } from "../page.ts";
import { plain } from "../views/item-parts.ts";

export interface IdentityView {
  readonly verdict: PublishedItem["identification"]["verdict"];
  readonly headline: string;
  readonly sentence: string;
  /** What it is, as far as the evidence goes. */
  readonly finding: string;
  /** What every figure that is counted against the variant claimed must be read with; null where nothing is. */
  readonly reservation: string | null;
  /** What speaks against the variant claimed. */
  readonly against: readonly string[];
  /** What it must be read with. */
  readonly caveats: readonly string[];
  readonly observed: readonly {
    readonly name: string;
    readonly value: string | null;
    readonly expected: string;
    readonly contradicts: boolean;
  }[];
  readonly candidates: readonly {
    readonly variant: Link;
    readonly against: readonly string[];
  }[];
  readonly lookNext: readonly {
    readonly name: string;
    readonly look: string | null;
    readonly effort: string | null;
  }[];
}

export function identityView(item: PublishedItem, index: CollectionIndex): IdentityView {
  const { words, variants, families } = index;
  const { item: say, verdicts, efforts } = words.pages;
  const { verdict, candidates, lookNext, caveats } = item.identification;
  const variant = variants.get(item.variant.id);
  const features = families.get(item.family.id)?.features ?? [];
  const nameOf = (id: string) =>
    id === "serial" ? say.serialWord : (features.find((feature) => feature.id === id)?.name ?? id);
  const expectedOf = (id: string) =>
    variant?.features
      .find((feature) => feature.id === id)
      ?.values.map(plain)
      .join(say.or) ?? "";
  const claimed = candidates.find((candidate) => candidate.variant === item.variant.id);
  const contradictions = claimed?.contradictions ?? [];
  const others = candidates.filter(
    (candidate) => candidate.variant !== item.variant.id && candidate.contradictions.length === 0,
  );
  const fits = others.length === 0 ? say.fitsNone : say.fits(others.map(({ name }) => name).join(say.or));
  const valueSeen = (id: string) => item.features.find((feature) => feature.id === id)?.value ?? "";
  return {
    verdict,
    headline: verdicts[verdict].headline(item.variant.name),
    sentence:
      verdict === "confirmed" && candidates.length === 1
        ? say.onlyVariant
        : verdicts[verdict].sentence(item.variant.name),
    finding: verdict === "contradicted" ? fits : verdicts[verdict].headline(item.variant.name),
    reservation: verdict === "contradicted" ? say.reservation(item.variant.name) : null,
    against: contradictions.map((id) =>
      id === "serial"
        ? say.contradictionSerial
        : say.contradiction(nameOf(id), plain(valueSeen(id)), expectedOf(id)),
    ),
    caveats,
    observed: item.features.map(({ id, name, value }) => ({
      name,
      value: value === null ? null : plain(value),
      expected: expectedOf(id),
      contradicts: contradictions.includes(id),
    })),
    candidates: candidates.map((candidate) => ({
      variant: { address: addresses.variant(candidate.variant), name: candidate.name },
      against: candidate.contradictions.map(nameOf),
    })),
    lookNext: lookNext.flatMap((id): IdentityView["lookNext"] => {
      if (id === "serial") return [{ name: say.serial, look: say.serialTells, effort: null }];
      const feature = features.find((each) => each.id === id);
      return feature
        ? [{ name: feature.name, look: feature.look, effort: efforts[feature.effort] ?? "" }]
        : [];
    }),
  };
}
