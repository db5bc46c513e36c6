import { request } from "node:http";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { item, smallCollection, writeCollection, writeFiles } from "../collections/collection.ts";
import { ask, served } from "./served.ts";

const until = async (condition: () => Promise<boolean>): Promise<void> => {
  for (let tries = 0; tries < 200; tries++) {
    if (await condition()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("It did not come to pass in twenty seconds.");
};

describe("fittedcase serve", () => {
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
