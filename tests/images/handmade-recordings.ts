import sharp from "sharp";

/** In every secret, so that one search finds any of them. */
export const canary = "CANARY";

const be = (value: number, bytes: number): Buffer => {
  const buffer = Buffer.alloc(bytes);
  buffer.writeUIntBE(value, 0, bytes);
  return buffer;
};
const text = (value: string) => Buffer.from(value, "latin1");
export const secret = (what: string) => text(`${canary}-${what}`);

// Matroska (RFC 9559) and EBML (RFC 8794): an element is its id, its size, and what it holds.

/** Sizes in eight bytes; "open" is the size that says that there is none. */
export function ebml(id: string, content: readonly (Buffer | number)[] | Buffer, size?: "open"): Buffer {
  const body = Buffer.isBuffer(content)
    ? content
    : Buffer.concat(content.map((each) => (typeof each === "number" ? be(each, 1) : each)));
  const head = Buffer.alloc(8);
  head.writeBigUInt64BE(BigInt(body.length));
  head[0] = 0x01;
  if (size === "open") head.fill(0xff, 1);
  return Buffer.concat([Buffer.from(id, "hex"), head, body]);
}

/** A key frame of VP8: the one chunk of a lossy WebP picture (RFC 9649, 2.5). */
async function keyFrame(shade: number): Promise<Buffer> {
  const webp = await sharp({
    create: { width: 320, height: 180, channels: 3, background: { r: shade, g: 90, b: 60 } },
  })
    .webp({ quality: 40 })
    .toBuffer();
  const at = webp.indexOf("VP8 ");
  return webp.subarray(at + 8, at + 8 + webp.readUInt32LE(at + 4));
}

export interface WebmOptions {
  readonly seconds: number;
  /** As a recorder writes it that does not yet know how long it will be. */
  readonly open?: boolean;
}

/** A film of a frame a second, with all that may stand in one beside the picture. */
export async function webmFilm({ seconds, open = false }: WebmOptions): Promise<Buffer> {
  const frames = await Promise.all(
    Array.from({ length: seconds }, (_, second) => keyFrame(Math.round((255 * second) / seconds))),
  );
  const size = open ? "open" : undefined;
  const info = ebml("1549a966", [
    ebml("2ad7b1", be(1_000_000, 4)),
    ...(open ? [] : [ebml("4489", doubleOf(seconds * 1000))]),
    ebml("4461", be(0x0102030405, 8 - 2)),
    ebml("7ba9", secret("title")),
    ebml("7384", secret("file-name")),
    ebml("4d80", secret("muxer")),
    ebml("5741", secret("writer")),
  ]);
  const tracks = ebml("1654ae6b", [
    ebml("ae", [
      ebml("d7", [1]),
      ebml("73c5", [1]),
      ebml("83", [1]),
      ebml("536e", secret("track")),
      ebml("86", text("V_VP8")),
      ebml("e0", [ebml("b0", be(320, 2)), ebml("ba", be(180, 2))]),
    ]),
  ]);
  const tags = ebml("1254c367", [
    ebml("7373", [
      ebml("67c8", [
        ebml("45a3", text("RECORDING_LOCATION")),
        ebml("4487", secret("place +47.1234+011.6543/")),
      ]),
    ]),
  ]);
  const attachments = ebml("1941a469", [
    ebml("61a7", [ebml("466e", secret("attached.txt")), ebml("465c", secret("attached"))]),
  ]);
  const clusters = frames.map((frame, second) =>
    ebml("1f43b675", [ebml("e7", be(second * 1000, 4)), ebml("a3", [0x81, 0, 0, 0x80, frame])], size),
  );
  const head = ebml("1a45dfa3", [
    ebml("4286", [1]),
    ebml("42f7", [1]),
    ebml("42f2", [4]),
    ebml("42f3", [8]),
    ebml("4282", text("webm")),
    ebml("4287", [2]),
    ebml("4285", [2]),
  ]);
  const before = Buffer.concat([info, tracks, tags, attachments]);
  // What a player needs to jump: where in the segment each second begins.
  const cuesLength = ebml("1c53bb6b", cuePoints(clusters, 0)).length;
  const cues = ebml("1c53bb6b", cuePoints(clusters, before.length + cuesLength));
  const segment = [before, ...(open ? [] : [cues]), ...clusters];
  return Buffer.concat([head, ebml("18538067", segment, size)]);
}

