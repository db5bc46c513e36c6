import { randomBytes, timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** Who may ask the preview for something. */
export interface Access {
  /** Known to whoever was given the address in the terminal; everything that writes, and every other machine, needs it. */
  readonly key: string;
  /** This machine's names in the local network, where it answers there at all. */
  readonly hosts: readonly string[];
}

export const newAccess = (hosts: readonly string[] = []): Access => ({
  // 144 bits: not to be guessed.
  key: randomBytes(18).toString("base64url"),
  hosts,
});

const ownNames = new Set(["localhost", "127.0.0.1", "[::1]"]);
const loopback = new Set(["127.0.0.1", "::1", "::ffff:127.0.0.1"]);
const cookieName = "fittedcase_key";

export const isKey = ({ key }: Access, given: string | null | undefined): boolean => {
  const [a, b] = [Buffer.from(key), Buffer.from(given ?? "")];
  return a.length === b.length && timingSafeEqual(a, b);
};

const cookieOf = ({ headers }: IncomingMessage): string | undefined =>
  (headers.cookie ?? "")
    .split(";")
    .map((pair) => pair.trim().split("="))
    .find(([name]) => name === cookieName)?.[1];

/**
 * Lasts as long as the browser is open, and no script can read it. It is sent to no other host, but to whatever else answers
 * on this one: cookies know no ports (RFC 6265, 8.5).
 */
export const keyCookie = ({ key }: Access): string =>
  `${cookieName}=${key}; HttpOnly; SameSite=Strict; Path=/`;

/**
 * Why a request is refused; null where it is not.
 * A page of somebody else's, open in the same browser, must not read the preview by way of another name, so that only
 * our own names are answered to; and another machine must bring the key.
 */
export function refusal(request: IncomingMessage, access: Access, addressKey: string | null): string | null {
  const { headers, socket } = request;
  const elsewhere = "This preview answers only its own pages.";
  const hostName = (headers.host ?? "").replace(/:\d+$/, "");
  const isHere = ownNames.has(hostName) && loopback.has(socket.remoteAddress ?? "");
  if (!isHere && !access.hosts.includes(hostName)) return "This preview answers only at its own address.";
  if (headers.origin !== undefined && headers.origin !== `http://${headers.host}`) return elsewhere;
  // A picture or a script asks without an origin, and a frame too; a link that somebody follows may come from anywhere.
  const site = headers["sec-fetch-site"];
  const isFollowed = headers["sec-fetch-mode"] === "navigate" && headers["sec-fetch-dest"] === "document";
  if (site !== undefined && site !== "same-origin" && site !== "none" && !isFollowed) return elsewhere;
  if (!isHere && !isKey(access, cookieOf(request)) && !isKey(access, addressKey))
    return "This preview does not know this device, or has been restarted: scan the code in the terminal again, or open the whole address shown there.";
  return null;
}

/** Why a request to write is refused: it must come from a page of ours that was given the key. */
export function writeRefusal(
  { headers }: IncomingMessage,
  access: Access,
  form: URLSearchParams,
): string | null {
  if (headers.origin !== `http://${headers.host}`) return "Only a page of this preview may write.";
  const site = headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin") return "Only a page of this preview may write.";
  return isKey(access, form.get("key")) ? null : "This page belongs to an earlier preview. Load it again.";
}
