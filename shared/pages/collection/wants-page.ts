import { addresses } from "../addresses/addresses.ts";
import { linkedData } from "../citation/linked-data.ts";
import type { CatalogueIndex } from "../listed/catalogue-index.ts";
import { joinedParts, type PartOfItem, type WantedParts } from "../listed/wanted-parts.ts";
import type { Link, PageHead } from "../page.ts";
import type { ReallocationView } from "../variant/variant-completing.ts";

/** What the whole collection lacks and could give: the list that somebody carries to a fair. */
export interface WantsPage extends PageHead {
  readonly kind: "wants";
  /** What would add most comes first; `more` says that there are others. */
  readonly wanted: readonly PartOfItem[];
  readonly moreWanted: string | null;
  readonly spare: readonly PartOfItem[];
  readonly moreSpare: string | null;
  readonly completed: readonly { readonly variant: Link; readonly view: ReallocationView }[];
}

export function wantsPage({ collection, words, listed }: CatalogueIndex): WantsPage {
  const say = words.pages.wants;
  const wanted = joinedParts(listed.map((family) => family.wanted));
  const spare = joinedParts(listed.map((family) => family.spare));
  const more = ({ parts, count }: WantedParts) =>
    count > parts.length ? words.pages.item.andMore(count - parts.length) : null;
  return {
    kind: "wants",
    address: addresses.wants,
    title: say.title,
    description: say.description,
    trail: [{ address: addresses.home, name: collection.settings.title }],
    linkedData: linkedData(collection, "CollectionPage", addresses.wants, { name: say.title }),
    wanted: wanted.parts,
    moreWanted: more(wanted),
    spare: spare.parts,
    moreSpare: more(spare),
    completed: listed
      .flatMap(({ variants }) => variants)
      .flatMap(({ id, name, completed: view }) => {
        if (!view) return [];
        const address = addresses.variant(id);
        // The moves name parts of the variant's own page.
        const moves = view.moves.map((move) => ({
          ...move,
          part: { ...move.part, address: `${address}${move.part.address}` },
        }));
        return [{ variant: { address, name }, view: { ...view, moves } }];
      }),
  };
}
