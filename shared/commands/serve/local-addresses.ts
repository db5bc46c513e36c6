import { networkInterfaces } from "node:os";

/** The machine's addresses in its local networks (IPv4), without those that only it can reach. */
export const localAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal)
    .map(({ address }) => address);
