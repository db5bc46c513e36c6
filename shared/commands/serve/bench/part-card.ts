import { xmlText } from "../../../pages/data/xml.ts";
import type { Part } from "../../../records/variant.ts";
import type { BenchWords } from "../../../words/en/bench.ts";
import type { Words } from "../../../words/words.ts";
import { rangeWords } from "../../new/range-words.ts";
import { type Caution, cautionHtml } from "../../words/cautions.ts";
import { markWords } from "../../words/mark-words.ts";
import { valueVersion } from "./bench-record.ts";
import { linesOf, shownValue } from "./submitted-changes.ts";

/** What every form on the page carries. */
export interface FormFrame {
  readonly action: string;
  readonly key: string;
  readonly say: BenchWords;
  readonly words: Words;
}

/** A sentence with its numbers, each in the place that bears its name. */
export const filled = (sentence: string, numbers: Readonly<Record<string, number>>): string =>
  sentence.replace(/\{(\w+)\}/g, (place, name: string) => String(numbers[name] ?? place));

/** The states of a part, with what its page calls them; the first is no state. */
const choicesIn = ({ choices: { unexamined, ...states } }: BenchWords): (readonly [string, string])[] => [
  ["", unexamined],
  ...Object.entries(states),
];

export const hidden = (name: string, value: string): string =>
  `<input type="hidden" name="${name}" value="${xmlText(value)}">`;

/**
 * A form for a value of the record, of which it says what that was. It saves itself where there is a script, and has a
 * button where there is none.
 */
export const savingForm = (
  { action, key, say }: FormFrame,
  value: unknown,
  attributes: string,
  inside: string,
): string =>
  `<form method="post" action="${xmlText(action)}" autocomplete="off" ${attributes}>${hidden("key", key)}${hidden("version", valueVersion(value))}${inside}<p class="saving"><button type="submit" class="save">${say.save}</button> <span role="status"></span></p></form>`;

/** Large targets, one of which is chosen. */
export const chosenOf = (
  name: string,
  legend: string,
  options: readonly (readonly [value: string, label: string])[],
  chosen: string,
): string =>
  `<fieldset class="choices"><legend class="unseen">${xmlText(legend)}</legend>${options
    .map(
      ([value, label]) =>
        `<label><input type="radio" name="${xmlText(name)}" value="${xmlText(value)}"${value === chosen ? " checked" : ""}><span>${xmlText(label)}</span></label>`,
    )
    .join("")}</fieldset>`;

export const field = (name: string, label: string, value: string, more = ""): string =>
  `<label class="field"><span>${xmlText(label)}</span><input type="text" name="${xmlText(name)}" value="${xmlText(value)}" autocomplete="off" autocapitalize="off" spellcheck="false"${more}></label>`;

/** How many, where there are several: chosen from a list while that is short. */
function quantityFields(
  part: Part,
  at: number,
  line: Readonly<Record<string, unknown>>,
  say: BenchWords,
): string {
  const [quantity, rest] = [shownValue(line.quantity), shownValue(line.rest)];
  if (part.quantity === 1 && quantity === "" && rest === "") return "";
  const options = (all: readonly (readonly [string, string])[], chosen: string) =>
    all
      .map(
        ([value, label]) =>
          `<option value="${xmlText(value)}"${value === chosen ? " selected" : ""}>${xmlText(label)}</option>`,
      )
      .join("");
  const numbers = Array.from({ length: Math.min(part.quantity, 24) }, (_, index) => String(index + 1));
  const known = quantity === "" || numbers.includes(quantity) ? numbers : [...numbers, quantity];
  const howMany =
    part.quantity > 24
      ? field(`${at}.quantity`, say.howMany(part.quantity), quantity, ' inputmode="numeric" pattern="[0-9]*"')
      : `<label class="field"><span>${say.howMany(part.quantity)}</span><select name="${at}.quantity">${options(
          [["", say.allIssued], ...known.map((number) => [number, number] as const)],
          quantity,
        )}</select></label>`;
  return `${howMany}<label class="field"><span>${say.others}</span><select name="${at}.rest">${options(choicesIn(say), rest)}</select></label>`;
}

