import { spawn } from "node:child_process";
import { type IncomingHttpHeaders, request } from "node:http";
import { command } from "./run.ts";

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Asks a server of this machine, with exactly the given headers. */
export function ask(
  port: number,
  address: string,
  headers: Record<string, string> = {},
  method = "GET",
  sent = "",
  host = "127.0.0.1",
): Promise<Answer> {
  const given = Object.fromEntries(Object.entries(headers).filter(([, value]) => value !== ""));
  return new Promise((resolve, reject) => {
    const asking = request({ host, port, path: address, headers: given, method }, (response) => {
      let body = "";
      response.on("data", (chunk) => {
        body += chunk;
      });
      response.on("end", () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
      );
    });
    asking.on("error", reject);
    asking.end(sent);
  });
}

export interface Served {
  readonly port: number;
  readonly said: () => string;
  readonly stop: () => Promise<number | null>;
}

/** The preview of a collection, as a process of its own. */
export function served(root: string, ...more: string[]): Promise<Served> {
  const child = spawn(process.execPath, [command, "serve", "--root", root, "--port", "0", ...more]);
  let said = "";
  const closed = new Promise<number | null>((resolve) => child.on("close", resolve));
  return new Promise((resolve, reject) => {
    const listen = (chunk: unknown) => {
      said += chunk;
      const port = /http:\/\/127\.0\.0\.1:(\d+)\//.exec(said)?.[1];
      if (port !== undefined)
        resolve({
          port: Number(port),
          said: () => said,
          stop: () => {
            child.kill("SIGTERM");
            return closed;
          },
        });
    };
    child.stdout.on("data", listen);
    child.stderr.on("data", listen);
    closed.then(() => reject(new Error(`The preview ended.\n${said}`)));
  });
}
