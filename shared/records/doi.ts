/** What people write before a DOI: the address that leads to it, or what it is. */
const address = /^https?:\/\/(?:dx\.|www\.)?doi\.org\/(?=10\.)/i;
const label = /^doi\s*(?::\s*)?(?=10\.)/i;

/** In an address some letters of a DOI are escaped (RFC 3986, 2.1); what is no escape stays. */
function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** A DOI by itself, which begins with "10."; whatever else stands there, as it is. */
export const bareDoi = (written: string): string =>
  address.test(written) ? unescaped(written.replace(address, "")) : written.replace(label, "");
