import { flacSetup } from "./flac-blocks.ts";
import { entries, fields, inside, type Kept, only, whole } from "./iso-kept.ts";

/** ISO/IEC 14496-12, 12.1.3 to 12.1.5, and what the codecs' own standards add (14496-14 and -15, and others). */
const besidePicture: Readonly<Record<string, Kept>> = {
  avcC: whole,
  hvcC: whole,
  av1C: whole,
  vpcC: whole,
  dvcC: whole,
  dvvC: whole,
  esds: whole,
  // The profile of its colours, which photographs keep as well.
  colr: whole,
  pasp: fields(8),
  clap: fields(32),
  btrt: fields(12),
  mdcv: fields(24),
  clli: fields(4),
  SmDm: fields(28),
  CoLL: fields(8),
  fiel: fields(2),
};

/** ISO/IEC 14496-12, 12.2.3 to 12.2.5; `wave` is where QuickTime has what decodes AAC. */
const besideSound: Readonly<Record<string, Kept>> = {
  esds: whole,
  dOps: whole,
  alac: whole,
  dac3: whole,
  dec3: whole,
  chnl: whole,
  chan: whole,
  // FLAC in ISO base media: version and flags, then blocks as in FLAC itself.
  dfLa: (source, { data, end }) => [...flacSetup(source, data + 4, end)],
  btrt: fields(12),
  pcmC: fields(6),
  srat: fields(8),
  wave: only({ frma: fields(4), mp4a: fields(4), enda: fields(2), esds: whole, alac: whole }),
};

/** 12.1.3: reserved words, where QuickTime has a maker, and 32 bytes for the name of a program. */
const picture: Kept = (source, box) => [
  ...fields(box.end - box.data, [0, 6], [8, 24], [36, 40], [42, 74])(source, box),
  ...only(besidePicture, 78)(source, box),
];

/** 12.2.3; QuickTime's own versions 1 and 2 have more numbers before the boxes. */
const sound =
  (isQuickTime: boolean): Kept =>
  (source, box) => {
    const version = source.read(box.data + 8, 2);
    const more = isQuickTime && version.length === 2 ? ([0, 16, 36][version.readUInt16BE(0)] ?? 0) : 0;
    return [
      ...fields(box.end - box.data, [0, 6], [10, 16])(source, box),
      ...only(besideSound, 28 + more)(source, box),
    ];
  };

/** 8.5.2: how the samples are to be decoded. A table of version 1 has sound of the standard's own version 1. */
const descriptions =
  (entryOf: (version: number | undefined) => Kept): Kept =>
  (source, box) =>
    inside(() => entryOf(source.read(box.data, 1)[0]), 8)(source, box);

/** 8.5 to 8.7: which samples there are, how long each lasts, where each lies, and from which one can begin. */
export const sampleTable = (handler: "vide" | "soun"): Kept =>
  only({
    stsd: descriptions((version) => (handler === "vide" ? picture : sound(version === 0))),
    stts: entries(8),
    ctts: entries(8),
    stss: entries(4),
    stsc: entries(12),
    stco: entries(4),
    co64: entries(8),
    stsz: sizes,
  });

/** 8.7.3.2: one size for all, or one for each. */
function sizes(...[source, box]: Parameters<Kept>): ReturnType<Kept> {
  const head = source.read(box.data + 4, 8);
  if (head.length < 8) return [];
  const each = head.readUInt32BE(0) === 0 ? head.readUInt32BE(4) : 0;
  return fields(12 + 4 * each)(source, box);
}
