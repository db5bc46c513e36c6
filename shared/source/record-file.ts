import matter from "gray-matter";
import { type Diagnostic, diagnose } from "../diagnostics/diagnostic.ts";
import { locusBetween, startOf } from "../diagnostics/place.ts";
import type { Path, SourceDocument } from "./document.ts";
import { frontMatterIn } from "./front-matter.ts";
import { readYaml, type YamlText, yamlLocator } from "./yaml.ts";

export interface RecordResult {
  readonly document: SourceDocument | null;
  readonly diagnostics: readonly Diagnostic[];
}

function sourceDocument(source: YamlText, data: unknown, body: string): SourceDocument {
  let locator: ReturnType<typeof yamlLocator> | undefined;
  return {
    file: source.file,
    data,
    body,
    locate(path: Path, at = "value") {
      locator ??= yamlLocator(source);
      return locator(path, at);
    },
  };
}

/** A file that is YAML, or JSON, from beginning to end. */
export function yamlRecord(file: string, text: string): RecordResult {
  const source = { file, text, start: 0, end: text.length };
  const { data, diagnostics } = readYaml(source);
  return { document: diagnostics.length > 0 ? null : sourceDocument(source, data, ""), diagnostics };
}

/** A Markdown file with front matter. */
export function markdownRecord(file: string, text: string): RecordResult {
  const refuse = (diagnostic: Diagnostic): RecordResult => ({ document: null, diagnostics: [diagnostic] });
  const opening = /^---([^\r\n]*)/.exec(text);
  if (!opening) {
    return refuse(
      diagnose("front-matter-missing", startOf(file, text), {
        found: text === "" ? "an empty file" : "text without front matter",
        expected: 'a first line of three hyphens, "---", and the record below it',
      }),
    );
  }
  // gray-matter takes a word after the hyphens for the name of a language, and some of its languages run code.
  if (opening[1]?.trim()) {
    return refuse(
      diagnose("front-matter-language", locusBetween(file, text, 0, opening[0].length), {
        found: `"${opening[0].trim()}"`,
        expected: 'three hyphens alone, "---"',
        remedy: "Front matter is YAML, and nothing in it is run.",
      }),
    );
  }
  const stretch = frontMatterIn(text);
  const closingLine = stretch ? (/^[^\n]*/.exec(text.slice(stretch.end))?.[0] ?? "") : "";
  if (!stretch || closingLine.trim() !== "---") {
    const locus = stretch
      ? locusBetween(file, text, stretch.end, stretch.end + closingLine.length)
      : startOf(file, text);
    return refuse(
      diagnose("front-matter-unclosed", locus, {
        found: stretch ? `"${closingLine.trim().slice(0, 40)}"` : "front matter that never ends",
        expected: 'a closing line of three hyphens, "---"',
      }),
    );
  }
  const source = { file, text, ...stretch };
  let read: ReturnType<typeof readYaml> = { data: {}, diagnostics: [] };
  // An options object also keeps gray-matter from remembering a text whose reading failed.
  const { content } = matter(text, {
    language: "yaml",
    engines: {
      yaml: () => {
        read = readYaml(source);
        return {};
      },
    },
  });
  if (read.diagnostics.length > 0) return { document: null, diagnostics: read.diagnostics };
  return { document: sourceDocument(source, read.data ?? {}, content), diagnostics: [] };
}
