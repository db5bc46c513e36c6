import { type FSWatcher, watch } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { reportAsText } from "../../diagnostics/report.ts";
import { buildCollection } from "../../site/build-collection.ts";
import { type Command, UsageError } from "../command.ts";
import { rootFolder } from "../root-folder.ts";
import { createPreviewServer } from "./preview-server.ts";

/** Editors write a file in several steps; one rebuild is enough for all of them. */
const settled = 60;

const watched = ["content", "schemas", "templates"];

export const serve: Command = {
  usage: "fittedcase serve [--root DIR] [--port NUMBER]",
  help: `Builds the site, shows it at an address of this machine, and builds it again whenever a file changes.
A mistake in a file appears in the open page, over the last good one, until it is mended.

Example: fittedcase serve --port 8080`,
  async run(args, { cwd, out, err }) {
    const { values } = parseArgs({
      args: [...args],
      options: { root: { type: "string" }, port: { type: "string", default: "8080" } },
    });
    const port = Number(values.port);
    if (!/^\d+$/.test(values.port) || port > 65_535) {
      throw new UsageError(`Found --port "${values.port}"; expected a number from 0 to 65535.`);
    }
    const root = rootFolder(cwd, values.root);
    const site = path.join(root, ".cache/fittedcase/preview/site");
    const { server, tell } = createPreviewServer(site);

    let build = 0;
    let running = false;
    let again = false;
    const rebuild = async () => {
      if (running) {
        again = true;
        return;
      }
      running = true;
      do {
        again = false;
        const started = performance.now();
        const { written, diagnostics, filesRead } = await buildCollection(root, site, "public");
        const report = reportAsText(diagnostics, filesRead);
        if (written) {
          build += 1;
          out(`Built ${written.pages} pages in ${((performance.now() - started) / 1000).toFixed(1)} s.`);
        } else err(report);
        tell({ build, problems: written ? null : report });
      } while (again);
      running = false;
    };

    await rebuild();
    let timer: NodeJS.Timeout | undefined;
    const onChange = () => {
      clearTimeout(timer);
      timer = setTimeout(() => void rebuild().catch((problem: unknown) => err(String(problem))), settled);
    };
    const watchers: FSWatcher[] = [];
    for (const folder of watched) {
      try {
        watchers.push(watch(path.join(root, folder), { recursive: true }, onChange));
      } catch {
        // A collection need not have templates of its own.
      }
    }
    await new Promise<void>((resolve, reject) => {
      server.on("error", reject);
      server.listen(port, "127.0.0.1", () => {
        const address = server.address();
        const actual = typeof address === "object" && address ? address.port : port;
        out(`The preview is at http://127.0.0.1:${actual}/ until you press Ctrl-C.`);
      });
      process.once("SIGINT", resolve);
      process.once("SIGTERM", resolve);
    });
    for (const watcher of watchers) watcher.close();
    server.closeAllConnections();
    server.close();
    return 0;
  },
};
