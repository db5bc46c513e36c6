import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Page, Route } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { leadingScript, securityHeaders } from "../../shared/pages/security-policy.ts";
import { siteFiles } from "../collections/site-files.ts";
import { below, kindsOfPage, type OpenSite, openSite } from "./open-site.ts";

let site: OpenSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const digest = (name: "sha256" | "sha384", text: string | Buffer) =>
  `${name}-${createHash(name).update(text).digest("base64")}`;

const read = (address: string) => readFileSync(path.join(inject("demonstration"), address));

interface Declared {
  readonly script: string;
  readonly integrity: string | null;
  /** The first run by themselves; of the others, which these import, some come only when there is something to say. */
  readonly kind: "run" | "imported" | "later";
}

/** Every script that a page names, by its address from the root of the site. */
const declaredOn = (page: Page, home = ""): Promise<Declared[]> =>
  page.evaluate((from) => {
    const within = (place: ParentNode | undefined, selector: string, kind: Declared["kind"]) =>
      [...(place?.querySelectorAll(selector) ?? [])].map((element) => {
        const url = element.getAttribute("src") ?? element.getAttribute("href") ?? "";
        const script = new URL(url, location.href).pathname.slice(from.length);
        return { script, integrity: element.getAttribute("integrity"), kind };
      });
    const later = document.querySelector<HTMLTemplateElement>("template.site-words")?.content;
    return [
      ...within(document, "script[src]", "run"),
      ...within(document, "link[rel=modulepreload]", "imported"),
      ...within(later, "link[rel=modulepreload]", "later"),
    ];
  }, home);

const everyScript = (): string[] =>
  readdirSync(path.join(inject("demonstration"), "assets"))
    .filter((name) => name.endsWith(".js"))
    .map((name) => `/assets/${name}`)
    .sort();

/** Pages on which, between them, every script of the site runs, words that come later included. */
const used = [
  "/items/?q=lamp&least=50&sort=complete",
  "/compare/?items=hale-ferrin-outfit,marchby-outfit,signal-cabin-set",
  "/variants/survey-pattern-2/",
  "/items/brennock-school-outfit/",
  "/articles/telling-the-patterns-apart/",
];

/** Which of some altered scripts ran on a page, after it was used. */
async function taken(
  address: string,
  isAltered: (script: string) => boolean,
  isSealed: boolean,
): Promise<string[]> {
  const page = await site.blank();
  const answer = async (route: Route, change: (text: string) => string) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: change(await response.text()) });
  };
  await page.route(
    ({ pathname }) => pathname.endsWith(".js") && isAltered(pathname),
    (route) => {
      const { pathname } = new URL(route.request().url());
      return answer(
        route,
        (text) =>
          `document.documentElement.dataset.taken = (document.documentElement.dataset.taken ?? "") + " ${pathname}";${text}`,
      );
    },
  );
  if (!isSealed)
    await page.route(
      ({ pathname }) => pathname.endsWith("/"),
      (route) => answer(route, (text) => text.replaceAll(/ integrity="[^"]*"/g, "")),
    );
  await page.goto(site.url + address, { waitUntil: "networkidle" });
  await page.evaluate(() => document.querySelector<HTMLElement>(".tick-box")?.click());
  // What is ticked is told in words that come only now.
  await page.waitForTimeout(300);
  await page.waitForLoadState("networkidle");
  const ran = await page.evaluate(() => document.documentElement.dataset.taken?.trim().split(" ") ?? []);
  // An answer may still be on its way.
  await page.unrouteAll({ behavior: "wait" });
  await page.context().close();
  return ran;
}

