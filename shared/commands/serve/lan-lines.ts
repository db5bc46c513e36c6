import { renderUnicodeCompact } from "uqr";
import type { Access } from "./access.ts";
import { benchAddress } from "./bench/bench-html.ts";

/** What the terminal says of the way in from another machine: the whole address, and a code for a phone's camera. */
export function lanLines({ hosts, key }: Access, port: number): string[] {
  const addresses = hosts.map((host) => `http://${host}:${port}${benchAddress}?key=${key}`);
  const [first] = addresses;
  if (first === undefined) return [];
  return [
    "",
    "From a phone on the same network:",
    ...addresses.map((address) => `  ${address}`),
    "",
    renderUnicodeCompact(first, { border: 2 }),
    "",
    "Whoever has this address can read the preview, see serials and notes in full that you do not publish, and write",
    "into your items until you press Ctrl-C. It is not encrypted: use it only on a network that you trust.",
  ];
}