function lineFields(
  part: Part,
  at: number,
  line: Readonly<Record<string, unknown>>,
  several: boolean,
  say: BenchWords,
): string {
  const value = (name: string) => shownValue(line[name]);
  const models = [...part.accepts.keys()];
  const list = models.length > 0 ? ` list="models-${part.id}"` : "";
  const said = ["model", "serial", "marks", "condition", "evidence", "note"].some(
    (name) => value(name) !== "",
  );
  const chosen = chosenOf(
    `${at}.state`,
    several ? say.entryOf(part.name, at + 1) : part.name,
    choicesIn(say),
    value("state"),
  );
  return `${several ? `<p class="entry">${say.entry(at + 1)}</p>` : ""}${chosen}${quantityFields(part, at, line, say)}
<details${said ? " open" : ""}><summary>${say.more}</summary>
${field(`${at}.marks`, say.fields.marks, value("marks"))}${field(`${at}.serial`, say.fields.serial, value("serial"))}${field(`${at}.condition`, say.fields.condition, value("condition"))}${field(`${at}.model`, say.fields.model, value("model"), list)}${field(`${at}.evidence`, say.fields.evidence, value("evidence"))}<label class="field"><span>${say.fields.note}</span><textarea name="${at}.note" rows="2">\n${xmlText(value("note"))}</textarea></label></details>`;
}

/** One part: its caution, then what to look for, then what was found. */
export function partCard(
  part: Part,
  raw: unknown,
  set: string | undefined,
  register: ReadonlyMap<string, Caution>,
  frame: FormFrame,
  another: boolean,
): string {
  const { say, words } = frame;
  const lines = linesOf(raw);
  const shown = lines.length === 0 || another ? [...lines, {}] : lines;
  const several = shown.length > 1;
  const cautions = part.hazards.flatMap((id) => register.get(id) ?? []);
  const marks = part.marks.map((mark) => markWords(mark, set, say));
  const facts = [
    part.look && xmlText(part.look),
    marks.length > 0 && xmlText(say.marks(marks.join("; "))),
    part.serials.length > 0 && xmlText(say.serials(rangeWords(part.serials, words))),
    part.accepts.size > 0 && xmlText(say.accepts([...part.accepts.keys()].join(", "))),
  ].filter(Boolean);
  const models =
    part.accepts.size > 0
      ? `<datalist id="models-${part.id}">${[...part.accepts.keys()].map((model) => `<option value="${xmlText(model)}"></option>`).join("")}</datalist>`
      : "";
  const more =
    part.quantity > 1
      ? `<p class="small more"${lines.length === 0 || another ? " hidden" : ""}><a href="?another=${part.id}#part-${part.id}">${say.anotherEntry}</a></p>`
      : "";
  return `<article class="part" id="part-${part.id}" data-name="${xmlText(part.name)}" aria-labelledby="name-${part.id}">
<h3 id="name-${part.id}">${xmlText(part.name)} <small>${[words.pages.standings[part.standing], ...(part.quantity > 1 ? [say.issued(part.quantity)] : [])].join(", ")}</small></h3>
${cautions.map((each) => `<p class="caution"><strong>${say.caution(cautionHtml(each.nameInText, each))}</strong> ${cautionHtml(each.caution, each)} <cite>${xmlText(each.source)}</cite></p>`).join("")}
${facts.length > 0 ? `<p class="look">${facts.join(" ")}</p>` : ""}
${savingForm(frame, raw, `data-part="${part.id}"`, `${hidden("part", part.id)}${shown.map((line, at) => lineFields(part, at, line, several, say)).join("")}${models}`)}
${more}</article>`;
}
