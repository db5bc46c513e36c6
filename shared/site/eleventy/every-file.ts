import { type Diagnostic, isError } from "../../diagnostics/diagnostic.ts";
import type { ListedFamily } from "../../pages/listed/listed-family.ts";
import type { Audience, PublishedCollection } from "../../publication/published.ts";
import { readTexts } from "../../source/read-texts.ts";
import { checkCollection } from "../checks/check-collection.ts";
import { groupSite } from "../files/group-site.ts";
import type { SiteFile } from "../files/site-file.ts";
import { siteFrame } from "../files/site-frame.ts";
import { wholeSite } from "../files/whole-site.ts";
import { groupFamilies } from "../groups/family-groups.ts";
import type { SiteFiles } from "./add-site.ts";

export type EveryFile =
  | { readonly parts: readonly SiteFiles[] }
  | { readonly problems: readonly Diagnostic[]; readonly filesRead: number };

/** A whole site at once, its pages yet to be made: for whoever else is to render them, and has room for all. */
export async function everyFile(root: string, audience: Audience): Promise<EveryFile> {
  const texts = readTexts(root);
  const grouped = groupFamilies(texts);
  const frame = grouped && (await siteFrame(root, audience, texts, grouped));
  const problems = (refused: readonly Diagnostic[]): EveryFile => {
    const { diagnostics, filesRead } = checkCollection(root);
    return { problems: [...diagnostics, ...refused], filesRead };
  };
  if (!grouped || !frame || frame.refused.length > 0) return problems(frame?.refused ?? []);
  const watched = grouped.watched(frame.collection.settings.watching);
  const listed: ListedFamily[] = [];
  const published: PublishedCollection[] = [];
  const files: SiteFile[] = [];
  for (const group of grouped.groups) {
    const site = await groupSite(group, { texts, grouped, watched, frame });
    if (!site.isSound) return problems(site.refused);
    listed.push(...site.listed);
    published.push(site.published);
    for (const file of site.files()) files.push(file);
  }
  listed.sort((a, b) => (a.id < b.id ? -1 : 1));
  const whole = wholeSite(
    frame,
    listed,
    published,
    files.map(({ address }) => address),
  );
  if (whole.diagnostics.some(isError)) return problems([]);
  const ofWhole = whole.pages.map((page): SiteFiles => {
    const made = page.make();
    return { files: [{ kind: "page", address: page.address, make: () => made }], site: whole.siteOf(made) };
  });
  return {
    parts: [{ files: [...files, ...whole.otherFiles(), ...whole.searchFiles], site: frame.site }, ...ofWhole],
  };
}
