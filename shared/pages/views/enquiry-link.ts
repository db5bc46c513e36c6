import type { Link } from "../page.ts";

/** Where to write: a page, or a letter that says what it is about (RFC 6068). */
export function enquiryLink(enquiries: string | null, about: string): Link | null {
  if (enquiries === null) return null;
  return /^https?:/i.test(enquiries)
    ? { address: enquiries, name: enquiries.replace(/^https?:\/\//i, "").replace(/\/$/, "") }
    : { address: `mailto:${enquiries}?subject=${encodeURIComponent(about)}`, name: enquiries };
}