function cuePoints(clusters: readonly Buffer[], from: number): Buffer[] {
  let at = from;
  return clusters.map((cluster, second) => {
    const point = ebml("bb", [
      ebml("b3", be(second * 1000, 4)),
      ebml("b7", [ebml("f7", [1]), ebml("f1", be(at, 6))]),
    ]);
    at += cluster.length;
    return point;
  });
}

function doubleOf(value: number): Buffer {
  const buffer = Buffer.alloc(8);
  buffer.writeDoubleBE(value);
  return buffer;
}

// ISO base media (ISO/IEC 14496-12): a box is its size, its type, and what it holds.

export const box = (type: string, ...content: readonly Buffer[]): Buffer => {
  const body = Buffer.concat(content);
  return Buffer.concat([be(body.length + 8, 4), text(type), body]);
};
const versioned = (type: string, ...content: readonly Buffer[]) => box(type, be(0, 4), ...content);
const zeros = (length: number) => Buffer.alloc(length);
const moment = be(3_850_000_000, 4);
const matrix = Buffer.concat([0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000].map((value) => be(value, 4)));

interface Track {
  readonly handler: string;
  readonly entry: Buffer;
  readonly sizes: readonly number[];
  readonly offset: number;
}

const track = (id: number, { handler, entry, sizes, offset }: Track) =>
  box(
    "trak",
    versioned(
      "tkhd",
      moment,
      moment,
      be(id, 4),
      zeros(4),
      be(2000, 4),
      zeros(16),
      matrix,
      be(320 << 16, 4),
      be(180 << 16, 4),
    ),
    box("udta", box("name", secret(`user-data-${id}`))),
    box(
      "mdia",
      versioned("mdhd", moment, moment, be(1000, 4), be(2000, 4), be(0x55c40000, 4)),
      versioned("hdlr", zeros(4), text(handler), zeros(12), secret(`handler-${id}`), zeros(1)),
      box(
        "minf",
        box("dinf", versioned("dref", be(1, 4), box("url ", be(1, 4)))),
        box(
          "stbl",
          versioned("stsd", be(1, 4), entry),
          versioned("stts", be(1, 4), be(sizes.length, 4), be(1000, 4)),
          // All samples but one in the first chunk.
          versioned(
            "stsc",
            be(2, 4),
            be(1, 4),
            be(sizes.length - 1, 4),
            be(1, 4),
            be(2, 4),
            be(1, 4),
            be(1, 4),
          ),
          versioned("stsz", zeros(4), be(sizes.length, 4), ...sizes.map((size) => be(size, 4))),
          versioned(
            "stco",
            be(2, 4),
            be(offset, 4),
            be(offset + sizes.slice(0, -1).reduce((sum, size) => sum + size, 0), 4),
          ),
        ),
      ),
    ),
  );

const picture = Buffer.from("a picture that nobody touches".repeat(4), "latin1");
export const isoPicture = picture;

/** A film with a track of positions beside that of the picture, as cameras write them. */
export function isoFilm(handler = "camm"): Buffer {
  const brand = box("ftyp", text("isom"), be(512, 4), text("isomiso2avc1mp41"));
  const positions = Buffer.concat([
    secret("position-1 47.1234"),
    secret("position-2 11.6543"),
    secret("position-3"),
  ]);
  const start = brand.length + 8;
  const visual = box(
    "avc1",
    zeros(6),
    be(1, 2),
    zeros(16),
    be(320, 2),
    be(180, 2),
    be(0x480000, 4),
    be(0x480000, 4),
    zeros(4),
    be(1, 2),
    be(`${canary}-encoder`.length, 1),
    secret("encoder"),
    zeros(31 - `${canary}-encoder`.length),
    be(24, 2),
    be(0xffff, 2),
  );
  const lengths = [
    `${canary}-position-1 47.1234`,
    `${canary}-position-2 11.6543`,
    `${canary}-position-3`,
  ].map(({ length }) => length);
  return Buffer.concat([
    brand,
    box("mdat", picture, positions),
    box(
      "moov",
      versioned(
        "mvhd",
        moment,
        moment,
        be(1000, 4),
        be(2000, 4),
        be(0x10000, 4),
        be(0x0100, 2),
        zeros(10),
        matrix,
        zeros(24),
        be(3, 4),
      ),
      track(1, { handler: "vide", entry: visual, sizes: [58, 58], offset: start }),
      track(2, {
        handler,
        entry: box("camm", zeros(6), be(1, 2)),
        sizes: lengths,
        offset: start + picture.length,
      }),
      box("udta", box("\xa9xyz", be(20, 2), be(0x15c7, 2), secret("+47.1234+011.6543/"))),
    ),
    box("uuid", Buffer.from("be7acfcb97a942e89c71999491e3afac", "hex"), secret("xmp")),
    box("free", secret("left over")),
  ]);
}