describe("scripts", () => {
  it("are sealed on every page that may load them, each with the digest of the file", async () => {
    const found = new Set<string>();
    const left = [...new Set([...Object.values(kindsOfPage), ...used])];
    const look = async () => {
      const page = await site.blank();
      const asked = new Set<string>();
      page.on("request", (request) => {
        const { pathname } = new URL(request.url());
        if (pathname.endsWith(".js")) asked.add(pathname);
      });
      for (let address = left.pop(); address !== undefined; address = left.pop()) {
        asked.clear();
        await page.goto(site.url + address, { waitUntil: "networkidle" });
        // The page for what is not there looks for everything where the site will stand.
        const declared = await declaredOn(
          page,
          address === kindsOfPage["page that is not there"] ? below : "",
        );
        for (const { script, integrity } of declared) {
          expect(integrity, `${script} on ${address}`).toBe(digest("sha384", read(script)));
          found.add(script);
        }
        const names = declared.map(({ script }) => script);
        for (const script of asked) expect(names, address).toContain(script.replace(below, ""));
      }
      await page.context().close();
    };
    // Most of it is waiting until a page is at rest.
    await Promise.all([look(), look(), look()]);
    expect([...found].sort()).toEqual(everyScript());
  });

  it("would run as they are, if the page did not say what they are to be", async () => {
    const ran = await Promise.all(used.map((address) => taken(address, () => true, false)));
    expect([...new Set(ran.flat())].sort()).toEqual(everyScript());
  });

  it("do not run where a single one of any kind is not the one that was built", async () => {
    const tried = new Map<string, Declared["kind"]>();
    for (const address of used) {
      const page = await site.visit(address);
      const declared = await declaredOn(page);
      await page.context().close();
      const ofKind = (kind: Declared["kind"]) =>
        declared.flatMap((each) => (each.kind === kind && !tried.has(each.script) ? each : []));
      const [imported, later] = [ofKind("imported"), ofKind("later")];
      const ends = [imported.at(0), imported.at(-1), later.at(0), later.at(-1)];
      const trials = [...ofKind("run"), ...ends.filter((each) => each !== undefined)];
      for (const { script, kind } of trials) tried.set(script, kind);
      // Most of each is waiting until the page is at rest.
      await Promise.all(
        [...new Set(trials.map(({ script }) => script))].map(async (script) => {
          const ran = await taken(address, (each) => each === script, true);
          expect(ran, `${script} on ${address}`).toEqual([]);
        }),
      );
    }
    for (const kind of ["run", "imported", "later"]) expect([...tried.values()]).toContain(kind);
  });

  it("leave what they would have shown hidden, and the page as it reads without them", async () => {
    const page = await site.visit("/404.html");
    await page.route("**/assets/search-catalogue.*.js", async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, body: `;${await response.text()}` });
    });
    await page.goto(`${site.url}/items/`, { waitUntil: "networkidle" });
    expect(await page.locator("form.finder").isVisible()).toBe(false);
    expect(await page.locator(".listed").isVisible()).toBe(true);
    await page.context().close();
  });
});

describe("a page at a former address", () => {
  const pages = () =>
    [...siteFiles(inject("demonstration"))].flatMap(([file, bytes]) => {
      const text = bytes.toString("utf8");
      return text.includes('http-equiv="refresh"') ? [{ file, text }] : [];
    });

  it("has the policy of all pages, which lets its one script run and no other", async () => {
    const [policy] = securityHeaders.flatMap(([name, value]) =>
      name === "Content-Security-Policy" ? value : [],
    );
    // Content Security Policy Level 3, 2.3.1: a digest of what stands between the tags.
    const allowed = `script-src 'self' '${digest("sha256", leadingScript)}'`;
    expect(policy?.split("; ")).toContain(allowed);
    const found = pages();
    expect(found.length).toBeGreaterThan(3);
    for (const { file, text } of found) {
      expect(text, file).toContain(`; ${allowed};`);
      expect(text.match(/<script[^>]*>[^<]*/g), file).toEqual([`<script>${leadingScript}`]);
    }
    const page = await site.visit("/404.html");
    await page.route("**/items/ossel-outfit/", async (route) => {
      const response = await route.fetch();
      const body = (await response.text()).replace("<script>", "<script>document.title = 'taken';");
      await route.fulfill({ response, body });
    });
    await page.goto(`${site.url}/items/ossel-outfit/`, { waitUntil: "networkidle" });
    expect(await page.title()).not.toBe("taken");
    expect(new URL(page.url()).pathname).toBe("/items/ossel-outfit/");
    await page.context().close();
  });

  it("says what the collection has to say on every page", () => {
    for (const { file, text } of pages()) expect(text, file).toContain("<p>Everything here is invented: ");
  });
});

it("a page that is opened from disk keeps its look", async () => {
  const page = await site.visit("/404.html");
  await page.goto(`file://${path.join(inject("demonstration"), "items/index.html")}`);
  const paper = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
  expect(paper).toContain("Alegreya");
});
