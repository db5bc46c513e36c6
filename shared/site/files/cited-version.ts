import { hash } from "node:crypto";

/** The first twelve hexadecimal digits of the SHA-256 (FIPS 180-4) of a text: what tells one version from others. */
export const citedVersion = (text: string): string => hash("sha256", text).slice(0, 12);
