import type { PublishedItem, PublishedItemPart } from "../../publication/published.ts";
import { isMain } from "../../terms/states.ts";
import type { Words } from "../../words/words.ts";
import { plain, stateInWords } from "../views/item-parts.ts";
import { missedMostFirst, someUnits } from "../views/missing-parts.ts";

/** A part as a finding names it. */
export interface Finding {
  /** Of its line in the list of parts; empty where the reference does not list it. */
  readonly address: string;
  readonly name: string;
  readonly detail: string | null;
}

export interface FindingList {
  readonly id: string;
  readonly label: string;
  readonly findings: readonly Finding[];
  readonly note: string | null;
}

/** What is not there, or not certain, or more than was issued: only lists that have something in them. */
export function findingLists(item: PublishedItem, words: Words): FindingList[] {
  const { item: say } = words.pages;
  const { count, share } = words.numbers;
  const { completeness, parts } = item;
  const findings = (
    ids: readonly string[],
    detail: (part: PublishedItemPart) => string | null,
    ordered = (found: PublishedItemPart[]) => found,
  ): Finding[] =>
    ordered(parts.filter(({ id }) => ids.includes(id))).map((part) => ({
      address: `#part-${part.id}`,
      name: part.name,
      detail: detail(part),
    }));
  /** What was meant to be used up, or was never in every case, is missed less, and says so. */
  const gone = (ids: readonly string[], detail: (part: PublishedItemPart) => string | null): Finding[] =>
    findings(
      ids,
      (part) => {
        const told = [isMain(part.standing) ? null : words.pages.standings[part.standing], detail(part)];
        return told.filter((each) => each !== null).join("; ") || null;
      },
      missedMostFirst,
    );
  const rate = ({ rate: { value } }: PublishedItemPart) =>
    value === null ? null : say.foundIn(share(value));
  const some = (told: "unverified" | "unexamined") => (part: PublishedItemPart) =>
    someUnits(part, told, words);
  const models = (part: PublishedItemPart) =>
    [...new Set(part.lines.flatMap(({ model }) => (model === null ? [] : [plain(model)])))].join(", ") ||
    null;

  const lists: FindingList[] = [
    list("missing", gone(completeness.missing, rate)),
    list(
      "partial",
      gone(completeness.partial, (part) => stateInWords(part, words)),
    ),
    list("substitutes", findings(completeness.substitutes, models)),
    list("unverified", findings(completeness.unverified, some("unverified"))),
    list("unexamined", findings(completeness.unexamined, some("unexamined"))),
    list(
      "otherSet",
      findings(
        parts.filter(({ matching }) => matching?.verdict === "other-set").map(({ id }) => id),
        ({ matching }) =>
          matching?.otherSet ? say.setNumber(matching.otherSet, matching.otherItem?.name ?? null) : null,
      ),
    ),
    list(
      "surplus",
      findings(completeness.surplus, ({ units }) => `+ ${count(units.surplus)}`),
    ),
    list(
      "extras",
      completeness.extras.map((extra) => ({
        address: "",
        name: extra.quantity > 1 ? `${extra.name} × ${count(extra.quantity)}` : extra.name,
        detail: extra.note,
      })),
    ),
    list(
      "assembled",
      findings(item.assembled, () => null),
      say.assembledNote,
    ),
  ];
  function list(id: keyof typeof say.lists, found: Finding[], note: string | null = null): FindingList {
    return { id, label: say.lists[id], findings: found, note };
  }
  return lists.filter((each) => each.findings.length > 0);
}
