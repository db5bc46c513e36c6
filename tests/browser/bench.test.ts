import { readFileSync } from "node:fs";
import path from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { writeFiles } from "../collections/collection.ts";
import { unpackingFile, unpackingFolder } from "../collections/unpacking.ts";
import { type Served, served } from "../commands/served.ts";
import { type OpenSite, openSite } from "./open-site.ts";
import { axeFaults } from "./seen-on-page.ts";

let root: string;
let preview: Served;
let site: OpenSite;

beforeAll(async () => {
  root = unpackingFolder();
  preview = await served(root);
  site = await openSite();
});
afterAll(async () => {
  await site.close();
  await preview.stop();
});
beforeEach(() => writeFiles(root, { "content/items/one/index.md": unpackingFile }));

const text = () => readFileSync(path.join(root, "content/items/one/index.md"), "utf8");
const phone: BrowserContextOptions = {
  viewport: { width: 320, height: 640 },
  hasTouch: true,
  isMobile: true,
};

async function bench(options: BrowserContextOptions = phone, address = "one/"): Promise<Page> {
  const context = await site.browser.newContext(options);
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${preview.port}/__fittedcase/bench/${address}`);
  return page;
}
const leave = (page: Page) => page.context().close();
const tick = (page: Page, part: string, state: string) =>
  page.locator(`#part-${part}`).getByRole("radio", { name: state, exact: true }).tap();
const saved = (page: Page, part: string) =>
  page.locator(`#part-${part} [role=status]`).filter({ hasText: "Saved." }).waitFor();

describe("the page for the bench, in a browser", () => {
  it("writes what is tapped into the file, and leaves the rest of it byte for byte", async () => {
    const page = await bench();
    await tick(page, "key", "Absent");
    await saved(page, "key");
    await tick(page, "lamp", "Present");
    await saved(page, "lamp");
    expect(await page.locator(".tally").innerText()).toBe("3 of 4 parts examined");
    await page.locator("#part-jet").getByLabel("How many of 2").selectOption("All that were issued");
    await saved(page, "jet");
    await page.locator("#part-lamp summary").tap();
    await page.locator("#part-lamp").getByLabel("Note").fill("Cracked: see the photograph");
    await page.locator("#part-lamp").getByLabel("Note").blur();
    await expect.poll(text).toContain("Cracked");
    expect(text()).toBe(
      unpackingFile
        .replace("key: present ", "key: absent ")
        .replace("quantity: 1, ", "")
        .replace("# of two\n", '# of two\n  lamp: { state: present, note: "Cracked: see the photograph" }\n'),
    );
    await leave(page);
  });

  /** Puts a lamp with a serial and a note on record, and returns the whole text. */
  const recordedLamp = (): string => {
    const recorded = unpackingFile.replace(
      "# of two\n",
      "# of two\n  lamp: { state: present, serial: '4410', note: The cap is stiff. }\n",
    );
    writeFiles(root, { "content/items/one/index.md": recorded });
    return recorded;
  };

  it("asks before a tap takes a serial and a note out of the record", async () => {
    const recorded = recordedLamp();
    const page = await bench();
    const lamp = page.locator("#part-lamp");
    await tick(page, "lamp", "Not examined");
    await lamp.getByText("no longer be on record: serial 4410; note The cap is stiff.").waitFor();
    // What is shown is what is on record, until the question is answered.
    expect(await lamp.getByRole("radio", { name: "Present" }).isChecked()).toBe(true);
    expect(text()).toBe(recorded);
    await lamp.getByRole("button", { name: "Keep it" }).tap();
    await lamp.getByRole("button", { name: "Take it out" }).waitFor({ state: "detached" });
    await tick(page, "lamp", "Absent");
    await saved(page, "lamp");
    await tick(page, "lamp", "Present");
    await expect.poll(text).toBe(recorded);
    await tick(page, "lamp", "Not examined");
    for (const label of ["Take it out", "Keep it"]) {
      const box = await lamp.getByRole("button", { name: label }).boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(44);
    }
    expect(await axeFaults(page)).toEqual([]);
    await lamp.getByRole("button", { name: "Take it out" }).tap();
    await expect.poll(text).toBe(unpackingFile);
    await expect.poll(() => lamp.getByLabel("Serial").inputValue()).toBe("");
    await leave(page);
  });

  it("takes a question back when one taps what is on record", async () => {
    const recorded = recordedLamp();
    const page = await bench();
    const lamp = page.locator("#part-lamp");
    await tick(page, "lamp", "Not examined");
    await lamp.getByRole("button", { name: "Take it out" }).waitFor();
    await tick(page, "lamp", "Present");
    await lamp.getByRole("button", { name: "Take it out" }).waitFor({ state: "detached" });
    await lamp.getByText("Nothing to save.").waitFor();
    expect(text()).toBe(recorded);
    await leave(page);
  });

  it("works with the keyboard alone, and without a script", async () => {
    const page = await bench({ javaScriptEnabled: false });
    await page.locator('#part-key input[value="present"]').focus();
    await page.keyboard.press("ArrowRight");
    for (let tabs = 0; tabs < 4; tabs++) {
      await page.keyboard.press("Tab");
      if (await page.locator("#part-key button").evaluate((button) => button === document.activeElement))
        break;
    }
    await page.keyboard.press("Enter");
    await page.waitForURL(/#part-key$/);
    expect(text()).toBe(unpackingFile.replace("key: present ", "key: absent "));
    await leave(page);
  });

  it.each([
    ["one/", "light"],
    ["one/", "dark"],
    ["", "light"],
    ["one/?another=jet", "dark"],
  ] as const)(
    "has no fault that axe finds on %j, %s, and does not scroll sideways",
    async (address, colorScheme) => {
      const page = await bench({ ...phone, colorScheme }, address);
      const said: string[] = [];
      page.on("console", (message) => said.push(message.text()));
      await page.reload();
      expect(await axeFaults(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      // WCAG 2.2, 2.5.5 (AAA): targets of at least 44 by 44 pixels.
      const targets = await page.locator(".choices label, .field input, .field select, summary").all();
      for (const target of targets) {
        const box = await target.boundingBox();
        if (box) expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
      }
      expect(said).toEqual([]);
      await leave(page);
    },
  );

  it("lets two phones work at one case, and shows each what the other wrote", async () => {
    const [page, other] = [await bench(), await bench()];
    await tick(page, "key", "Absent");
    await saved(page, "key");
    await tick(other, "lamp", "Present");
    await saved(other, "lamp");
    await tick(page, "strap", "Not issued");
    await saved(page, "strap");
    await expect.poll(() => other.locator(".tally").innerText()).toBe("4 of 4 parts examined");
    await expect.poll(() => other.getByRole("radio", { name: "Absent" }).first().isChecked()).toBe(true);
    for (const line of ["key: absent   # brass", "lamp: present", "strap: not-issued"])
      expect(text()).toContain(line);
    await leave(page);
    await leave(other);
  });

  it("saves nothing of a part over what was written there by hand, says so, and keeps what is typed", async () => {
    const page = await bench();
    const key = page.locator("#part-key");
    await key.locator("summary").tap();
    await key.getByLabel("Note").fill("Bent.");
    const byHand = unpackingFile.replace("key: present ", "key: unverified ");
    writeFiles(root, { "content/items/one/index.md": byHand });
    await key.locator(".failed").getByText("has been changed elsewhere").waitFor();
    await key.getByLabel("Note").blur();
    await key.locator(".failed").getByText("Not saved: ").waitFor();
    expect(await page.locator(".unsaved").innerText()).toBe("1 not saved: Key");
    expect(await key.getByLabel("Note").inputValue()).toBe("Bent.");
    expect(text()).toBe(byHand);
    await key.getByRole("button", { name: "Show what the file says now" }).tap();
    await expect.poll(() => key.getByRole("radio", { name: "Unverified" }).isChecked()).toBe(true);
    await page.locator(".unsaved").waitFor({ state: "hidden" });
    await tick(page, "key", "Absent");
    await saved(page, "key");
    expect(text()).toBe(byHand.replace("key: unverified ", "key: absent "));
    await leave(page);
  });

  it("tries again by itself what found no preview, and says in its foot what is not saved", async () => {
    const page = await bench();
    await page.context().setOffline(true);
    await tick(page, "key", "Absent");
    await tick(page, "lamp", "Present");
    await expect.poll(() => page.locator(".unsaved").innerText()).toBe("2 not saved: Key, Spirit lamp");
    expect(await axeFaults(page)).toEqual([]);
    expect(text()).toBe(unpackingFile);
    await page.context().setOffline(false);
    await saved(page, "lamp");
    await page.locator(".unsaved").waitFor({ state: "hidden" });
    expect(text()).toBe(
      unpackingFile
        .replace("key: present ", "key: absent ")
        .replace("# of two\n", "# of two\n  lamp: present\n"),
    );
    await leave(page);
  });

  it("goes on by itself with a preview that was started anew", async () => {
    const page = await bench();
    await preview.stop();
    await tick(page, "key", "Absent");
    await expect.poll(() => page.locator(".unsaved").innerText()).toBe("1 not saved: Key");
    preview = await served(root, "--port", String(preview.port));
    await saved(page, "key");
    expect(text()).toBe(unpackingFile.replace("key: present ", "key: absent "));
    await leave(page);
  });

  it("saves a field that has the focus when the page is left, or hidden", async () => {
    const page = await bench();
    await tick(page, "lamp", "Present");
    await saved(page, "lamp");
    const note = page.locator("#part-lamp").getByLabel("Note");
    await page.locator("#part-lamp summary").tap();
    await note.fill("Cracked.");
    await page.reload();
    await expect.poll(text).toContain("lamp: { state: present, note: Cracked. }");
    await expect.poll(() => note.inputValue()).toBe("Cracked.");
    await note.fill("Mended.");
    await page.evaluate(() => {
      Object.defineProperty(document, "hidden", { value: true });
      document.dispatchEvent(new Event("visibilitychange"));
    });
    await expect.poll(text).toContain("note: Mended.");
    await leave(page);
  });

  it("has units of different kinds entered one after another, without loading the page again", async () => {
    writeFiles(root, {
      "content/items/one/index.md": unpackingFile.replace(/ {2}jet: .*\n/, ""),
    });
    const page = await bench();
    await page.evaluate(() => document.body.classList.add("not-loaded-again"));
    const [jet, more] = [page.locator("#part-jet"), page.getByText("Units of different kinds")];
    expect(await more.isVisible()).toBe(false);
    await tick(page, "jet", "Present");
    await saved(page, "jet");
    await more.tap();
    await jet.getByRole("radio", { name: "Absent" }).nth(1).tap();
    await expect.poll(text).toContain("jet: [ present, absent ]");
    await more.tap();
    await expect.poll(() => jet.locator("fieldset").count()).toBe(3);
    expect(await page.locator("body.not-loaded-again").count()).toBe(1);
    await leave(page);
  });

  it("shows a mistake in the file as the terminal does, until it is mended", async () => {
    const [page, item] = [await bench(), await bench(phone, "../../items/one/")];
    writeFiles(root, { "content/items/one/index.md": unpackingFile.replace("key: present", "kee: present") });
    const told = "content/items/one/index.md:6:3  error  unknown-part";
    await page.locator(".notice-panel pre").getByText(told).waitFor();
    await item.locator("#fittedcase-problems pre").getByText(told).waitFor();
    // The last good page stays below it.
    expect(await item.locator("h1").innerText()).toBe("A chest");
    writeFiles(root, { "content/items/one/index.md": unpackingFile });
    await page.locator(".notice-panel pre").waitFor({ state: "detached" });
    await item.locator("#fittedcase-problems").waitFor({ state: "hidden" });
    await item.getByText("At the bench: tick its parts").tap();
    await item.waitForURL(/bench\/one\/$/);
    await leave(page);
    await leave(item);
  });
});
