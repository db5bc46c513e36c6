/** Runs in the browser: saves a form when something in it is changed, one after another, and says so. */
interface Saved {
  readonly said: string;
  readonly version: string;
  readonly asks?: string;
  readonly isStale?: boolean;
}

const forms = [...document.querySelectorAll<HTMLFormElement>("form[method=post]")];
const tally = document.querySelector<HTMLElement>(".tally");

function tell(form: HTMLFormElement, said: string, failed = false): void {
  const status = form.querySelector<HTMLElement>("[role=status]");
  if (!status) return;
  status.textContent = said;
  status.classList.toggle("failed", failed);
}

/** Every form goes on from the file as it stands now. */
function goOnFrom(version: string): void {
  for (const field of document.querySelectorAll<HTMLInputElement>("input[name=version]"))
    field.value = version;
}

/** What is on record counts, and not what was tapped and could not be saved. */
function count(): void {
  if (!tally) return;
  const parts = [...document.querySelectorAll<HTMLFormElement>("form[data-part]")];
  const examined = parts.filter((form) =>
    [...form.querySelectorAll<HTMLInputElement>("input[type=radio]")].some(
      ({ defaultChecked, value }) => defaultChecked && value !== "",
    ),
  );
  tally.textContent = `${examined.length} of ${tally.dataset.of} parts examined`;
}

const versionNow = (): string => document.querySelector<HTMLInputElement>("input[name=version]")?.value ?? "";

/** What the form holds by now is what the record says: the choices to go back to. */
function settle(form: HTMLFormElement, body: URLSearchParams): void {
  for (const choice of form.querySelectorAll<HTMLInputElement>("input[type=radio]"))
    choice.defaultChecked = body.get(choice.name) === choice.value;
}

/** Something recorded would go: the choices go back to what the record says, until the question is answered. */
function putQuestion(form: HTMLFormElement, body: URLSearchParams, asks: string): void {
  for (const choice of form.querySelectorAll<HTMLInputElement>("input[type=radio]"))
    choice.checked = choice.defaultChecked;
  const question = document.createElement("p");
  question.className = "asking";
  const answer = (label: string, act: () => void) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button";
    button.textContent = label;
    button.addEventListener("click", act);
    question.append(button);
  };
  answer("Take it out", () => {
    body.set("confirmed", asks);
    inTurn(form, body);
  });
  answer("Keep it", () => inTurn(form));
  form.append(question);
}

async function save(form: HTMLFormElement, body: URLSearchParams): Promise<void> {
  form.querySelector(".asking")?.remove();
  tell(form, "Saving …");
  body.set("version", versionNow());
  try {
    const response = await fetch(form.action, {
      method: "POST",
      body,
      headers: { accept: "application/json" },
      keepalive: true,
    });
    if (response.headers.get("content-type")?.startsWith("application/json") !== true) {
      tell(form, `Not saved: ${await response.text()}`, true);
      return;
    }
    const saved = (await response.json()) as Saved;
    if (response.ok) {
      goOnFrom(saved.version);
      settle(form, body);
    }
    tell(form, saved.said, !response.ok);
    if (saved.asks !== undefined) putQuestion(form, body, saved.asks);
    count();
    isStale ||= saved.isStale === true;
  } catch {
    tell(form, "Not saved: the preview does not answer. Is it still running?", true);
  }
}

let last: Promise<void> = Promise.resolve();
let waiting = 0;
let isStale = false;

/** A form is saved as it stands when something in it is changed, and not as it may stand when its turn comes. */
function inTurn(form: HTMLFormElement, body = bodyOf(form)): void {
  waiting++;
  last = last
    .then(() => save(form, body))
    .then(() => {
      waiting--;
      if (isStale && waiting === 0) location.reload();
    });
}

function bodyOf(form: HTMLFormElement): URLSearchParams {
  return new URLSearchParams([...new FormData(form)].map(([name, value]) => [name, String(value)]));
}

document.documentElement.classList.add("saves-itself");
for (const form of forms) {
  form.addEventListener("change", () => inTurn(form));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    inTurn(form);
  });
}

/** What is wrong with the content, or that the file was changed elsewhere, stands above the page until it is mended. */
const panel = document.createElement("section");
panel.className = "notice-panel";
panel.setAttribute("role", "alert");
panel.hidden = true;
document.querySelector("main")?.prepend(panel);

function show(...nodes: Node[]): void {
  panel.replaceChildren(...nodes);
  panel.hidden = nodes.length === 0;
}

const report = (text: string): Node => {
  const pre = document.createElement("pre");
  pre.textContent = text;
  return pre;
};

/** Our own last save is no change from elsewhere. */
async function isChangedElsewhere(): Promise<boolean> {
  await last;
  const own = versionNow();
  if (own === "") return false;
  const response = await fetch(new URL("version", location.href));
  return response.ok && (await response.text()) !== own;
}

let heard = 0;
new EventSource("/__fittedcase/events").addEventListener("state", async ({ data }) => {
  const { problems } = JSON.parse(data) as { problems: string | null };
  const isFirst = heard++ === 0;
  if (problems !== null) {
    show(report(problems));
    return;
  }
  // A page that shows a mistake instead of the parts has something to show again.
  if (forms.length === 0 && !isFirst) location.reload();
  if (!(await isChangedElsewhere())) {
    show();
    return;
  }
  const again = document.createElement("a");
  again.href = location.href;
  again.textContent = "Load the page again.";
  const said = document.createElement("p");
  said.append("The file was changed elsewhere. ", again);
  show(said);
});
