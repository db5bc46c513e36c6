import type { ServerResponse } from "node:http";

/** What is wrong with the content, and how often something was made of it. */
export interface PreviewState {
  readonly build: number;
  readonly problems: string | null;
}

/** Somebody who listens: with the page that is open, and what was last said of it. */
interface Listener {
  readonly response: ServerResponse;
  readonly page: string | null;
  said: string;
  build: string | number;
}

/** In milliseconds: a page that has not been loaded again by then is in nobody's sight. */
export const patience = 400;

/** The pages that are open somewhere and listen, by server-sent events, for when they are to be loaded again. */
export class OpenPages {
  readonly #listeners = new Set<Listener>();
  /** The version of the page at an address; null where that cannot be told, and any build may have changed it. */
  readonly #versionAt: (pathname: string) => string | null;
  #state: PreviewState = { build: 0, problems: null };
  #onArrival = () => {};

  constructor(versionAt: (pathname: string) => string | null) {
    this.#versionAt = versionAt;
  }

  /** Where no page is named, every build is told of. */
  listen(response: ServerResponse, page: string | null): void {
    response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
    const listener: Listener = { response, page, said: "", build: "" };
    this.#send(listener);
    this.#listeners.add(listener);
    response.on("close", () => this.#listeners.delete(listener));
    if (page !== null) this.#onArrival();
  }

  /**
   * One that shows the same as before and has the same problems is left alone. Those that load again are waited for,
   * though not long: whatever is made meanwhile would keep them waiting.
   */
  tell(state: PreviewState): Promise<void> {
    this.#state = state;
    let awaited = [...this.#listeners].filter((listener) => this.#send(listener)).length;
    if (awaited === 0) return Promise.resolve();
    return new Promise((resolve) => {
      const timer = setTimeout(resolve, patience);
      this.#onArrival = () => {
        awaited--;
        if (awaited > 0) return;
        clearTimeout(timer);
        resolve();
      };
    });
  }

  get addresses(): ReadonlySet<string> {
    return new Set([...this.#listeners].flatMap(({ page }) => (page === null ? [] : (decoded(page) ?? []))));
  }

  /** True where the page is to be loaded again. */
  #send(listener: Listener): boolean {
    const { page } = listener;
    const { build: lastBuild, problems } = this.#state;
    const build = (page === null ? null : this.#versionAt(page)) ?? lastBuild;
    const message = `event: state\ndata: ${JSON.stringify({ build, problems })}\n\n`;
    if (page !== null && listener.said === message) return false;
    const isLoadedAgain = page !== null && listener.build !== build;
    listener.said = message;
    listener.build = build;
    listener.response.write(message);
    return isLoadedAgain;
  }
}

function decoded(page: string): string | null {
  try {
    return decodeURIComponent(page);
  } catch {
    return null;
  }
}
