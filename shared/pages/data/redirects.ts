import type { OutputFile } from "./output-file.ts";
import { xmlText } from "./xml.ts";

interface Moved {
  readonly id: string;
  readonly title: string;
  readonly formerly: readonly string[];
}

/** A page at each former address, which leads to the present one without JavaScript. */
export const redirects = (
  kind: "items" | "articles",
  records: readonly Moved[],
  language: string,
): OutputFile[] =>
  records.flatMap(({ id, title, formerly }) =>
    formerly.map((former) => ({
      address: `/${kind}/${former}/index.html`,
      text: [
        "<!doctype html>",
        `<html lang="${xmlText(language)}">`,
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
