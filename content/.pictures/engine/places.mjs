import { group, sheet, v } from './shapes.mjs';
import { unitsOf } from './records.mjs';

const wears = { 'as-made': 0, fine: 0.15, sound: 0.35, worn: 0.7, damaged: 0.85, fragment: 0.95 };
export const wearOf = (unit) => wears[unit?.condition] ?? 0.35;
export const there = (unit) => ['present', 'substitute', 'unverified'].includes(unit.state);

/**
 * The parts of an item, unit by unit, with the features as observed or else as its variant has them. The plan's
 * `order` says in which place each unit lies, where the record's note tells it.
 */
export function partsOf(item, variants, plan = {}) {
  const variant = variants.get(item.variant);
  const features = Object.fromEntries(Object.entries(variant.features).map(([f, value]) => [f, item.features?.[f] ?? (Array.isArray(value) ? value[0] : value)]));
  const ids = new Set([...Object.keys(variant.parts), ...Object.keys(plan.parts ?? {})]);
  const inPlace = (id, units) => units.map((unit, i) => ({ ...unit, index: plan.order?.[id]?.[i] ?? unit.index }));
  const units = new Map([...ids].map((id) => [id, inPlace(id, unitsOf(item.parts?.[id] ?? plan.parts?.[id], variant.parts[id]?.quantity ?? 1))]));
  const has = (id) => Boolean(units.get(id)?.some(there));
  const mark = (id) => units.get(id)?.[0]?.marks?.[0];
  return { id: item.id, variant, features, units, there, has, mark, set: item.set, wear: wearOf(units.get('case')?.[0]), plan };
}

export const contextOf = (o, id, unit) => ({
  id, variant: o.variant.id, features: o.features, wear: wearOf(unit), mark: unit.marks?.[0], set: o.set, model: unit.model, state: unit.state, index: unit.index, part: unit,
  note: unit.note ?? '', packed: unit.packed ?? '', repairs: (unit.repairs ?? []).join(' '),
});

/** Whether a place belongs to the case of this variant: it does where the variant has the part, or any of those that share it. */
const holds = (layout, o, id) => o.variant.parts[id] !== undefined || (layout.always ?? []).includes(id);

export const recessesOf = (layout, o, level) =>
  Object.entries(layout.places)
    .filter(([id, p]) => p.level === level && p.recess && holds(layout, o, id))
    .map(([, p]) => ({ shapes: p.recess, depth: p.depth ?? 0.6 }));

/** The units of a level, each in its place, and where each part is. `skip` leaves the unexamined bare. */
export function unitsIn(layout, o, level, models, { at = [0, 0, 0], y = 0, wrapped = true } = {}) {
  const solids = [];
  const points = new Map();
  for (const [id, place] of Object.entries(layout.places)) {
    if (!o.units.has(id)) continue;
    const quantity = o.variant.parts[id]?.quantity ?? 1;
    const floor = y - (place.depth ?? (place.recess ? 0.6 : 0));
    const put = (model, c, [x, z, turn = 0, lift = 0]) => models[model] && solids.push(group([models[model](c)], { scale: place.scale, rotate: [0, turn, 0], at: [x, floor + lift, z] }));
    if (place.level === level) {
      const [px, pz] = place.point ?? place.at[0];
      points.set(id, [px + at[0], floor + (place.height ?? 0.8) + at[1], pz + at[2]]);
      if (place.rest && o.units.get(id).some(there)) put(place.rest, contextOf(o, id, o.units.get(id)[0]), place.restAt ?? place.at[0]);
    }
    for (const unit of o.units.get(id)) {
      if (unit.state === 'unexamined' && place.level === level && wrapped && place.recess) solids.push(tissue(place, unit, floor));
      if (!there(unit)) continue;
      const spare = unit.surplus && place.spare?.[unit.index - quantity];
      if (spare?.[0] === level) solids.push(group([models[id]({ ...contextOf(o, id, unit), spare: true })], { rotate: [0, spare[3] ?? 0, 0], at: [spare[1], y, spare[2]] }));
      else if (!spare && place.level === level) {
        const where = place.grid ? gridAt(place.grid, unit.index) : (place.at[unit.index] ?? place.at.at(-1));
        put(id, contextOf(o, id, unit), where);
      }
    }
  }
  return { solids: [group(solids, { at })], points };
}

/** Place of unit i in a grid of [x, z, columns, pitch x, pitch z]. */
const gridAt = ([x, z, columns, dx, dz], i) => [x + (i % columns) * dx, z - Math.floor(i / columns) * dz, 17 * Math.sin(i * 3.1)];

/** A part that nobody has unwrapped: tissue crumpled over it in its place. */
export function tissue(place, unit, y) {
  const [x, z] = place.at?.[unit.index] ?? place.at?.[0] ?? gridAt(place.grid, unit.index);
  const [w, d] = place.wrap ?? [4, 2];
  const seed = 1.7 * unit.index + x * 0.31 + z * 0.53;
  const crease = (t) => (1 - Math.abs(Math.sin(t))) ** 2.4;
  const solid = sheet(-1, -1, 1, 1, Math.round(Math.min(110, 34 + w * 3)), Math.round(Math.min(60, 30 + d * 3)), (u, t) => {
    // A square drawn to a round, so that the rim is a torn oval and not a box.
    const [a, b] = [u * Math.sqrt(1 - (t * t) / 2.6), t * Math.sqrt(1 - (u * u) / 2.6)];
    const turn = Math.atan2(b, a);
    const ragged = 1.06 + 0.06 * Math.sin(5 * turn + seed) + 0.045 * Math.sin(11 * turn + 2 * seed) + 0.03 * Math.sin(23 * turn - seed);
    const [px, pz] = [(a * w * ragged) / 1.7, (b * d * ragged) / 1.7];
    const rim = Math.max(0, 1 - Math.max(Math.abs(u), Math.abs(t)) ** 5);
    const folds = 0.42 * crease(px * 1.15 + pz * 0.7 + seed) + 0.36 * crease(px * 0.6 - pz * 1.35 + 0.8 * Math.sin(px) + 2 * seed) + 0.24 * crease(px * 2.1 - pz * 1.7 + Math.sin(2 * pz + seed)) + 0.16 * crease(px * 3.1 + pz * 3.3 + seed);
    return [px, rim * (0.55 + 0.7 * folds) + 0.1 * folds, pz];
  }, 'Tissue(0)');
  return `object { ${solid} translate ${v(x, y, z)} }`;
}
