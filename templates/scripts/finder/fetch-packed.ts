/** A file that the build compressed; a host that unpacks it on the way is none the worse. */
export async function fetchPacked(address: URL): Promise<unknown> {
  const response = await fetch(address);
  if (!response.ok) throw response;
  const bytes = new Uint8Array(await response.arrayBuffer());
  const isPacked = bytes[0] === 0x1f && bytes[1] === 0x8b;
  const text = isPacked
    ? new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).text()
    : new TextDecoder().decode(bytes);
  return JSON.parse(await text);
}
