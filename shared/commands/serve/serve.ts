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
    "Builds the site, shows it at an address on this machine, and updates it whenever a file changes. A mistake in a",
    "file appears on the open page, above its last good version, until it is corrected.",
    "",
    "It also has a page for each outfit to use at the bench: every part in the order of unpacking, what to look for,",
    "and what to tick. Each tick is written into the item's file at once; the rest of the file stays as it is.",
    "",
    "  --root DIR     the collection's folder (default: the current one)",
    "  --port NUMBER  the port of the address (default: 8080); 0 for any that is free",
    "  --lan          answers on the local network too, so that a phone beside the case can reach it. Whoever has the",
    "                 address that is then printed can read the preview and write into items: give it to nobody else, and",
    "                 use it only on a network that you trust, since it is not encrypted.",
    "",
    "Example: fittedcase serve --port 8080",
    "Exit codes: 0 on Ctrl-C; 2 the command is wrong, or the port is in use.",
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
      throw new UsageError("Found no local network on this machine; --lan needs one.");
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
                `Found port ${port} in use, perhaps by another preview; expected a free one. With --port 0 one is chosen for you.`,
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
