import type { BenchWords } from "../../../words/en/bench.ts";

/** Runs in the browser: saves a form when something in it is changed, one after another, and says so. */
interface Saved {
  readonly said: string;
  readonly version: string;
  readonly asks?: string;
  readonly isStale?: boolean;
}

/** What a form asks for and is not on record: it waits for its turn, is tried again by itself, or was refused. */
interface Wish {
  readonly body: URLSearchParams;
  readonly fate: "waiting" | "again" | "refused";
}

/** In the language of the page, which brings them along. */
const words = JSON.parse(document.body.dataset.words ?? "{}") as BenchWords["script"];

const wishes = new Map<HTMLFormElement, Wish>();
/** Each form as it stood when it was shown, or sent. */
const known = new WeakMap<HTMLFormElement, string>();
const tally = document.querySelector<HTMLElement>(".tally");
const unsaved = document.querySelector<HTMLElement>(".unsaved");

/** Longer than a form takes on a poor line; a phone out of reach may else wait for minutes. */
const patience = 15_000;
const untilNextTry = 5_000;

const allForms = () => [...document.querySelectorAll<HTMLFormElement>("form[method=post]")];
const choicesOf = (form: HTMLFormElement) => [
  ...form.querySelectorAll<HTMLInputElement>("input[type=radio]"),
];
const keyOf = (page: Document | Element) =>
  page.querySelector<HTMLInputElement>("input[name=key]")?.value ?? "";
const versionOf = (card: Element | null) => card?.querySelector<HTMLInputElement>("input[name=version]");
const cardOf = (form: HTMLFormElement) => form.closest<HTMLElement>(".part");

function bodyOf(form: HTMLFormElement): URLSearchParams {
  const body = new URLSearchParams([...new FormData(form)].map(([name, value]) => [name, String(value)]));
  for (const name of ["key", "version"]) body.delete(name);
  return body;
}

const isTouched = (form: HTMLFormElement) => String(bodyOf(form)) !== known.get(form);

function tell(form: HTMLFormElement, said: string, failed = false): void {
  const status = form.querySelector<HTMLElement>("[role=status]");
  if (!status || status.textContent === said) return;
  status.textContent = said;
  status.classList.toggle("failed", failed);
}

/** What is on record counts, and not what was tapped and could not be saved. */
function count(): void {
  if (!tally) return;
  const examined = [...document.querySelectorAll<HTMLFormElement>("form[data-part]")].filter((form) =>
    choicesOf(form).some(({ defaultChecked, value }) => defaultChecked && value !== ""),
  );
  const said = words.progress
    .replace("{examined}", String(examined.length))
    .replace("{of}", tally.dataset.of ?? "");
  if (tally.textContent !== said) tally.textContent = said;
}

/** Wherever one is on the page, its foot says what is not on record, and leads there. */
function countUnsaved(): void {
  const failed = [...wishes].filter(([form, { fate }]) => fate !== "waiting" && form.isConnected);
  if (!unsaved) return;
  const links = failed.flatMap(([form], at) => {
    const link = document.createElement("a");
    const card = cardOf(form);
    link.href = `#${card?.id}`;
    link.textContent = card?.dataset.name ?? "";
    return at === 0 ? [link] : [", ", link];
  });
  unsaved.hidden = failed.length === 0;
  const before = words.unsaved.replace("{failed}", String(failed.length));
  const text = before + links.map((each) => (typeof each === "string" ? each : each.textContent)).join("");
  if (unsaved.textContent !== text) unsaved.replaceChildren(before, ...links);
}

function end(form: HTMLFormElement, body: URLSearchParams, fate: Wish["fate"] | null): void {
  // What was changed after it was sent has its own turn.
  if (wishes.get(form)?.body === body) {
    if (fate) wishes.set(form, { body, fate });
    else wishes.delete(form);
  }
  countUnsaved();
}

/** What the form holds by now is what the record says: the choices to go back to. */
function settle(form: HTMLFormElement, body: URLSearchParams): void {
  for (const choice of choicesOf(form)) choice.defaultChecked = body.get(choice.name) === choice.value;
  const more = cardOf(form)?.querySelector<HTMLElement>(".more");
  const chosen = choicesOf(form).filter(({ defaultChecked }) => defaultChecked);
  if (more) more.hidden = chosen.some(({ value }) => value === "");
}

const withdraw = (form: HTMLFormElement) => form.querySelector(".asking")?.remove();

