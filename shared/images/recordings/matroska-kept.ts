/** An element that is kept: as a number or a short text, with all that is in it, empty, or as far as what is in it is. */
export type KeptElement = "number" | "text" | "bytes" | "empty" | "block" | "group" | "track" | KeptElements;
export type KeptElements = ReadonlyMap<number, KeptElement>;

const kept = (...elements: readonly (readonly [number, KeptElement])[]): KeptElements => new Map(elements);
const numbers = (...ids: readonly number[]) => ids.map((id) => [id, "number"] as const);

/** EBML (RFC 8794), 11.2: versions, longest ids and sizes, and the type of the document. */
export const keptOfHead = kept(...numbers(0x4286, 0x42f7, 0x42f2, 0x42f3, 0x4287, 0x4285), [0x4282, "text"]);

/** Matroska (RFC 9559), 5.1.4.1.28: size, crop, shape, colours and turning of a picture. */
const video = kept(
  ...numbers(0x9a, 0x9d, 0x53b8, 0xb0, 0xba, 0x54aa, 0x54bb, 0x54cc, 0x54dd, 0x54b0, 0x54ba, 0x54b2),
  [
    0x55b0,
    kept(
      ...numbers(0x55b1, 0x55b2, 0x55b3, 0x55b4, 0x55b5, 0x55b6, 0x55b7, 0x55b8, 0x55b9, 0x55ba, 0x55bb),
      ...numbers(0x55bc, 0x55bd),
      [0x55d0, kept(...Array.from({ length: 10 }, (_, at) => [0x55d1 + at, "number"] as const))],
    ),
  ],
  [0x7670, kept(...numbers(0x7671, 0x7673, 0x7674, 0x7675))],
);

/** 5.1.4.1.31: what every frame was encoded by once more, without which it cannot be read. */
const encodings = kept([
  0x6240,
  kept(...numbers(0x5031, 0x5032, 0x5033), [0x5034, kept(...numbers(0x4254), [0x4255, "bytes"])]),
]);

/**
 * 5.1.4.1: number, kind, flags and durations of a track. What decodes it is looked through where it is kept, and so is
 * whether it is one of picture or sound.
 */
export const keptOfTrack = kept(
  ...numbers(0xd7, 0x73c5, 0x83, 0xb9, 0x88, 0x55aa, 0x9c, 0x23e383, 0x23314f, 0x56aa, 0x56bb),
  [0x86, "text"],
  [0x63a2, "bytes"],
  [0xe0, video],
  // 5.1.4.1.29
  [0xe1, kept(...numbers(0xb5, 0x78b5, 0x9f, 0x6264))],
  [0x6d80, encodings],
);

/** 5.1.3.5.1: a block and what it is timed by. */
export const keptOfGroup = kept(...numbers(0x9b, 0xfa, 0xfb, 0x75a2), [0xa1, "bytes"]);

/** 5.1.3 */
const ofCluster = [...numbers(0xe7, 0xa7, 0xab), [0xa3, "block"], [0xa0, "group"]] as const;

/** 5.1; of a cluster whose size is left open, what is in it stands beside it. */
export const keptOfSegment = kept(
  // 5.1.1: where in the segment each section begins.
  [0x114d9b74, kept([0x4dbb, kept(...numbers(0x53ab, 0x53ac))])],
  // 5.1.2: ticks and length; the programs that wrote it must be there, and may be empty.
  [0x1549a966, kept(...numbers(0x2ad7b1, 0x4489), [0x4d80, "empty"], [0x5741, "empty"])],
  [0x1654ae6b, kept([0xae, "track"])],
  [0x1f43b675, kept(...ofCluster)],
  ...ofCluster,
  // 5.1.5: where one can jump to.
  [
    0x1c53bb6b,
    kept([0xbb, kept(...numbers(0xb3), [0xb7, kept(...numbers(0xf7, 0xf1, 0xf0, 0xb2, 0x5378))])]),
  ],
);
