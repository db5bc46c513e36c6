import { type ChildProcess, spawn } from "node:child_process";
import type { Readable, Writable } from "node:stream";

interface Answer {
  readonly id?: number;
  readonly method?: string;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly error?: { readonly message: string };
}

/** A browser that is told what to do over a pipe, in the Chrome DevTools Protocol: JSON, each message ended by a NUL. */
export interface BrowserPipe {
  readonly ask: (
    method: string,
    params?: Readonly<Record<string, unknown>>,
    sessionId?: string,
  ) => Promise<Readonly<Record<string, unknown>>>;
  /** Resolves when the event has been told of. */
  readonly until: (method: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

export function startBrowser(browser: string, args: readonly string[]): BrowserPipe {
  const child: ChildProcess = spawn(browser, ["--remote-debugging-pipe", ...args], {
    stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"],
  });
  const [to, from] = [child.stdio[3] as Writable, child.stdio[4] as Readable];
  const waiting = new Map<number, { resolve: (result: Answer) => void; reject: (problem: Error) => void }>();
  const listeners: { method: string; heard: () => void }[] = [];
  const failAll = (problem: Error) => {
    for (const { reject } of waiting.values()) reject(problem);
    waiting.clear();
  };
  const closed = new Promise<void>((resolve) => child.once("close", () => resolve()));
  child.once("error", failAll);
  child.once("exit", () => failAll(new Error("The browser stopped before it had printed.")));
  to.on("error", failAll);

  let rest = Buffer.alloc(0);
  from.on("data", (chunk: Buffer) => {
    rest = Buffer.concat([rest, chunk]);
    for (let end = rest.indexOf(0); end >= 0; end = rest.indexOf(0)) {
      const answer = JSON.parse(rest.subarray(0, end).toString("utf8")) as Answer;
      rest = rest.subarray(end + 1);
      if (answer.id !== undefined) {
        waiting.get(answer.id)?.resolve(answer);
        waiting.delete(answer.id);
      }
      for (const { method, heard } of listeners) if (method === answer.method) heard();
    }
  });

  let last = 0;
  return {
    async ask(method, params = {}, sessionId = undefined) {
      last += 1;
      const id = last;
      const answered = new Promise<Answer>((resolve, reject) => waiting.set(id, { resolve, reject }));
      to.write(`${JSON.stringify({ id, method, params, ...(sessionId ? { sessionId } : {}) })}\0`);
      const { result, error } = await answered;
      if (error) throw new Error(`${method}: ${error.message}`);
      return result ?? {};
    },
    until: (method) => new Promise((resolve) => listeners.push({ method, heard: resolve })),
    async close() {
      child.kill("SIGKILL");
      if (child.exitCode === null && child.pid !== undefined) await closed;
    },
  };
}
