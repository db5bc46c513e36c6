/** A set of small whole numbers, one bit each, for searches that intersect sets millions of times. */
export type BitSet = Uint32Array;

export function bitSet(size: number, members: Iterable<number> = []): BitSet {
  const set = new Uint32Array(Math.ceil(size / 32));
  for (const member of members) addBit(set, member);
  return set;
}

export function addBit(set: BitSet, member: number): void {
  set[member >>> 5] = word(set, member >>> 5) | (1 << (member & 31));
}

export function removeBit(set: BitSet, member: number): void {
  set[member >>> 5] = word(set, member >>> 5) & ~(1 << (member & 31));
}

export function hasBit(set: BitSet, member: number): boolean {
  return (word(set, member >>> 5) & (1 << (member & 31))) !== 0;
}

export function isEmpty(set: BitSet): boolean {
  return set.every((bits) => bits === 0);
}

/** Whether every member of `part` is in `whole`. */
export function isSubset(part: BitSet, whole: BitSet): boolean {
  return part.every((bits, index) => (bits & ~word(whole, index)) === 0);
}

export function intersection(a: BitSet, b: BitSet): BitSet {
  return a.map((bits, index) => bits & word(b, index));
}

export function difference(a: BitSet, b: BitSet): BitSet {
  return a.map((bits, index) => bits & ~word(b, index));
}

/** How many members two sets share. */
export function countCommon(a: BitSet, b: BitSet): number {
  let count = 0;
  for (let index = 0; index < a.length; index++) count += countBits(word(a, index) & word(b, index));
  return count;
}

/** The members, in ascending order. */
export function membersOf(set: BitSet): number[] {
  const members: number[] = [];
  for (let index = 0; index < set.length; index++) {
    for (let bits = word(set, index); bits !== 0; bits &= bits - 1) {
      members.push(index * 32 + 31 - Math.clz32(bits & -bits));
    }
  }
  return members;
}

function word(set: BitSet, index: number): number {
  return set[index] as number;
}

/** Bits counted in parallel, pairs first: Warren (2012), Hacker's Delight, 2nd edition, section 5-1. */
function countBits(bits: number): number {
  const pairs = bits - ((bits >>> 1) & 0x55555555);
  const nibbles = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return (((nibbles + (nibbles >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}
