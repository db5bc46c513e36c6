import { kept } from "../assets/short-style.ts";

/** The element around our pages in somebody else's layout. */
const around = ".fittedcase";
const within = `:where(${around}, ${around} *)`;

interface Statement {
  readonly prelude: string;
  /** What stands in braces; null where the statement ends with a semicolon. */
  readonly block: string | null;
}

const marks = new RegExp(`${kept}|[{};]`, "g");

function statementsOf(text: string): Statement[] {
  const found: Statement[] = [];
  let [depth, from, opened] = [0, 0, 0];
  for (const { 0: mark, index } of text.matchAll(marks)) {
    if (mark === "{" && depth++ === 0) opened = index;
    if ((mark === "}" && --depth === 0) || (mark === ";" && depth === 0)) {
      found.push({
        prelude: text.slice(from, mark === "}" ? opened : index).trim(),
        block: mark === "}" ? text.slice(opened + 1, index) : null,
      });
      from = index + 1;
    }
  }
  return found;
}

const brackets = new RegExp(`${kept}|[()[\\],]`, "g");

/** A list of selectors, of which one may hold a list in brackets. */
function selectorsOf(prelude: string): string[] {
  const found: string[] = [];
  let [depth, from] = [0, 0];
  for (const { 0: mark, index } of prelude.matchAll(brackets)) {
    if (mark === "(" || mark === "[") depth++;
    else if (mark === ")" || mark === "]") depth--;
    else if (mark === "," && depth === 0) {
      found.push(prelude.slice(from, index));
      from = index + 1;
    }
  }
  return [...found, prelude.slice(from)].map((selector) => selector.trim());
}

/** A pseudo-element ends its selector (Selectors Level 4, 3.6), so that the condition stands before it. */
const confinedSelector = (selector: string): string =>
  selector
    .replace(/^(?:html|body|:root)(?![\w-])/, around)
    .replace(/(?:::[\w-]+(?:\([^)]*\))?)?$/, (pseudo) => within + pseudo);

const rem = /(?<![\w.#-])(-?(?:\d+\.)?\d+|-?\.\d+)rem\b/g;

/** Where the host has made its own rem small, ours is what a browser begins with. */
const startingRem = (text: string): string => text.replace(rem, "calc($1*max(1rem,16px))");

/** What our root says of the size of type is said of a measure of our own, since the root is the host's. */
const confinedBlock = (prelude: string, block: string): string =>
  prelude === "html"
    ? block.replace(/(?<![\w-])font-size:([^;]+)/, (_, size: string) => `--rem:${startingRem(size)}`)
    : block.replace(rem, "calc($1*var(--rem))");

/**
 * A style sheet of ours that says nothing of what stands around our pages: each rule holds for what is within the
 * element around them, and what the root and the body have is that element's. Its text is as `shortStyle` leaves it.
 */
export const confinedStyle = (text: string): string =>
  statementsOf(text)
    .map(({ prelude, block }) => {
      if (block === null) return `${prelude};`;
      if (/^@(?:media|supports|container|layer)\b/.test(prelude))
        return `${prelude}{${confinedStyle(block)}}`;
      if (prelude.startsWith("@")) return `${prelude}{${block}}`;
      return `${selectorsOf(prelude).map(confinedSelector).join(",")}{${confinedBlock(prelude, block)}}`;
    })
    .join("\n");