function ask(
  form: HTMLFormElement,
  ...answers: readonly (readonly [label: string, act: () => void])[]
): void {
  withdraw(form);
  const question = document.createElement("p");
  question.className = "asking";
  for (const [label, act] of answers) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button";
    button.textContent = label;
    button.addEventListener("click", act);
    question.append(button);
  }
  form.append(question);
}

/** Something recorded would go: the choices go back to what the record says, until the question is answered. */
function putQuestion(form: HTMLFormElement, body: URLSearchParams, asks: string): void {
  for (const choice of choicesOf(form)) choice.checked = choice.defaultChecked;
  const takeOut = () => {
    for (const choice of choicesOf(form)) choice.checked = body.get(choice.name) === choice.value;
    const meant = new URLSearchParams(body);
    meant.set("confirmed", asks);
    inTurn(form, meant);
  };
  ask(form, [words.takeOut, takeOut], [words.keep, () => inTurn(form)]);
}

/** What is typed here stays until its writer has seen what somebody else wrote. */
function tellOfChange(form: HTMLFormElement, said: string): void {
  tell(form, said, true);
  const show = () => {
    const card = cardOf(form);
    if (card) after(() => renew(card, null));
  };
  ask(form, [words.showFile, show]);
}

async function save(form: HTMLFormElement, body: URLSearchParams): Promise<void> {
  const sent = new URLSearchParams(body);
  sent.set("key", keyOf(form));
  sent.set("version", versionOf(form)?.value ?? "");
  try {
    const response = await fetch(form.action, {
      method: "POST",
      body: sent,
      headers: { accept: "application/json" },
      keepalive: true,
      signal: AbortSignal.timeout(patience),
    });
    if (response.headers.get("content-type")?.startsWith("application/json") !== true) {
      if (response.status === 403 && (await hasNewKey(form))) return save(form, body);
      tell(form, words.notSaved + (await response.text()), true);
      return end(form, body, response.status === 403 || response.status >= 500 ? "again" : "refused");
    }
    const saved = (await response.json()) as Saved;
    if (response.status === 409 && saved.asks === undefined) {
      end(form, body, "refused");
      return tellOfChange(form, saved.said);
    }
    tell(form, saved.said, !response.ok);
    if (response.ok) settle(form, body);
    const isAsked = saved.asks !== undefined && wishes.get(form)?.body === body;
    end(form, body, response.ok || isAsked ? null : response.status >= 500 ? "again" : "refused");
    if (isAsked) putQuestion(form, body, saved.asks ?? "");
    count();
    const [card, version] = [cardOf(form), versionOf(form)];
    // What is sent of a form that shows what is on record no longer is refused.
    if (saved.isStale && card) after(() => renew(card, saved.said));
    else if (response.ok && version) version.value = saved.version;
  } catch {
    tell(form, words.noAnswer, true);
    end(form, body, "again");
  }
}

/** A preview that was started anew has another key, for whoever may see its pages; these forms go on with that. */
async function hasNewKey(form: HTMLFormElement): Promise<boolean> {
  const key = await pageNow(location.href).then(keyOf, () => "");
  if (key === "" || key === keyOf(form)) return false;
  for (const field of document.querySelectorAll<HTMLInputElement>("input[name=key]")) field.value = key;
  return true;
}

let last: Promise<unknown> = Promise.resolve();

/** One after another: what comes back from one is known before the next is sent. */
function after(act: () => Promise<void>): void {
  last = last.then(act).catch(() => {});
}

/** A form is saved as it stands when something in it is changed, and not as it may stand when its turn comes. */
function inTurn(form: HTMLFormElement, body = bodyOf(form)): void {
  wish(form, body);
  after(() => save(form, body));
}

function wish(form: HTMLFormElement, body: URLSearchParams): void {
  withdraw(form);
  tell(form, words.saving);
  known.set(form, String(bodyOf(form)));
  wishes.set(form, { body, fate: "waiting" });
  countUnsaved();
}

let isTrying = false;

/** Sends again what found no answer, until the first that finds none again. */
function tryAgain(): void {
  if (isTrying) return;
  isTrying = true;
  after(async () => {
    for (const [form, { body, fate }] of wishes) {
      if (fate !== "again") continue;
      await save(form, body);
      if (wishes.get(form)?.fate === "again") break;
    }
  });
  after(async () => {
    isTrying = false;
  });
}

/** A field is saved when one leaves it; who leaves the page has not left the field. */
function sendTouched(): void {
  for (const form of allForms()) {
    if (!isTouched(form)) continue;
    if (wishes.get(form)?.fate === "waiting") {
      inTurn(form);
      continue;
    }
    const body = bodyOf(form);
    wish(form, body);
    // At once, for no turn may come any more.
    last = Promise.all([last, save(form, body)]);
  }
}

