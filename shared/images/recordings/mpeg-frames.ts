/** Of layer III, in thousands of bits a second: MPEG-1, and 2 with 2.5. ISO/IEC 11172-3, 2.4.2.3; 13818-3, 2.4.2.3 */
const bitRates = {
  1: [32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320],
  2: [8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160],
} as const;

/** By the two bits of the version, of which 01 means nothing. */
const sampleRates: Readonly<Record<number, readonly number[]>> = {
  3: [44_100, 48_000, 32_000],
  2: [22_050, 24_000, 16_000],
  0: [11_025, 12_000, 8_000],
};

/** How many bytes the frame of layer III has that begins with these four; null of what begins none. */
export function frameLength(head: Buffer): number | null {
  const [first = 0, second = 0, third = 0] = head;
  if (head.length < 4 || first !== 0xff || (second & 0xe6) !== 0xe2) return null;
  const version = (second >> 3) & 3;
  const sampleRate = sampleRates[version]?.[(third >> 2) & 3];
  const bitRate = bitRates[version === 3 ? 1 : 2][(third >> 4) - 1];
  if (sampleRate === undefined || bitRate === undefined) return null;
  const bytes = ((version === 3 ? 144 : 72) * bitRate * 1000) / sampleRate;
  return Math.floor(bytes) + ((third >> 1) & 1);
}
