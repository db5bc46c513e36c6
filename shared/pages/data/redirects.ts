import type { PublishedCollection } from "../../publication/published.ts";
import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

/** A page at each former address, which leads to the present one without JavaScript. */
export function redirects(collection: PublishedCollection): OutputFile[] {
  const leading = (
    kind: string,
    records: readonly { id: string; title: string; formerly: readonly string[] }[],
  ) =>
    records.flatMap(({ id, title, formerly }) =>
      formerly.map((former) => ({
        address: `/${kind}/${former}/index.html`,
        text: [
          "<!doctype html>",
          `<html lang="${xmlText(collection.settings.language)}">`,
          '<meta charset="utf-8">',
          `<meta http-equiv="refresh" content="0; url=../${id}/">`,
          `<link rel="canonical" href="../${id}/">`,
          `<title>${xmlText(title)}</title>`,
          `<p><a href="../${id}/">${xmlText(title)}</a></p>`,
          "</html>",
          "",
        ].join("\n"),
      })),
    );
  return [...leading("items", collection.items), ...leading("articles", collection.articles)];
}
