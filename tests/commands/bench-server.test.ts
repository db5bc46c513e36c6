import { readFileSync, statSync } from "node:fs";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { localAddresses } from "../../shared/commands/serve/local-addresses.ts";
import { writeFiles } from "../collections/collection.ts";
import { unpackingFile, unpackingFolder } from "../collections/unpacking.ts";
import { ask, type Served, served } from "./served.ts";

const at = "/__fittedcase/bench/one/";
let root: string;
let preview: Served;

beforeAll(async () => {
  root = unpackingFolder();
  preview = await served(root);
});
afterAll(() => preview.stop());

const file = () => path.join(root, "content/items/one/index.md");
const text = () => readFileSync(file(), "utf8");
const hiddenValue = (html: string, name: string) =>
  new RegExp(`name="${name}" value="([^"]*)"`).exec(html)?.[1] ?? "";

/** What the form of a part, of a feature or of the case says of what it was made from. */
const versionOf = (html: string, { part, feature }: Record<string, string>) => {
  const name =
    part !== undefined
      ? `data-part="${part}"`
      : feature !== undefined
        ? `data-feature="${feature}"`
        : "data-fields";
  return hiddenValue(html.slice(Math.max(0, html.indexOf(name))), "version");
};

/** What the page would send, and how; any of it can be made otherwise. */
async function post(fields: Record<string, string>, headers: Record<string, string> = {}, address = at) {
  const page = (await ask(preview.port, at)).body;
  const body = new URLSearchParams({
    key: hiddenValue(page, "key"),
    version: versionOf(page, fields),
    ...fields,
  }).toString();
  return ask(
    preview.port,
    address,
    {
      origin: `http://127.0.0.1:${preview.port}`,
      host: `127.0.0.1:${preview.port}`,
      "content-type": "application/x-www-form-urlencoded",
      accept: "application/json",
      ...headers,
    },
    "POST",
    body,
  );
}

const absent = { part: "key", "0.state": "absent" };

