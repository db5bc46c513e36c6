import { readFileSync, statSync } from "node:fs";
import path from "node:path";
import type { Audience } from "../../publication/published.ts";
import { packageFolder, packageVersion } from "../../source/package-folder.ts";
import type { CollectionTexts, RecordText } from "../../source/read-texts.ts";
import { digest } from "../digest.ts";
import type { AroundGroup } from "../files/group-site.ts";
import { contentsBelow } from "../files-below.ts";
import type { Attachments } from "../groups/attachments.ts";
import type { FamilyGroup } from "../groups/family-groups.ts";

/** A process goes on with the code that it has loaded, whatever becomes of the files. */
let codeKey: string | undefined;

/**
 * The tool itself: its version and that of what it runs on, its code as it is compiled, its schemas and style sheets,
 * and whatever the user puts in the place of its templates.
 */
export function toolKey(root: string, audience: Audience): string {
  codeKey ??= contentsBelow(path.join(packageFolder, "dist"));
  return digest(
    audience,
    packageVersion,
    process.version,
    readFileSync(path.join(packageFolder, "package.json"), "utf8"),
    codeKey,
    contentsBelow(path.join(packageFolder, "schemas/records")),
    contentsBelow(path.join(packageFolder, "templates/styles")),
    contentsBelow(path.join(root, "templates")),
  );
}

/** Photographs and recordings are large, so they are known by what the disk says of them. */
function stampOf(root: string, file: string): string {
  const stat = statSync(path.join(root, file), { bigint: true, throwIfNoEntry: false });
  return stat ? `${stat.size} ${stat.mtimeNs} ${stat.ctimeNs} ${stat.ino}` : "none";
}

export const keyOfTexts = (texts: readonly RecordText[]): string =>
  digest(...texts.flatMap(({ file, hash }) => [file, hash]));

/** Of everything that the site is made from. */
export const siteKey = (
  tool: string,
  root: string,
  { texts, beside, diagnostics }: CollectionTexts,
): string =>
  digest(
    tool,
    keyOfTexts(texts),
    // What cannot be read has no text.
    ...diagnostics.map(({ file, message }) => `${file} ${message}`),
    ...[...beside].flatMap((file) => [file, stampOf(root, file)]),
  );

/** Of all that a group is given besides its own files: the tool, what is around every page, and what all share. */
export function aroundKey(
  tool: string,
  { frame, grouped: { shared, itemCount }, watched }: AroundGroup,
): string {
  const { assets, logo, hasArticles } = frame.site;
  const others = [assets, logo, hasArticles, frame.hidden, watched, itemCount];
  return digest(tool, keyOfTexts(shared), JSON.stringify(others));
}

/** Of everything that a group's files are made from: its pipeline is given this and nothing else. */
export function groupKey(
  around: string,
  root: string,
  { texts, compared }: FamilyGroup,
  beside: Attachments,
): string {
  const items = texts.filter(({ kind }) => kind === "item");
  return digest(
    around,
    keyOfTexts(texts),
    JSON.stringify([...compared]),
    ...attachmentStamps(root, items, beside),
  );
}

/** Of what items show of what lies beside them. */
export function attachmentStamps(root: string, items: readonly RecordText[], beside: Attachments): string[] {
  const files = new Set(items.flatMap((item) => beside.of(item)));
  return [...files].flatMap((file) => [file, stampOf(root, file)]);
}
