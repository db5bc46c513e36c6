export interface Point {
  readonly x: number;
  readonly y: number;
}

interface Room {
  readonly width: number;
  readonly height: number;
  /** Between the middles of two marks, and twice that from a middle to the edge, at least. */
  readonly distance: number;
}

const rounds = 120;
const golden = Math.PI * (3 - Math.sqrt(5));

/**
 * Places for round marks, each as near to its point as leaves every mark clear of every other and inside the room.
 * A mark that nothing presses on stands on its point. Where the room is too small for all of them at the distance
 * asked for, the distance is shortened until they fit, alike for all.
 *
 * First, marks that press on one another move apart by equal parts; what that leaves too close, in a crowd or a
 * corner, is then put at the nearest free place of a spiral of evenly spread points. Last, marks change places
 * with one another as long as that brings them nearer to their points, all in all: then no two of the ways from
 * point to mark cross, since of two that cross, exchanging their ends makes shorter ones.
 * Sources  the spiral: Vogel (1979), A better way to construct the sunflower head, Mathematical Biosciences 44;
 *          the exchange: Croes (1958), A method for solving traveling-salesman problems, Operations Research 6
 */
export function marksApart(points: readonly Point[], room: Room): readonly Point[] {
  let { distance } = room;
  for (;;) {
    const placed = placedAt(points, { ...room, distance });
    if (placed) return uncrossed(points, placed);
    distance *= 0.9;
  }
}

function placedAt(points: readonly Point[], room: Room): readonly Point[] | null {
  const wanted = pushed(points, room);
  const placed: Point[] = new Array(points.length);
  const taken: Point[] = [];
  // Those that the pushing has settled stay; the others find a place among them.
  const [settled, crowded] = split(wanted, (place, at) => isFree(place, without(wanted, at), room.distance));
  for (const at of settled) {
    const place = wanted[at];
    if (!place) continue;
    placed[at] = place;
    taken.push(place);
  }
  for (const at of crowded) {
    const point = points[at];
    if (!point) continue;
    const place = nearestFree(inRoom(point, room), taken, room);
    if (!place) return null;
    placed[at] = place;
    taken.push(place);
  }
  return placed;
}

function uncrossed(points: readonly Point[], placed: readonly Point[]): readonly Point[] {
  const places = [...placed];
  const way = (from: number, to: number): number => {
    const [point, place] = [points[from], places[to]];
    return point && place ? Math.hypot(place.x - point.x, place.y - point.y) : 0;
  };
  for (let again = true; again; ) {
    again = false;
    for (let a = 0; a < places.length; a++) {
      for (let b = a + 1; b < places.length; b++) {
        // A hair of gain is none: rounding could find it for ever.
        if (way(a, b) + way(b, a) > way(a, a) + way(b, b) - 1e-9) continue;
        const [one, other] = [places[a], places[b]];
        if (!one || !other) continue;
        [places[a], places[b]] = [other, one];
        again = true;
      }
    }
  }
  return places;
}

/** Pairs that are too close share the way that they have to go. */
function pushed(points: readonly Point[], room: Room): readonly Point[] {
  const { distance } = room;
  const places = points.map((point) => inRoom(point, room));
  for (let round = 0; round < rounds; round++) {
    let moved = false;
    for (let a = 0; a < places.length; a++) {
      for (let b = a + 1; b < places.length; b++) {
        const [one, other] = [places[a], places[b]];
        if (!one || !other) continue;
        const apart = Math.hypot(other.x - one.x, other.y - one.y);
        if (apart >= distance) continue;
        moved = true;
        // On one spot there is no way apart: marks later in the list leave it in another direction each.
        const angle = apart > 1e-6 ? Math.atan2(other.y - one.y, other.x - one.x) : b * golden;
        // A hair more than needed, so that rounding cannot bring them back together.
        const way = (distance - apart) / 2 + distance * 1e-4;
        const [dx, dy] = [Math.cos(angle) * way, Math.sin(angle) * way];
        places[a] = inRoom({ x: one.x - dx, y: one.y - dy }, room);
        places[b] = inRoom({ x: other.x + dx, y: other.y + dy }, room);
      }
    }
    if (!moved) break;
  }
  return places;
}

function nearestFree(from: Point, taken: readonly Point[], room: Room): Point | null {
  const step = room.distance / 4;
  const furthest = Math.hypot(room.width, room.height);
  for (let n = 0; step * Math.sqrt(n) <= furthest; n++) {
    const radius = step * Math.sqrt(n);
    const place = { x: from.x + radius * Math.cos(n * golden), y: from.y + radius * Math.sin(n * golden) };
    const kept = inRoom(place, room);
    if (kept.x === place.x && kept.y === place.y && isFree(place, taken, room.distance)) return place;
  }
  return null;
}

const isFree = (place: Point, others: readonly Point[], distance: number): boolean =>
  others.every(({ x, y }) => Math.hypot(x - place.x, y - place.y) >= distance);

/** Half a distance from every edge; in the middle where the room is narrower than that. */
function inRoom({ x, y }: Point, { width, height, distance }: Room): Point {
  const within = (value: number, size: number) =>
    size <= distance ? size / 2 : Math.min(Math.max(value, distance / 2), size - distance / 2);
  return { x: within(x, width), y: within(y, height) };
}

const without = <Value>(values: readonly Value[], at: number): readonly Value[] =>
  values.filter((_, index) => index !== at);

function split<Value>(
  values: readonly Value[],
  belongs: (value: Value, at: number) => boolean,
): readonly [number[], number[]] {
  const [yes, no]: [number[], number[]] = [[], []];
  values.forEach((value, at) => {
    (belongs(value, at) ? yes : no).push(at);
  });
  return [yes, no];
}
