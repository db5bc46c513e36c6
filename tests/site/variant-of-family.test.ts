import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { buildSite } from "../../shared/site/build/build-site.ts";
import { writeFiles } from "../collections/collection.ts";
import { differences, siteFiles } from "../collections/site-files.ts";
import { generated } from "./generated.ts";

/** Which items a template of the user's own has been asked for since. */
const rendered = new Set<string>();
Object.assign(globalThis, { renderedItems: rendered });
const noting = [
  "export default ({ id, title, findings }) => {",
  "  globalThis.renderedItems.add(id);",
  "  return '<h1>' + title + '</h1>' + JSON.stringify(findings);",
  "};\n",
].join("\n");

describe("of a family that is made again", () => {
  let root: string;
  let out: string;
  let scratch: string;
  let ids: readonly string[];

  const fileOf = (id: string) => `content/items/${id}/index.md`;
  const read = (id: string) => readFileSync(path.join(root, fileOf(id)), "utf8");
  const write = (id: string, text: string) => writeFiles(root, { [fileOf(id)]: text });
  const variantOf = (id: string) => /^variant: (.*)$/m.exec(read(id))?.[1] ?? "";
  const familyOf = (id: string) =>
    readdirSync(path.join(root, "schemas/reference")).find((family) =>
      readdirSync(path.join(root, "schemas/reference", family)).includes(`${variantOf(id)}.yaml`),
    );
  const ofVariant = (id: string) => ids.filter((other) => variantOf(other) === variantOf(id)).sort();
  const build = () => buildSite(root, out, "public");
  const expectAsAnew = async () => {
    const fresh = path.join(mkdtempSync(path.join(scratch, "fresh-")), "site");
    await buildSite(root, fresh, "public");
    expect(differences(siteFiles(out), siteFiles(fresh))).toEqual([]);
  };
  /** One item, and another of its family but not of its variant. */
  let one: string;
  let other: string;

  beforeAll(async () => {
    root = generated();
    scratch = mkdtempSync(path.join(tmpdir(), "fittedcase-variants-"));
    out = path.join(scratch, "site");
    writeFiles(root, { "templates/pages/item.js": noting });
    ids = readdirSync(path.join(root, "content/items"));
    one = ids[0] ?? "";
    other =
      ids.find((id) => familyOf(id) === familyOf(one) && variantOf(id) !== variantOf(one)) ?? "no other";
    await build();
  });
  beforeEach(async () => {
    await build();
    rendered.clear();
  });

  it("only those items are made again whose variant has an item that was edited", async () => {
    write(one, `${read(one)}One more word.\n`);
    await build();
    expect([...rendered].sort()).toEqual(ofVariant(one));
    await expectAsAnew();
  });

  it("or whose variant has a sighting more", async () => {
    const log = readdirSync(path.join(root, "content/sightings"))[0] ?? "";
    const file = `content/sightings/${log}`;
    const text = readFileSync(path.join(root, file), "utf8");
    const [header = "", ...rows] = text.trimEnd().split("\r\n");
    const row = rows.find((each) => each.split(",").includes(variantOf(one)));
    writeFiles(root, { [file]: [header, ...rows, row].join("\r\n") });
    await build();
    expect([...rendered].sort()).toEqual(ofVariant(one));
    await expectAsAnew();
  });

  it("all items are made again where a reference was edited", async () => {
    const file = `schemas/reference/${familyOf(one)}/${variantOf(other)}.yaml`;
    const text = readFileSync(path.join(root, file), "utf8");
    writeFiles(root, { [file]: text.replace(/^name: (.*)$/m, "name: $1, as it was called") });
    await build();
    expect([...rendered].sort()).toEqual(ids.filter((id) => familyOf(id) === familyOf(one)).sort());
    await expectAsAnew();
  });

  it("an item by whose mark another is named says that one's new title", async () => {
    write(one, read(one).replace(/marks: \["\d+"\]/, 'marks: ["1204"]'));
    write(
      other,
      read(other)
        .replace(/^set: .*$/m, 'set: "1204"')
        .replace(/^title: .*$/m, "title: The quernstone outfit"),
    );
    await build();
    const page = () => String(siteFiles(out).get(`items/${one}/index.html`));
    expect(page()).toContain("The quernstone outfit");
    write(other, read(other).replace(/^title: .*$/m, "title: The millstone outfit"));
    rendered.clear();
    await build();
    expect(page()).toContain("The millstone outfit");
    expect([...rendered].sort()).toEqual([...ofVariant(one), ...ofVariant(other)].sort());
    await expectAsAnew();
  });

  it("all items are made again as long as one takes something from the data of another", async () => {
    write(one, `${read(one)}\nOf these <figure:variants/${variantOf(other)}/survivors>.\n`);
    await build();
    rendered.clear();
    write(other, `${read(other)}One more word.\n`);
    await build();
    expect(rendered).toContain(one);
    await expectAsAnew();
  });
});