describe("the page for the bench", () => {
  it("goes through the parts in the order of unpacking, each caution before its look hint", async () => {
    const { status, body, headers } = await ask(preview.port, at);
    expect(status).toBe(200);
    expect([...body.matchAll(/<article class="part" id="part-([^"]+)"/g)].map(([, id]) => id)).toEqual([
      "key",
      "jet",
      "lamp",
      "strap",
    ]);
    const lamp = body.slice(body.indexOf('id="part-lamp"'));
    expect(lamp.indexOf("Caution: ")).toBeGreaterThan(0);
    expect(lamp.indexOf("Caution: ")).toBeLessThan(lamp.indexOf("Smell the cap."));
    expect(body.indexOf("Before you begin")).toBeLessThan(body.indexOf("On the front."));
    expect(body).toContain("Below the &lt;lid&gt;.");
    expect(headers["content-security-policy"]).toMatch(
      /^default-src 'none'; style-src 'self'; script-src 'self'/,
    );
    expect(body).not.toMatch(/<style|\sstyle=|\son[a-z]+=|<script(?![^>]*\bsrc=)/);
    const report = await new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: { "long-title": "off", "void-style": "off", "no-trailing-whitespace": "off" },
    }).validateString(body);
    expect(report.results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
  });

  it("lists every outfit, with how far one has come", async () => {
    const { body } = await ask(preview.port, "/__fittedcase/bench/");
    expect(body).toContain(
      '<a href="/__fittedcase/bench/one/">A chest</a> <small>2 of 4 parts examined</small>',
    );
    expect(body).toContain("0 of 4 parts examined");
  });

  it("writes a tick into the file, and leaves every other byte", async () => {
    const mode = statSync(file()).mode;
    const { status, body } = await post(absent);
    expect(JSON.parse(body)).toMatchObject({ status: 200, said: "Saved." });
    expect(status).toBe(200);
    expect(text()).toBe(unpackingFile.replace("key: present ", "key: absent "));
    expect(statSync(file()).mode).toBe(mode);
    await post({ part: "key", "0.state": "present" });
    expect(text()).toBe(unpackingFile);
  });

  it("works without a script: it answers a form with the page, at the part", async () => {
    const { status, headers } = await post(
      { part: "strap", "0.state": "not-issued" },
      { accept: "text/html" },
    );
    expect({ status, location: headers.location }).toEqual({ status: 303, location: `${at}#part-strap` });
    expect(text()).toContain("\n  strap: not-issued\n");
    await post({ part: "strap", "0.state": "" });
    expect(text()).toBe(unpackingFile);
  });

  describe("where more is on record of a part than its state", () => {
    const lamp = "{ state: present, serial: '4410', packed: sealed, note: The cap is stiff. }";
    const recorded = (jet: string) =>
      unpackingFile.replace("  jet: { state: present, quantity: 1, marks: ['7'] } # of two\n", jet);
    const told = async (fields: Record<string, string>) => JSON.parse((await post(fields)).body);
    afterEach(() => writeFiles(root, { "content/items/one/index.md": unpackingFile }));

    it("takes nothing out before it has said what would go", async () => {
      const before = recorded(`  lamp: ${lamp}\n`);
      writeFiles(root, { "content/items/one/index.md": before });
      const tap = { part: "lamp", "0.state": "", "0.serial": "4410", "0.note": "The cap is stiff." };
      const question = await told(tap);
      expect(question).toMatchObject({
        status: 409,
        said: "Not saved yet: this would no longer be on record: serial 4410; packed sealed; note The cap is stiff.",
      });
      expect(text()).toBe(before);
      // Who confirms something else than what is asked is asked again.
      expect((await told({ ...tap, confirmed: "serial 4410" })).status).toBe(409);
      expect(text()).toBe(before);
      expect((await told({ ...tap, confirmed: question.asks })).status).toBe(200);
      expect(text()).toBe(recorded(""));
    });

    it("asks without a script too, and sends the whole form again", async () => {
      const before = recorded(`  lamp: ${lamp}\n`);
      writeFiles(root, { "content/items/one/index.md": before });
      const { status, body } = await post({ part: "lamp", "0.state": "" }, { accept: "text/html" });
      expect(status).toBe(409);
      expect(body).toContain("serial 4410; packed sealed; note The cap is stiff.");
      expect(body).toContain(`href="${at}#part-lamp"`);
      const again = Object.fromEntries(
        [...body.matchAll(/<input type="hidden" name="([^"]*)" value="([^"]*)">/g)].map(
          ([, name = "", value = ""]) => [name, value],
        ),
      );
      expect((await post(again, { accept: "text/html" })).status).toBe(303);
      expect(text()).toBe(recorded(""));
    });

    it.each(["absent", "unverified", "substitute", "not-issued"])(
      "keeps all of it when the part is %s, and has it again when it is present",
      async (state) => {
        writeFiles(root, { "content/items/one/index.md": recorded(`  lamp: ${lamp}\n`) });
        expect((await told({ part: "lamp", "0.state": state })).status).toBe(200);
        expect(text()).toBe(recorded(`  lamp: ${lamp.replace("present", state)}\n`));
        await post({ part: "lamp", "0.state": "present" });
        expect(text()).toBe(recorded(`  lamp: ${lamp}\n`));
      },
    );

    it("has a line as it was, remark and all, after two taps that cancel each other", async () => {
      await post({ part: "key", "0.state": "" });
      expect(text()).not.toMatch(/^ *key:/m);
      await post({ part: "key", "0.state": "present" });
      expect(text()).toBe(unpackingFile);
    });

    it("says what the record has by now of a thing that is gone, and of how many", async () => {
      expect((await told({ part: "jet", "0.state": "absent" })).said).toBe(
        "Saved. Of 2 now 1 absent, 1 not examined. Still on record: marks 7.",
      );
      expect(text()).toBe(unpackingFile.replace("state: present", "state: absent"));
    });

    it.each([
      [
        "{ state: substitute, model: plain-jet }",
        "present",
        "model plain-jet, which applies only to a substitute",
        "{ state: present }",
      ],
      [
        "{ state: present, quantity: 3, note: One is new. }",
        "absent",
        "quantity 3, of which 2 were issued",
        "{ state: absent, note: One is new. }",
      ],
    ])("asks before %s loses what cannot be said of one that is %s", async (was, state, asks, becomes) => {
      writeFiles(root, { "content/items/one/index.md": recorded(`  jet: ${was}\n`) });
      const tap = { part: "jet", "0.state": state };
      expect(await told(tap)).toMatchObject({ status: 409, asks });
      expect(text()).toBe(recorded(`  jet: ${was}\n`));
      expect((await told({ ...tap, confirmed: asks })).status).toBe(200);
      expect(text()).toBe(recorded(`  jet: ${becomes}\n`));
    });
  });

  it("takes the case's own numbers and what tells the variants apart", async () => {
    await post({ serial: "0118", set: "7", examined: "2026-03-14" });
    await post({ feature: "lock", value: "brass" });
    expect(text()).toBe(
      unpackingFile
        .replace("variant: chest-a\n", 'variant: chest-a\nserial: "0118"\nset: "7"\nexamined: 2026-03-14\n')
        .replace("\n\n---\nThe text", "\n\nfeatures:\n  lock: brass\n---\nThe text"),
    );
    writeFiles(root, { "content/items/one/index.md": unpackingFile });
  });

  it.each<[string, Record<string, string>, Record<string, string>, number]>([
    ["without its key", { ...absent, key: "" }, {}, 403],
    ["with another key", { ...absent, key: "x".repeat(24) }, {}, 403],
    ["from another origin", absent, { origin: "https://evil.example" }, 403],
    ["from no origin", absent, { origin: "" }, 403],
    ["from a page without an origin", absent, { origin: "null" }, 403],
    ["by way of another name", absent, { host: "evil.example" }, 403],
    ["from another site, as the browser says", absent, { "sec-fetch-site": "cross-site" }, 403],
    ["in another form", absent, { "content-type": "text/plain" }, 415],
    ["of a part that is another by now", { ...absent, version: "0".repeat(20) }, {}, 409],
    ["of a part that the reference does not list", { part: "__proto__", "0.state": "absent" }, {}, 422],
    ["of a state that there is not", { part: "key", "0.state": "lost" }, {}, 422],
    ["of a quantity that is none", { part: "jet", "0.state": "present", "0.quantity": "0" }, {}, 422],
    ["of a date that is none", { examined: "1850-02-30" }, {}, 422],
  ])("refuses to write %s", async (_, fields, headers, status) => {
    expect((await post(fields, headers)).status).toBe(status);
    expect(text()).toBe(unpackingFile);
  });

  it.each([
    "/__fittedcase/bench/..%2f..%2fcollection/",
    "/__fittedcase/bench/%2e%2e/",
    "/__fittedcase/bench/one%00/",
    "/__fittedcase/bench/one/../../x/",
    "/__fittedcase/bench/gone/",
  ])("writes nowhere but into an item: %s", async (address) => {
    expect((await post(absent, {}, address)).status).toBeGreaterThanOrEqual(400);
    expect(text()).toBe(unpackingFile);
  });

  it("takes no form that is longer than any part has to say", async () => {
    expect((await post({ ...absent, "0.note": "a".repeat(70_000) })).status).toBe(415);
    expect(text()).toBe(unpackingFile);
  });

  it("loses nothing of a part that was written by hand meanwhile", async () => {
    const page = (await ask(preview.port, at)).body;
    const byHand = unpackingFile.replace("key: present ", "key: unverified ");
    writeFiles(root, { "content/items/one/index.md": byHand });
    const old = { version: versionOf(page, absent) };
    expect((await post({ ...absent, ...old })).status).toBe(409);
    expect(text()).toBe(byHand);
    // Who asks for what is there by now is answered that it is.
    const same = await post({ part: "key", "0.state": "unverified", ...old });
    expect(JSON.parse(same.body)).toMatchObject({ status: 200, said: "Nothing to save." });
    writeFiles(root, { "content/items/one/index.md": unpackingFile });
  });

  it("lets what was changed elsewhere in the file stand in nobody's way", async () => {
    const page = (await ask(preview.port, at)).body;
    const old = (fields: Record<string, string>) => ({ ...fields, version: versionOf(page, fields) });
    const taps: Record<string, string>[] = [
      absent,
      { part: "lamp", "0.state": "present" },
      { feature: "lock", value: "brass" },
      { set: "7", serial: "", examined: "" },
    ];
    for (const fields of taps) expect((await post(old(fields))).status).toBe(200);
    for (const line of ["key: absent", "lamp: present", "lock: brass", 'set: "7"'])
      expect(text()).toContain(line);
    // Of the same part the page knows no more what the file says.
    expect((await post(old({ part: "key", "0.state": "unverified" }))).status).toBe(409);
    writeFiles(root, { "content/items/one/index.md": unpackingFile });
  });

  it("asks for nothing that never was on record", async () => {
    const tap = { part: "jet", "0.state": "present", "0.model": "plain-jet" };
    writeFiles(root, {
      "content/items/one/index.md": unpackingFile.replace("{ state: present, q", "{ state: substitute, q"),
    });
    expect(JSON.parse((await post(tap)).body)).toMatchObject({ status: 200, isStale: true });
    expect(text()).toBe(unpackingFile);
  });

  it("shows of a file with a mistake the same as the terminal, and writes nothing into it", async () => {
    const key = hiddenValue((await ask(preview.port, at)).body, "key");
    const wrong = unpackingFile.replace("key: present", "kee: present");
    writeFiles(root, { "content/items/one/index.md": wrong });
    const { body } = await ask(preview.port, at);
    expect(body).toContain("content/items/one/index.md:6:3  error  unknown-part");
    expect(body).toContain("Did you mean &quot;key&quot;?");
    // To be tried again: once the file is mended, the same is saved.
    expect((await post({ ...absent, key })).status).toBe(503);
    expect(text()).toBe(wrong);
    writeFiles(root, { "content/items/one/index.md": unpackingFile });
    expect((await ask(preview.port, at)).body).toContain('id="part-key"');
  });
});

