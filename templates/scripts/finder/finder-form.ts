import { isUnread, numbered } from "../../../shared/pages/search/asked-numbers.ts";
import { meansAsked } from "../../../shared/pages/search/named-apart.ts";
import { fields, type ViewState } from "../../../shared/pages/search/view-state.ts";
import type { Fetched } from "./fetched.ts";

type Control = HTMLInputElement | HTMLSelectElement;

const controlOf = (form: HTMLFormElement, name: string): Control | null => {
  const control = form.elements.namedItem(name);
  return control instanceof HTMLInputElement || control instanceof HTMLSelectElement ? control : null;
};

export function readForm(form: HTMLFormElement): ViewState {
  const entries = fields.map((field) => [field, controlOf(form, field)?.value.trim() ?? ""] as const);
  return { ...Object.fromEntries(entries), page: 1 } as ViewState;
}

/** What an address asks for stays asked for, though no choice in the form has it; an id may be that of several. */
function choose(select: HTMLSelectElement, value: string): void {
  select.value = value;
  if (select.value === value) return;
  const meant = [...select.options].filter((option) => meansAsked(value, option.value));
  select.add(new Option(meant.map(({ text }) => text).join("; ") || value, value, false, true));
}

export function writeForm(form: HTMLFormElement, state: ViewState): void {
  for (const field of fields) {
    const control = controlOf(form, field);
    if (!control || control.value.trim() === state[field]) continue;
    if (control instanceof HTMLSelectElement) choose(control, state[field]);
    else control.value = state[field];
  }
  offerVariants(form);
  const isNarrowed = fields.some((field) => field !== "q" && state[field] !== "");
  const more = form.querySelector("details");
  if (more && isNarrowed) more.open = true;
}

/** Beside each blank that cannot be read, what is expected there; while somebody types, it is only taken back. */
export function tellUnread(form: HTMLFormElement, state: ViewState, isTyping: boolean): void {
  for (const field of numbered) {
    const control = controlOf(form, field);
    const told = form.querySelector<HTMLOutputElement>(`#finder-${field}-unread`);
    const unread = isUnread(field, state[field]);
    if (!control || !told || (unread && isTyping)) continue;
    if (unread) control.setAttribute("aria-invalid", "true");
    else control.removeAttribute("aria-invalid");
    const text = unread ? (told.dataset.expected ?? "") : "";
    if (told.value !== text) told.value = text;
  }
}

interface FamilyGroup {
  readonly group: HTMLOptGroupElement;
  readonly isOfFamily: boolean;
  readonly isChosen: boolean;
}

function familyGroups(form: HTMLFormElement, variants: HTMLSelectElement): FamilyGroup[] {
  const family = controlOf(form, "family")?.value ?? "";
  return [...variants.querySelectorAll("optgroup")].map((group) => ({
    group,
    isOfFamily: family === "" || group.dataset.family === family,
    isChosen: group.querySelector("option:checked") !== null,
  }));
}

/** Of the variants only those of the family chosen, and the one that an address asks for beside another family. */
export function offerVariants(form: HTMLFormElement): void {
  const variants = controlOf(form, "variant");
  if (!(variants instanceof HTMLSelectElement)) return;
  for (const { group, isOfFamily, isChosen } of familyGroups(form, variants)) {
    group.hidden = !isOfFamily && !isChosen;
    group.disabled = group.hidden;
  }
}

/** Whoever chooses a family no longer asks for a variant of another. */
export function leaveVariant(form: HTMLFormElement): void {
  const variants = controlOf(form, "variant");
  if (!(variants instanceof HTMLSelectElement)) return;
  const isOfOther = familyGroups(form, variants).some((each) => each.isChosen && !each.isOfFamily);
  if (isOfOther) variants.value = "";
}

const mostPlaces = 400;

/** Parts and places, which are too many to stand in every page: of the family or variant chosen, or of all. */
export function offerDetails(form: HTMLFormElement, { details, catalogue }: Fetched): void {
  if (!details) return;
  const places = form.querySelector("datalist");
  if (places && places.childElementCount === 0) {
    const order = new Intl.Collator(document.documentElement.lang);
    const named = [...details.details.places].sort(order.compare).slice(0, mostPlaces);
    places.append(...named.map((place) => new Option(place, place)));
  }
  const missing = controlOf(form, "missing");
  if (!(missing instanceof HTMLSelectElement)) return;
  const [family, variant] = ["family", "variant"].map((name) => controlOf(form, name)?.value ?? "");
  const { variants, families } = catalogue.index;
  const names = new Map<string, string>();
  variants.forEach((each, at) => {
    if (variant !== "" && each.id !== variant) return;
    if (family !== "" && families[each.family]?.id !== family) return;
    for (const { id, name } of details.details.parts[at] ?? []) if (!names.has(id)) names.set(id, name);
  });
  const chosen = missing.value;
  const [any] = missing.options;
  const order = new Intl.Collator(document.documentElement.lang);
  const offered = [...names].sort(([, a], [, b]) => order.compare(a, b));
  missing.replaceChildren(...(any ? [any] : []), ...offered.map(([id, name]) => new Option(name, id)));
  choose(missing, chosen);
}