function attend(form: HTMLFormElement): void {
  known.set(form, String(bodyOf(form)));
  form.addEventListener("change", () => inTurn(form));
  form.addEventListener("click", ({ target }) => {
    // Who taps what is on record has answered the question; such a tap changes nothing, so that nothing else is told of it.
    const isOnRecord = target instanceof HTMLInputElement && target.type === "radio" && target.defaultChecked;
    if (isOnRecord && form.querySelector(".asking")) inTurn(form);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    inTurn(form);
  });
  const more = cardOf(form)?.querySelector<HTMLAnchorElement>(".more a");
  more?.addEventListener("click", (event) => {
    event.preventDefault();
    const card = cardOf(form);
    if (card) after(() => renew(card, "", more.href));
  });
}

async function pageNow(address: string): Promise<Document> {
  const response = await fetch(address, { signal: AbortSignal.timeout(patience) });
  if (!response.ok) throw new Error(await response.text());
  return new DOMParser().parseFromString(await response.text(), "text/html");
}

/**
 * Puts a card as the file has it now in the place of another, and says why. Where something of that one is still to be
 * saved, it stays, unless whoever entered it gives it up: then there is nothing to say.
 */
function replace(card: HTMLElement, fresh: HTMLElement | null, why: string | null): void {
  const form = card.querySelector("form");
  const next = fresh?.querySelector("form");
  if (!form || !fresh || !next) return;
  if (why !== null && (wishes.has(form) || isTouched(form))) return;
  wishes.delete(form);
  const wasOpen = [...card.querySelectorAll("details")].map(({ open }) => open);
  for (const [at, details] of fresh.querySelectorAll("details").entries())
    details.open ||= wasOpen[at] === true;
  card.replaceWith(fresh);
  attend(next);
  tell(next, why ?? "");
  count();
  countUnsaved();
}

async function renew(card: HTMLElement, why: string | null, address = location.href): Promise<void> {
  replace(card, (await pageNow(address)).getElementById(card.id), why);
}

/** What is wrong with the content, or that other parts are asked for by now, stands in sight until it is mended. */
const panel = document.createElement("section");
panel.className = "notice-panel";
panel.setAttribute("role", "alert");
panel.tabIndex = 0;
panel.hidden = true;
document.querySelector("main")?.prepend(panel);

function show(...nodes: Node[]): void {
  panel.replaceChildren(...nodes);
  panel.hidden = nodes.length === 0;
}

const report = (text: string): Node => {
  const pre = document.createElement("pre");
  pre.lang = "en";
  pre.textContent = text;
  return pre;
};

const cardsIn = (page: Document) => [...page.querySelectorAll<HTMLElement>(".part")];

/** What was changed elsewhere is shown in its card, and what somebody is about to change there stays. */
async function lookAgain(): Promise<void> {
  const now = await pageNow(location.href);
  const ids = (page: Document) =>
    cardsIn(page)
      .map(({ id }) => id)
      .join(" ");
  if (ids(now) !== ids(document)) {
    const again = document.createElement("a");
    again.href = location.href;
    again.textContent = words.loadAgain;
    const said = document.createElement("p");
    said.append(words.otherParts, again);
    show(said);
    return;
  }
  show();
  for (const card of cardsIn(document)) {
    const fresh = now.getElementById(card.id);
    if (versionOf(fresh)?.value === versionOf(card)?.value) continue;
    const form = card.querySelector("form");
    if (form && isTouched(form) && !wishes.has(form)) tellOfChange(form, words.changedUnderHand);
    else replace(card, fresh, words.changedElsewhere);
  }
}

document.documentElement.classList.add("saves-itself");
for (const form of allForms()) attend(form);

addEventListener("online", tryAgain);
setInterval(tryAgain, untilNextTry);
addEventListener("pagehide", sendTouched);
document.addEventListener("visibilitychange", () => (document.hidden ? sendTouched() : tryAgain()));
addEventListener("beforeunload", (event) => {
  sendTouched();
  if ([...wishes.values()].some(({ fate }) => fate !== "waiting")) event.preventDefault();
});

let heard = 0;
const events = new EventSource("/__fittedcase/events");
events.addEventListener("open", tryAgain);
events.addEventListener("state", ({ data }) => {
  const { problems } = JSON.parse(data) as { problems: string | null };
  const isFirst = heard++ === 0;
  if (problems !== null) return show(report(problems));
  // A page that shows a mistake instead of the parts has something to show again.
  if (allForms().length > 0) after(lookAgain);
  else if (!isFirst) location.reload();
});