describe("in the local network", () => {
  it.skipIf(localAddresses().length === 0)("answers only to the whole address that it prints", async () => {
    const lan = await served(root, "--lan");
    try {
      await expect.poll(() => lan.said()).toContain("From a phone on the same network:");
      const printed = /http:\/\/([\d.]+):\d+\/__fittedcase\/bench\/\?key=([\w-]+)/.exec(lan.said());
      const [, host = "", key = ""] = printed ?? [];
      const from = (address: string, headers = {}) =>
        ask(lan.port, address, { host: `${host}:${lan.port}`, ...headers }, "GET", "", host);
      expect((await from("/")).status).toBe(403);
      // The key of an earlier preview is none: a phone is told what to do.
      expect((await from("/", { cookie: "fittedcase_key=old" })).body).toContain(
        "scan the code in the terminal again",
      );
      expect((await from("/?key=wrong")).status).toBe(403);
      // Another machine may say that it is this one; it is not believed.
      expect((await from("/", { host: `127.0.0.1:${lan.port}` })).status).toBe(403);
      const { status, headers } = await from(`/__fittedcase/bench/?key=${key}`);
      expect({ status, location: headers.location }).toEqual({
        status: 303,
        location: "/__fittedcase/bench/",
      });
      expect(headers["set-cookie"]?.[0]).toMatch(/HttpOnly; SameSite=Strict/);
      const cookie = (headers["set-cookie"]?.[0] ?? "").split(";")[0] ?? "";
      expect((await from("/__fittedcase/bench/", { cookie })).status).toBe(200);
      expect((await from("/__fittedcase/bench/", { cookie: `${cookie}x` })).status).toBe(403);
      expect((await ask(lan.port, "/__fittedcase/bench/")).status).toBe(200);
    } finally {
      await lan.stop();
    }
  });

  it("is not there unless it is asked for", async () => {
    expect(preview.said()).not.toContain("key=");
    for (const host of localAddresses())
      await expect(ask(preview.port, "/", {}, "GET", "", host)).rejects.toThrow("ECONNREFUSED");
  });
});
