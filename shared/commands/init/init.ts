import { existsSync, mkdirSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { type Command, type Terminal, UsageError } from "../command.ts";
import { writeNewFile } from "../writing/write-new-file.ts";
import { type Choices, starterFiles } from "./starter-files.ts";

const defaults: Choices = { title: "My cased outfits", language: "en" };
const isLanguage = (text: string) => /^[A-Za-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/.test(text);

/** Flags first; then whoever sits at the terminal; then the defaults. */
async function choose(given: Partial<Choices>, ask: Terminal["ask"]): Promise<Choices> {
  const answer = async (field: keyof Choices, question: string) =>
    given[field] ?? ((await ask?.(`${question} [${defaults[field]}] `)) || defaults[field]);
  const title = await answer("title", "Title of the catalogue?");
  const language = await answer("language", "Language of the site, such as en?");
  return { title, language };
}

/** What lies out of sight, such as an operating system leaves it, makes a folder no fuller; but one file of ours is of that kind. */
const isNoticed = (name: string) => !name.startsWith(".") || name === ".gitignore";

function refuseUnlessEmpty(folder: string, shown: string): void {
  if (!existsSync(folder)) return;
  if (!statSync(folder).isDirectory())
    throw new UsageError(`Found a file, ${shown}; expected a new or empty folder.`);
  const [first, ...more] = readdirSync(folder).filter(isNoticed);
  if (first === undefined) return;
  const others = more.length === 0 ? "" : ` and ${more.length} more`;
  throw new UsageError(`Found "${first}"${others} in ${shown}; expected a new or empty folder.`);
}

export const init: Command = {
  usage: "fittedcase init DIR [--title T] [--language L] [--yes]",
  help: [
    "Writes a starter collection, ready to build, into a new or empty folder: a family, two variants, one item as a",
    "worked example with comments, a log of sightings and its sources. All of it is invented and says so; replace it",
    "bit by bit with your own.",
    "",
    "  --title T      title of the catalogue",
    "  --language L   language of the site (BCP 47), such as en",
    "  --yes          ask nothing, use the defaults",
    "",
    'Example: fittedcase init my-cases --title "The cases at Ferry House"',
    "Exit codes: 0 done; 2 the folder is not empty, or the command is wrong.",
  ].join("\n"),
  async run(args, { cwd, out, ask }) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        title: { type: "string" },
        language: { type: "string" },
        yes: { type: "boolean", default: false },
      },
    });
    const [dir, ...more] = positionals;
    if (dir === undefined || more.length > 0)
      throw new UsageError(`Found ${positionals.length} folders; expected one.`);
    const root = path.resolve(cwd, dir);
    const isHere = root === path.resolve(cwd);
    refuseUnlessEmpty(root, isHere ? "this folder" : `"${dir}"`);
    const { title, language } = await choose(
      {
        ...(values.title === undefined ? {} : { title: values.title }),
        ...(values.language === undefined ? {} : { language: values.language }),
      },
      values.yes ? undefined : ask,
    );
    if (!isLanguage(language)) {
      throw new UsageError(
        `Found "${language}" as a language; expected a BCP 47 tag, such as "en" or "de-AT".`,
      );
    }
    if (!/^[^\n]*\S[^\n]*$/.test(title))
      throw new UsageError("Found an empty title; expected one line of text.");
    const files = starterFiles({ title, language });
    mkdirSync(root, { recursive: true });
    for (const [file, text] of files) writeNewFile(root, file, text);
    const where = isHere ? "this folder" : dir;
    const quoted = /\s/.test(dir) ? `"${dir}"` : dir;
    out(
      [
        `Wrote ${files.size} files into ${where}. The records are invented: they show what goes where.`,
        "",
        `  fittedcase check --root ${quoted}                     every problem at once`,
        `  fittedcase build --root ${quoted}                     the site, in ${path.join(dir, "_site")}`,
        `  fittedcase new family ID --root ${quoted}             a family of your own, then variants and items`,
        `  fittedcase import sightings FILE.csv --root ${quoted} a spreadsheet, as it is`,
      ].join("\n"),
    );
    return 0;
  },
};
