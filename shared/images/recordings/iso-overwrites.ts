import type { ByteSource, Overwrite } from "./byte-source.ts";
import { type IsoBox, isoBoxes, within } from "./iso-boxes.ts";
import { sampleRanges } from "./iso-samples.ts";

/** What players need; every other track (positions, sensors, time codes) goes with its samples. */
const keptTracks = ["vide", "soun", "text", "sbtl", "subt"];

/** Descriptions, previews and room that was never cleaned; `uuid` is how makers write what no standard has. */
const dropped = ["udta", "meta", "uuid", "free", "skip", "wide", "pnot", "PICT", "XML ", "bxml"];

/**
 * Writes over what an MP4 file says beside picture and sound: no box changes its size, so that every offset in the
 * file still holds. A box that is dropped becomes free space.
 * Source  ISO/IEC 14496-12: 8.1.2 free space, 8.2.2 mvhd, 8.3.2 tkhd, 8.4.2 mdhd, 8.4.3 hdlr, 12.1.3 visual entries
 */
export function isoOverwrites(source: ByteSource): Overwrite[] {
  return [...isoBoxes(source, 0, source.size)].flatMap((box) =>
    box.type === "moov" ? inMovie(source, box) : dropped.includes(box.type) ? asFreeSpace(box) : [],
  );
}

function inMovie(source: ByteSource, movie: IsoBox): Overwrite[] {
  return within(source, movie).flatMap((box) => {
    if (box.type === "mvhd") return [times(source, box)];
    if (box.type === "trak") return inTrack(source, box);
    return dropped.includes(box.type) ? asFreeSpace(box) : [];
  });
}

function inTrack(source: ByteSource, track: IsoBox): Overwrite[] {
  const boxes = within(source, track);
  const media = boxes.find(({ type }) => type === "mdia");
  const inMedia = media ? within(source, media) : [];
  const handler = inMedia.find(({ type }) => type === "hdlr");
  const kind = handler ? source.read(handler.data + 8, 4).toString("latin1") : "";
  if (!keptTracks.includes(kind)) {
    return [...asFreeSpace(track), ...sampleRanges(source, inMedia).map(([at, bytes]) => ({ at, bytes }))];
  }
  return [
    ...boxes.flatMap((box) => {
      if (box.type === "tkhd") return [times(source, box)];
      return dropped.includes(box.type) ? asFreeSpace(box) : [];
    }),
    ...inMedia.flatMap((box) => {
      if (box.type === "mdhd") return [times(source, box)];
      // Beyond version, type and reserved words stands a name: of a program or a camera.
      if (box.type === "hdlr") return [{ at: box.data + 24, bytes: Math.max(0, box.end - box.data - 24) }];
      return dropped.includes(box.type) ? asFreeSpace(box) : [];
    }),
    ...(kind === "vide" ? compressorNames(source, inMedia) : []),
  ];
}

/** When it was made and changed: zero is the standard's own "not known". */
function times(source: ByteSource, { data }: IsoBox): Overwrite {
  const version = source.read(data, 1)[0];
  return { at: data + 4, bytes: version === 1 ? 16 : 8 };
}

function compressorNames(source: ByteSource, media: readonly IsoBox[]): Overwrite[] {
  const table = sampleTable(source, media).find(({ type }) => type === "stsd");
  if (!table) return [];
  // Version and count come before the entries.
  return [...isoBoxes(source, table.data + 8, table.end)].map(({ data }) => ({ at: data + 42, bytes: 32 }));
}

function sampleTable(source: ByteSource, media: readonly IsoBox[]): readonly IsoBox[] {
  const information = media.find(({ type }) => type === "minf");
  const table = information && within(source, information).find(({ type }) => type === "stbl");
  return table ? within(source, table) : [];
}

const asFreeSpace = ({ start, data, end }: IsoBox): Overwrite[] => [
  { at: start + 4, bytes: Buffer.from("free", "latin1") },
  { at: data, bytes: end - data },
];
