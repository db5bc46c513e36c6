import path from "node:path";
import { parseArgs } from "node:util";
import { cacheFolder } from "../../site/folders/cache-folder.ts";
import { ownCode } from "../collection/own-code.ts";
import { rootFolder } from "../collection/root-folder.ts";
import { type Command, UsageError } from "../command.ts";
import { newAccess } from "./access.ts";
import { benchAddress } from "./bench/bench-html.ts";
import { lanLines } from "./lan-lines.ts";
import { localAddresses } from "./local-addresses.ts";
import { PreviewLoop } from "./preview-loop.ts";
import { createPreviewServer } from "./preview-server.ts";
import { watchFolders } from "./watch-folders.ts";

const watched = ["content", "schemas", "templates"];

export const serve: Command = {
  usage: "fittedcase serve [--root DIR] [--port NUMBER] [--lan]",
  help: [
    "Builds the site, shows it at an address of this machine, and builds it again whenever a file changes. A mistake in",
    "a file appears in the open page, over the last good one, until it is mended.",
    "",
    "It also has a page for the bench, for each outfit: every part in the order of unpacking, what to look for, and",
    "what to tick; each tick is written into the item's file at once, which otherwise stays as it is.",
    "",
    "  --root DIR     the collection's folder; the current one where unsaid",
    "  --port NUMBER  of the address; 8080 where unsaid, 0 for any that is free",
    "  --lan          answers in the local network too, so that a phone beside the case can reach it. Whoever has the",
    "                 address that is then printed can read the preview and write into items: give it to nobody, and",
    "                 use it only in a network that you trust, since it is not encrypted.",
    "",
    "Example: fittedcase serve --port 8080",
    "Ends with 0 on Ctrl-C; 2 where the command is wrong, or the port is taken.",
  ].join("\n"),
  async run(args, { cwd, out, err }) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        root: { type: "string" },
        port: { type: "string", default: "8080" },
        lan: { type: "boolean", default: false },
      },
    });
    const port = Number(values.port);
    if (!/^\d+$/.test(values.port) || port > 65_535) {
      throw new UsageError(`Found --port "${values.port}"; expected a number from 0 to 65535.`);
    }
    const hosts = values.lan ? localAddresses() : [];
    if (values.lan && hosts.length === 0)
      throw new UsageError("Found no local network that this machine is in; --lan expects one.");
    const access = newAccess(hosts);
    const root = rootFolder(cwd, values.root);
    const site = path.join(cacheFolder(root), "preview/site");
    const { server, tell, served, lookedAt } = createPreviewServer(
      root,
      site,
      access,
      () => loop.live,
      (address) => loop.onLook(address),
    );
    const loop = new PreviewLoop({ root, site, out, err, tell, served, lookedAt });
    const code = ownCode(root);
    if (code !== null) err(code);
    await loop.buildWhole();
    const stopWatching = watchFolders(root, watched, (file) => loop.onChange(file));
    const ended = new Promise<void>((resolve, reject) => {
      server.on("error", (problem: Error & { code?: string }) =>
        reject(
          problem.code === "EADDRINUSE"
            ? new UsageError(
                `Found port ${port} taken, perhaps by another preview; expected a free one, such as --port 0.`,
              )
            : problem,
        ),
      );
      server.listen(port, values.lan ? "0.0.0.0" : "127.0.0.1", () => {
        const address = server.address();
        const actual = typeof address === "object" && address ? address.port : port;
        out(`The preview is at http://127.0.0.1:${actual}/ until you press Ctrl-C.`);
        out(`The pages for the bench are at http://127.0.0.1:${actual}${benchAddress}`);
        for (const line of lanLines(access, actual)) out(line);
      });
      process.once("SIGINT", resolve);
      process.once("SIGTERM", resolve);
    });
    try {
      await ended;
    } finally {
      stopWatching();
      loop.stop();
      server.closeAllConnections();
      server.close();
    }
    return 0;
  },
};
