import { mkdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { request } from "node:http";
import { connect } from "node:net";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { run } from "./run.ts";
import { ask, served } from "./served.ts";

const until = async (condition: () => Promise<boolean>): Promise<void> => {
  for (let tries = 0; tries < 600; tries++) {
    if (await condition()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("It did not come to pass in a minute.");
};

interface Told {
  readonly build: string | number;
  readonly problems: string | null;
}

/** What an open page is told, from its opening on. */
function listen(port: number, page: string): { readonly told: readonly Told[]; readonly close: () => void } {
  const told: Told[] = [];
  const path_ = `/__fittedcase/events?page=${encodeURIComponent(page)}`;
  const asking = request({ host: "127.0.0.1", port, path: path_ }, (response) => {
    response.on("data", (chunk) => {
      for (const line of String(chunk).split("\n"))
        if (line.startsWith("data: ")) told.push(JSON.parse(line.slice("data: ".length)));
    });
  });
  asking.on("error", () => {});
  asking.end();
  return { told, close: () => void asking.destroy() };
}

/** The first line of what is answered to a request that is sent as it stands: some no client would write. */
const answerTo = (port: number, target: string): Promise<string> =>
  new Promise((resolve, reject) => {
    let answer = "";
    const socket = connect(port, "127.0.0.1", () =>
      socket.end(`GET ${target} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`),
    );
    socket.on("data", (chunk) => {
      answer += chunk;
    });
    socket.on("error", reject);
    socket.on("close", () => resolve(answer.slice(0, answer.indexOf("\r\n"))));
  });

describe("fittedcase serve", () => {
  it("ends where its port is taken", async () => {
    const root = writeCollection(smallCollection("parts:\n  sextant: { standing: core }\n"));
    const preview = await served(root);
    try {
      const { code, err } = await run(["serve", "--root", root, "--port", String(preview.port)], root);
      expect(code).toBe(2);
      expect(err).toContain(`Found port ${preview.port} in use`);
    } finally {
      expect(await preview.stop()).toBe(0);
    }
  });

  it("goes on whatever it is asked, and takes a host in the path for no address of its own", async () => {
    const preview = await served(writeCollection(smallCollection("parts:\n  sextant: { standing: core }\n")));
    const { port } = preview;
    try {
      for (const target of [
        "//",
        "///",
        "//[",
        "//elsewhere.example/items/",
        "/\\elsewhere.example/",
        "http://[",
      ])
        expect(await answerTo(port, target), target).toBe("HTTP/1.1 400 Bad Request");
      // As whoever asks by way of a proxy writes it (RFC 9112, 3.2.2).
      expect(await answerTo(port, `http://127.0.0.1:${port}/items/`)).toBe("HTTP/1.1 200 OK");
      expect(await answerTo(port, "/items//")).toMatch(/^HTTP\/1\.1 (?:200|404) /);
      expect(await answerTo(port, "/%")).toMatch(/^HTTP\/1\.1 \d{3} /);
      expect(await answerTo(port, "/items/")).toBe("HTTP/1.1 200 OK");
    } finally {
      expect(await preview.stop()).toBe(0);
    }
  });

  it("tells an open page of what changes what it shows, and writes the site when all is quiet", async () => {
    const root = writeCollection(
      smallCollection("parts:\n  sextant: { standing: core }\n", {
        "content/items/one/index.md": item("set: first"),
        "content/items/two/index.md": item("set: second"),
      }),
    );
    const preview = await served(root);
    const { port } = preview;
    const open = ["/items/one/", "/items/", "/sources/"].map((page) => listen(port, page));
    const [one, list, sources] = open.map(({ told }) => told);
    try {
      await until(async () => open.every(({ told }) => told.length === 1));
      const page = await ask(port, "/items/one/");
      // A page that was loaded before it listens knows by this whether it is still the same.
      expect(page.body).toContain(`data-build="${one?.[0]?.build}"`);
      writeFiles(root, {
        "content/items/one/index.md": item("set: first").replace("A chest", "first of all"),
      });
      await until(async () => list?.length === 2);
      expect(one?.length).toBe(2);
      expect(one?.[1]?.build).not.toBe(one?.[0]?.build);
      expect((await ask(port, "/items/one/")).body).toContain("first of all");
      expect((await ask(port, "/items/")).body).toContain("first of all");
      const onDisk = () =>
        readFileSync(path.join(root, ".cache/fittedcase/preview/site/items/one/index.html"), "utf8");
      await until(async () => onDisk().includes("first of all"));
      writeFiles(root, { "content/items/three/index.md": item("set: third") });
      await until(async () => (await ask(port, "/items/three/")).status === 200);
      rmSync(path.join(root, "content/items/three"), { recursive: true });
      await until(async () => (await ask(port, "/items/three/")).status === 404);
      expect(sources?.length).toBe(1);
    } finally {
      for (const { close } of open) close();
      expect(await preview.stop()).toBe(0);
    }
  });

  it("loads a template again when what it imports has changed", async () => {
    const one = { "content/items/one/index.md": item("set: first") };
    const root = writeCollection({
      ...smallCollection("parts:\n  sextant: { standing: core }\n", one),
      "templates/pages/item.js": "import { word } from '../words/word.js';\nexport default () => word;",
      "templates/words/word.js": "export * from './deeper/word.js';",
      "templates/words/deeper/word.js": "export const word = 'The first word';",
    });
    const preview = await served(root);
    const says = async (word: string) => (await ask(preview.port, "/items/one/")).body.includes(word);
    try {
      expect(preview.said()).toContain(
        "which is run: templates/pages/item.js, templates/words/deeper/word.js, templates/words/word.js.",
      );
      await until(() => says("The first word"));
      for (const word of ["Another word", "The last word"]) {
        writeFiles(root, { "templates/words/deeper/word.js": `export const word = '${word}';` });
        await until(() => says(word));
      }
    } finally {
      await preview.stop();
    }
  });

  it("follows an item whose folder is a link, as far as that stays in the collection's folder", async () => {
    const root = writeCollection({
      ...smallCollection("parts:\n  sextant: { standing: core }\n"),
      "shelf/one/index.md": item("set: first"),
    });
    mkdirSync(path.join(root, "content/items"), { recursive: true });
    symlinkSync("../../shelf/one", path.join(root, "content/items/one"));
    const preview = await served(root);
    try {
      writeFiles(root, { "shelf/one/index.md": item("set: first").replace("A chest", "A chest on a shelf") });
      await until(async () => (await ask(preview.port, "/items/one/")).body.includes("A chest on a shelf"));
    } finally {
      await preview.stop();
    }
  });

  it("shows the site, shows what is wrong with it, and answers to nobody else", async () => {
    const root = writeCollection(
      smallCollection("parts:\n  sextant: { standing: core }\n", { "content/items/one/index.md": item("") }),
    );
    const preview = await served(root);
    const { port } = preview;
    try {
      const page = await ask(port, "/items/one/");
      expect(page.status).toBe(200);
      expect(page.body).toContain("/__fittedcase/preview.js");
      expect((await ask(port, "/nowhere/")).status).toBe(404);
      expect((await ask(port, "/items/one/", { host: "evil.example" })).status).toBe(403);
      expect((await ask(port, "/items/one/", { origin: "https://evil.example" })).status).toBe(403);
      // What a browser says of who asks (W3C Fetch Metadata, 2): a picture, a frame and a script of another site, or of
      // another port of this machine, bring no origin; a link that somebody follows may come from anywhere.
      const asked = (site: string, mode: string, dest: string) =>
        ask(port, "/items/one/", { "sec-fetch-site": site, "sec-fetch-mode": mode, "sec-fetch-dest": dest });
      expect((await asked("cross-site", "no-cors", "image")).status).toBe(403);
      expect((await asked("same-site", "no-cors", "script")).status).toBe(403);
      expect((await asked("cross-site", "navigate", "iframe")).status).toBe(403);
      expect((await asked("cross-site", "navigate", "document")).status).toBe(200);
      expect((await asked("same-origin", "no-cors", "image")).status).toBe(200);
      expect((await asked("none", "navigate", "document")).status).toBe(200);
      const { headers } = page;
      expect(headers["content-security-policy"]).toMatch(/^default-src 'none'; .*frame-ancestors 'none'$/);
      expect(headers["cross-origin-resource-policy"]).toBe("same-origin");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect((await ask(port, "/", { host: "evil.example" })).headers.connection).toBe("close");
      expect((await ask(port, "/", {}, "POST")).status).toBe(405);
      for (const out of [
        "/../../../../content/collection.yaml",
        "/%2e%2e/%2e%2e/content/collection.yaml",
        `/${encodeURIComponent("../../../../etc/passwd")}`,
      ]) {
        expect((await ask(port, out)).status).toBe(404);
      }

      writeFiles(root, { "content/items/one/index.md": item("title_: Changed") });
      const state = () =>
        new Promise<{ build: number; problems: string | null }>((resolve) => {
          const asking = request({ host: "127.0.0.1", port, path: "/__fittedcase/events" }, (response) => {
            response.once("data", (chunk) => {
              resolve(JSON.parse(String(chunk).replace(/^event: state\ndata: /, "")));
              asking.destroy();
            });
          });
          asking.on("error", () => {});
          asking.end();
        });
      await until(async () => (await state()).problems !== null);
      expect((await state()).problems).toContain("content/items/one/index.md:4:1  error  unknown-field");
      expect((await ask(port, "/items/one/")).status).toBe(200);

      writeFiles(root, { "content/items/one/index.md": item("set: anew") });
      await until(async () => (await state()).problems === null);
      expect((await ask(port, "/items/one/")).body).toContain("anew");
    } finally {
      expect(await preview.stop()).toBe(0);
    }
    expect(path.isAbsolute(root)).toBe(true);
  });
});