// Sound.

const le = (value: number, bytes: number): Buffer => {
  const buffer = Buffer.alloc(bytes);
  buffer.writeUIntLE(value, 0, bytes);
  return buffer;
};

/** A tone of 8 bits, as long as wanted; RIFF (1991), chapter 3. */
export function waveSound(seconds: number, rate = 4000): Buffer {
  const samples = Buffer.alloc(rate * seconds, 128);
  for (let at = 0; at < samples.length; at += 10) samples[at] = 150;
  const chunk = (name: string, body: Buffer) =>
    Buffer.concat([text(name), le(body.length, 4), body, zeros(body.length % 2)]);
  const format = chunk(
    "fmt ",
    Buffer.concat([le(1, 2), le(1, 2), le(rate, 4), le(rate, 4), le(1, 2), le(8, 2)]),
  );
  const list = chunk(
    "LIST",
    Buffer.concat([text("INFO"), chunk("IART", secret("artist")), chunk("ICMT", secret("odd"))]),
  );
  const body = Buffer.concat([
    text("WAVE"),
    format,
    list,
    chunk("bext", secret("origin")),
    chunk("data", samples),
  ]);
  return Buffer.concat([text("RIFF"), le(body.length, 4), body]);
}

/** ID3v2.4 (3.1), frames of layer III that hold no sound, APEv2 and ID3v1. */
export function mpegSound(): Buffer {
  const frame = (id: string, body: Buffer) => Buffer.concat([text(id), be(body.length, 4), zeros(2), body]);
  const tag = Buffer.concat([
    frame("TPE1", Buffer.concat([be(3, 1), secret("artist")])),
    frame("COMM", Buffer.concat([be(3, 1), text("eng"), zeros(1), secret("comment")])),
  ]);
  const head = Buffer.concat([
    text("ID3"),
    Buffer.of(4, 0, 0),
    be(0, 2),
    Buffer.of(tag.length >> 7, tag.length & 0x7f),
  ]);
  const sound = Buffer.concat(
    Array.from({ length: 4 }, () => Buffer.concat([Buffer.of(0xff, 0xfb, 0x90, 0x64), zeros(413)])),
  );
  const ape = Buffer.concat([le(`${canary}-ape`.length, 4), zeros(4), text("Artist\0"), secret("ape")]);
  const footer = Buffer.concat([text("APETAGEX"), le(2000, 4), le(ape.length + 32, 4), le(1, 4), zeros(12)]);
  const old = Buffer.concat([text("TAG"), secret("title"), zeros(128 - 3 - `${canary}-title`.length)]);
  return Buffer.concat([head, tag, sound, ape, footer, old]);
}

/** The first example of RFC 9639 (D.1), a frame of one sample; with comments and a block of a program before it. */
export function flacSound(): Buffer {
  const block = (kind: number, body: Buffer, last = false) =>
    Buffer.concat([be(kind | (last ? 0x80 : 0), 1), be(body.length, 3), body]);
  const comment = secret("vendor");
  const artist = text(`ARTIST=${canary}-artist`);
  return Buffer.concat([
    text("fLaC"),
    block(0, Buffer.from("1000100000000f00000f0ac442f0000000013e84b41807dc690307586a3dad1a2e0f", "hex")),
    block(4, Buffer.concat([le(comment.length, 4), comment, le(1, 4), le(artist.length, 4), artist])),
    block(2, Buffer.concat([text("test"), secret("application")]), true),
    flacFrame,
  ]);
}

export const flacFrame = Buffer.from("fff869180000bf0358fd03128baa9a", "hex");
