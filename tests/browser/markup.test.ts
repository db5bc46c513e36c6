import { LinkChecker } from "linkinator";
import { describe, expect, inject, it } from "vitest";
import { leadingScript } from "../../shared/pages/security-policy.ts";
import { siteFiles } from "../collections/site-files.ts";
import { htmlRules } from "./html-rules.ts";

describe("every page of the demonstration", () => {
  it("is valid HTML, by the recommended rules of html-validate", async () => {
    const faults: string[] = [];
    for (const [file, bytes] of siteFiles(inject("demonstration"))) {
      if (!file.endsWith(".html") || bytes.includes('http-equiv="refresh"')) continue;
      const report = await htmlRules.validateString(bytes.toString("utf8"), file);
      for (const { messages } of report.results) {
        for (const { line, column, ruleId, message } of messages)
          faults.push(`${file}:${line}:${column} ${ruleId} ${message}`);
      }
    }
    expect(faults).toEqual([]);
  });

  it("leads nowhere that is not there", async () => {
    const { links } = await new LinkChecker().check({
      path: inject("demonstration"),
      recurse: true,
      checkFragments: true,
      // On a machine with much else to do a connection may fail that says nothing of the site.
      concurrency: 16,
      retryErrors: true,
      retryErrorsCount: 3,
      retryErrorsJitter: 500,
      // The site's own future address, and sources: nothing outside is asked for.
      urlRewriteExpressions: [
        { pattern: /^(http:\/\/(?:localhost|127\.0\.0\.1):\d+)\/varran-outfits/, replacement: "$1" },
      ],
      linksToSkip: ["^https?://(?!localhost|127\\.0\\.0\\.1)"],
    });
    const broken = links
      .filter(({ state }) => state === "BROKEN")
      .map(({ url, parent, status }) => `${parent} → ${url} (${status})`);
    expect(links.length).toBeGreaterThan(100);
    expect(broken).toEqual([]);
  });

  it("has no inline style, script or event attribute", () => {
    const inline =
      /<script(?![^>]*\bsrc=)(?![^>]*type="application\/ld\+json")|\sstyle="|<style|\son[a-z]+="/;
    // The one script that the policy names by its digest.
    const allowed = `<script>${leadingScript}</script>`;
    const found = [...siteFiles(inject("demonstration"))]
      .filter(
        ([file, bytes]) =>
          file.endsWith(".html") && inline.test(bytes.toString("utf8").replaceAll(allowed, "")),
      )
      .map(([file]) => file);
    expect(found).toEqual([]);
  });
});
