import { createRequire } from 'node:module';

const sharp = createRequire(import.meta.url)('sharp');

/** EBML (RFC 8794): an element is its id, its size in eight bytes, and what it holds. */
function element(id, ...content) {
  const body = Buffer.concat(content.map((x) => (typeof x === 'string' ? Buffer.from(x) : x)));
  const head = Buffer.alloc(8);
  head.writeBigUInt64BE(BigInt(body.length));
  head[0] = 0x01;
  return Buffer.concat([Buffer.from(id, 'hex'), head, body]);
}
const number = (value, bytes = 1) => {
  const buffer = Buffer.alloc(bytes);
  buffer.writeUIntBE(value, 0, bytes);
  return buffer;
};
const real = (value) => {
  const buffer = Buffer.alloc(8);
  buffer.writeDoubleBE(value);
  return buffer;
};

/** A key frame of VP8 is the one chunk of a lossy WebP picture (RFC 9649, 2.5). */
async function keyFrame(picture, quality) {
  const webp = await picture.webp({ quality, effort: 5 }).toBuffer();
  const at = webp.indexOf('VP8 ');
  return webp.subarray(at + 8, at + 8 + webp.readUInt32LE(at + 4));
}

/**
 * A film of key frames alone (WebM; Matroska, RFC 9559), each standing until the next. Frames are
 * { at: milliseconds, picture: a sharp pipeline of the film's size, quality }.
 */
export async function film({ width, height, duration, frames }) {
  const coded = [];
  for (const { at, picture, quality } of frames) coded.push({ at, bytes: await keyFrame(picture, quality) });
  const info = element('1549a966', element('2ad7b1', number(1_000_000, 4)), element('4489', real(duration)), element('4d80', 'Fittedcase'), element('5741', 'Fittedcase'));
  const tracks = element(
    '1654ae6b',
    element('ae', element('d7', number(1)), element('73c5', number(1)), element('83', number(1)), element('9c', number(0)), element('86', 'V_VP8'), element('e0', element('b0', number(width, 2)), element('ba', number(height, 2)))),
  );
  const clusters = coded.map(({ at, bytes }) => element('1f43b675', element('e7', number(at, 4)), element('a3', Buffer.of(0x81, 0, 0, 0x80), bytes)));
  const cues = (from) => {
    let place = from;
    return element(
      '1c53bb6b',
      ...coded.map(({ at }, i) => {
        const point = element('bb', element('b3', number(at, 4)), element('b7', element('f7', number(1)), element('f1', number(place, 6))));
        place += clusters[i].length;
        return point;
      }),
    );
  };
  const before = info.length + tracks.length;
  const segment = element('18538067', info, tracks, cues(before + cues(0).length), ...clusters);
  const head = element('1a45dfa3', element('4286', number(1)), element('42f7', number(1)), element('42f2', number(4)), element('42f3', number(8)), element('4282', 'webm'), element('4287', number(2)), element('4285', number(2)));
  return Buffer.concat([head, segment]);
}
