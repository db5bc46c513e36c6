import { type Found, findEntries, vocabularyOf } from "../../shared/pages/search/find-entries.ts";
import { asksNothing, readState, type ViewState, writeState } from "../../shared/pages/search/view-state.ts";
import type { Words } from "../../shared/words/words.ts";
import { answered, answering, unanswered } from "./asked/answer.ts";
import { Fetched } from "./finder/fetched.ts";
import {
  leaveVariant,
  offerDetails,
  offerVariants,
  readForm,
  tellUnread,
  writeForm,
} from "./finder/finder-form.ts";
import { type Places, showFound } from "./finder/show-found.ts";
import { hasAll, type WholeAnswer, wholeAnswer } from "./finder/whole-answer.ts";
import { siteWords } from "./words/site-words.ts";

interface Ready {
  readonly fetched: Fetched;
  readonly words: Words;
}

/** The catalogue's search: what is asked stands in the form and in the address, what is found below. */
function search(form: HTMLFormElement, places: Places): void {
  const told = form.querySelector<HTMLOutputElement>(".told-found");
  const all = form.querySelector<HTMLAnchorElement>(".show-all");
  const narrow = form.querySelector("details");
  let state = readState(location.search);
  let ready: Promise<Ready> | null = null;
  let isTyping = false;
  let asked = 0;

  const tell = (text: string) => {
    if (told && told.value !== text) told.value = text;
  };

  const prepare = (): Promise<Ready> => {
    ready ??= Promise.all([Fetched.from(new URL(form.dataset.index ?? "", location.href)), siteWords()])
      .then(([fetched, words]) => ({ fetched, words }))
      .catch((problem: unknown) => {
        ready = null;
        throw problem;
      });
    return ready;
  };

  const tellFound = ({ found, isRead }: WholeAnswer, { words, fetched }: Ready) => {
    const say = words.pages.finder;
    const { count } = fetched.catalogue.index;
    const { entries, instead, ofParts } = found;
    tell(
      [
        ...ofParts.map(({ typed, taken }) => say.ofParts(typed, taken)),
        ...instead.map(({ typed, taken }) => say.instead(typed, taken)),
        ...(entries.length > 0 ? [say.found(entries.length, count)] : isRead ? [say.none(count)] : []),
        ...(isRead ? [] : [say.textsUnread]),
      ].join(" "),
    );
  };

  const showAll = () => {
    answered();
    places.found.hidden = true;
    if (places.listed) places.listed.hidden = false;
    if (all) all.hidden = true;
    tell("");
  };

  /** What can be shown at once is shown; what must be fetched is added when it is here, and only then told. */
  const show = async () => {
    const turn = ++asked;
    const wanted = state;
    if (asksNothing(wanted)) return showAll();
    if (all) all.hidden = false;
    try {
      const here = await prepare();
      if (turn !== asked) return;
      const { fetched, words } = here;
      const put = (found: Found) => {
        showFound(found, wanted, fetched.catalogue, places, words);
        answered();
      };
      if (!hasAll(fetched, wanted)) {
        const first = findEntries(fetched.searched, wanted, false);
        if (first.entries.length > 0) put(first);
        tell(words.pages.finder.reading);
      }
      const answer = await wholeAnswer(fetched, wanted, () => turn === asked);
      if (!answer) return;
      put(answer.found);
      tellFound(answer, here);
    } catch {
      if (turn === asked) fail();
    }
  };

  const fail = () => {
    showAll();
    unanswered();
  };

  const go = (next: ViewState, how: "push" | "replace") => {
    state = next;
    try {
      history[how === "push" ? "pushState" : "replaceState"](null, "", writeState(next) || location.pathname);
    } catch {
      // Some browsers let an address change only so often: the question is answered all the same.
    }
    tellUnread(form, next, true);
    void show();
  };

  /** Which parts are offered hangs on the family that stands in the form. */
  const offer = () => {
    void ready?.then(
      ({ fetched }) => offerDetails(form, fetched),
      () => {},
    );
  };

  // One step back undoes a whole word typed, and one choice made.
  form.addEventListener("input", ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    go(readForm(form), isTyping ? "replace" : "push");
    isTyping = true;
  });
  form.addEventListener("change", ({ target }) => {
    isTyping = false;
    tellUnread(form, readForm(form), false);
    if (!(target instanceof HTMLSelectElement)) return;
    if (target.name === "family") leaveVariant(form);
    offerVariants(form);
    offer();
    go(readForm(form), "push");
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    isTyping = false;
  });
  all?.addEventListener("click", (event) => {
    event.preventDefault();
    isTyping = false;
    const nothing = readState("");
    writeForm(form, nothing);
    offer();
    go(nothing, "push");
    form.querySelector<HTMLInputElement>("[name=q]")?.focus();
  });
  places.found.addEventListener("click", (event) => {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>(".pager a") : null;
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    isTyping = false;
    go(readState(new URL(link.href).search), "push");
    places.found.focus();
  });
  window.addEventListener("popstate", () => {
    isTyping = false;
    state = readState(location.search);
    writeForm(form, state);
    offer();
    tellUnread(form, state, false);
    void show();
  });

  // The index comes when somebody is about to ask; the words for slips of the finger when there is time.
  const begin = () => {
    void prepare().then(({ fetched }) => {
      const later = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 200));
      later(() => void vocabularyOf(fetched.catalogue));
    }, fail);
  };
  form.addEventListener("focusin", begin, { once: true });
  form.addEventListener("pointerenter", begin, { once: true });
  const beginDetails = () => {
    if (!narrow?.open) return;
    void prepare()
      .then(async ({ fetched }) => {
        await fetched.fetchDetails();
        offerDetails(form, fetched);
      })
      .catch(() => {});
  };
  narrow?.addEventListener("toggle", beginDetails);

  answering();
  writeForm(form, state);
  form.hidden = false;
  tellUnread(form, state, false);
  beginDetails();
  void show();
}

const form = document.querySelector<HTMLFormElement>("form.finder");
const found = document.querySelector<HTMLElement>(".found");
const row = document.querySelector<HTMLTemplateElement>("template.found-row");
if (form && found && row && "DecompressionStream" in window) {
  search(form, { found, row, listed: document.querySelector<HTMLElement>(".listed") });
} else {
  unanswered();
}
