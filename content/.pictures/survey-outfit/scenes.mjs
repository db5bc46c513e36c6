import { group, sheet, v, words } from '../engine/shapes.mjs';
import * as box from './case.mjs';
import { tissue } from '../engine/places.mjs';
import { contextOf, models } from './outfit.mjs';
import * as beside from './beside.mjs';
import { handbook, issueCard } from './papers.mjs';

/** Where the levels stand: the tray and the well in the case, the drawer pulled out to its left. */
const stands = { tray: [0, 0, 0], well: [0, 0, 0], drawer: [-28.2, 0, -0.6], ground: [0, 0, 0] };

export const recessesOf = (layout, o, level) =>
  Object.values(layout.places)
    .filter((p) => p.level === level && p.recess && (!p.patterns || p.patterns.includes(o.casePattern)))
    .map((p) => ({ shapes: p.recess, depth: p.depth }));

const heightOf = (layout, level) => (level === 'ground' ? 0 : layout.levels[level].lift);

/** The units of a level, each in its place; and where each part is, for callouts. */
export function unitsIn(layout, o, level) {
  const solids = [];
  const points = new Map();
  const put = (id, c, at, y, place) => {
    const [x, z, turn = 0] = at;
    const model = models[id];
    if (model) solids.push(group([model(c)], { scale: place.scale, rotate: [0, turn, 0], at: [x, y, z] }));
  };
  for (const [id, place] of Object.entries(layout.places)) {
    if (!o.units.has(id) || (place.patterns && !place.patterns.includes(o.casePattern))) continue;
    const units = o.units.get(id);
    const y = heightOf(layout, place.level) - (place.depth ?? 0);
    if (place.level === level) {
      const [px, pz] = place.point ?? place.at[0];
      points.set(id, [px, y + (place.height ?? 0.8), pz]);
      if (place.rest && units.some(o.there)) put(place.rest, contextOf(o, id, units[0]), place.restAt ?? place.at[0], y, place);
    }
    for (const unit of units) {
      if (unit.state === 'unexamined' && place.level === level) solids.push(tissue(place, unit, y));
      if (!o.there(unit)) continue;
      const spare = unit.surplus && place.spare?.[unit.index - (o.variant.parts[id]?.quantity ?? 1)];
      if (spare && spare[0] === level) {
        const [, x, z, turn] = spare;
        put(id, { ...contextOf(o, id, unit), index: 0 }, [x, z, turn], heightOf(layout, level), place);
      } else if (!spare && place.level === level) {
        const at = place.stack ? place.at[0] : (place.at[unit.index] ?? place.at.at(-1));
        put(id, contextOf(o, id, unit), at, y, place);
        if (id === 'lamp') put('lamp-cap', contextOf(o, id, unit), layout.places['lamp-cap'].at[0], y, {});
      }
    }
  }
  return { solids: [group(solids, { at: stands[level] })], points: new Map([...points].map(([id, p]) => [id, p.map((q, k) => q + stands[level][k])])) };
}

function lidOf(o) {
  const papers = [];
  const book = o.units.get('handbook')?.[0];
  if (book && o.there(book)) papers.push({ x: -9.9, w: 9.4, thick: 0.85, solid: group([handbook(contextOf(o, 'handbook', book))], { at: [-9.9, 1.4, 9.2] }) });
  const card = o.units.get('issue-card')?.[0];
  if (card && o.there(card)) papers.push({ x: 9.8, w: 8.2, thick: 0.12, solid: group([issueCard(contextOf(o, 'issue-card', card))], { rotate: [0, 2, 0], at: [9.8, 1.42, 8.2] }) });
  const plate = o.units.get('contract-plate')?.[0];
  return [...box.pocket(o, papers), plate && o.there(plate) && group([box.contractPlate(o)], { at: [1.6, 1.28, 15.9] })];
}

const lidPoints = (o) => new Map([
  ['contract-plate', box.lidPoint([1.6, 1.6, 15.9])], ['handbook', box.lidPoint([-9.9, 2.2, 13])], ['issue-card', box.lidPoint([9.8, 1.6, 12])],
]);

/** The whole outfit, tray in place, drawer beside it. */
export function openCase(layout, o, folder, plan) {
  const level = (id) => layout.levels[id];
  const tray = unitsIn(layout, o, 'tray');
  const drawer = unitsIn(layout, o, 'drawer');
  const ground = unitsIn(layout, o, 'ground');
  return {
    camera: { look: [-9.9, 8, 9.3], distance: 195, tilt: 13, width: 67.5 },
    room: [[-8, 8, 0], 46],
    solids: [
      box.body(o), box.lid(o, lidOf(o)),
      group([box.trayBoard(o, level('tray'), recessesOf(layout, o, 'tray'), folder)], { at: [0, level('tray').lift, 0] }),
      group([box.drawer(o, level('drawer'), recessesOf(layout, o, 'drawer'), folder)], { at: stands.drawer }),
      ...tray.solids, ...drawer.solids, ...ground.solids,
      ...(plan.beside ?? []).map(({ part, model, at, level = 0, scale = 1 }) => group([beside[model ?? part](part ? contextOf(o, part, o.units.get(part)[0]) : {})], { scale, rotate: [0, at[2] ?? 0, 0], at: [at[0], level, at[1]] })),
      'Scale_Bar(<-37, 0, -13.6>)',
    ],
    points: new Map([...lidPoints(o), ...tray.points, ...drawer.points, ['case', [12, box.TALL, -11]], ['tray', [-16.6, 12.9, -3.5]], ...(plan.beside ?? []).filter((b) => b.part).map((b) => [b.part, [b.at[0], 1, b.at[1]]])]),
  };
}

/** The lower level with the tray lifted out. */
export function underTray(layout, o) {
  const well = unitsIn(layout, o, 'well');
  const covered = [[5.2, -10.5, 16.9, -1.0], ...(o.units.has('windscreen') ? [] : [[-6.8, -10.5, 5.2, -1.0]]), ...(o.units.has('heat-mat') ? [] : [[-16.9, -10.5, -6.8, -1.0]])];
  return {
    camera: { look: [0, 9, 0.8], distance: 130, tilt: 30, width: 40 },
    room: [[0, 8, 0], 40],
    solids: [box.body(o), box.lid(o, lidOf(o)), box.well(o, layout.partitions, layout.levels.well.lift, covered), ...well.solids],
    points: well.points,
  };
}

/** The blowpipe put together on the stand, with what goes on it lying by. */
export function mainPiece(layout, o) {
  const unit = (id, i = 0) => o.units.get(id)?.[i];
  const pipe = contextOf(o, 'blowpipe', unit('blowpipe'));
  const jets = (o.units.get('jet') ?? []).filter(o.there);
  const horn = unit('mouthpiece');
  const fitted = jets[0] && (jets[0].model ?? 'platinum');
  return {
    camera: { look: [0.4, 0.8, -0.6], distance: 62, tilt: 24, width: 27 },
    room: [[0, 0, 0], 24],
    solids: [
      group([models.blowpipe({ ...pipe, jetFitted: fitted })], { rotate: [0, 8, 0], at: [0.6, 0, 2.4] }),
      horn && o.there(horn) && group([models.mouthpiece(contextOf(o, 'mouthpiece', horn))], { rotate: [0, 200, 0], at: [-6.5, 0, -3.6] }),
      ...jets.slice(1).map((j, i) => group([models.jet(contextOf(o, 'jet', j))], { rotate: [0, -30 + 50 * i, 0], at: [1.4 + i * 2.6, 0, -4.6 + i * 0.5] })),
    ],
    points: new Map([['blowpipe', [0, 1.5, 2.5]], ['mouthpiece', [-6.5, 1.5, -3.6]], ['jet', jets.length > 1 ? [1.4, 0.4, -4.6] : [9.7, 0.6, -5.5]]]),
  };
}

/** The contract plate as it sits in the lid. */
export function plate(layout, o) {
  const cloth = (o.features['tray-lining'] ?? 'green-baize') === 'chamois' ? `Chamois(${o.wear})` : `Baize(${o.wear})`;
  return {
    camera: { look: [0.1, 0.2, 0], distance: 40, tilt: 16, turn: -5, width: 13 },
    room: [[0, 0, 0], 13, -3],
    solids: [
      sheet(-14, -11, 14, 11, 80, 60, (x, z) => 0.05 * Math.sin(x * 0.5 + 0.6 * Math.sin(z * 0.4)) * Math.sin(z * 0.6) - 0.1 * Math.exp(-Math.max(0, Math.max(Math.abs(x) - 4.8, Math.abs(z) - 2.8)) / 0.5) , cloth),
      group([box.contractPlate(o)], { at: [0, -0.03, 0] }),
    ],
    points: new Map([['contract-plate', [0, 0.2, 0]]]),
  };
}

/** The drawer by itself: balance, weights, riders. */
export function drawer(layout, o, folder) {
  const { solids, points } = unitsIn(layout, o, 'drawer');
  const away = stands.drawer;
  const home = away.map((q) => -q);
  return {
    camera: { look: [-0.5, 2, 0.4], distance: 88, tilt: 18, width: 31 },
    room: [[0, 2, 0], 22],
    solids: [box.drawer(o, layout.levels.drawer, recessesOf(layout, o, 'drawer'), folder), group(solids, { at: home })],
    points: new Map([...points].map(([id, p]) => [id, p.map((q, k) => q + home[k])])),
  };
}

/** The case shut, from the front and above. */
export function front(layout, o, folder, plan) {
  return {
    camera: { look: [0, 8.6, -3], distance: 150, tilt: 57, turn: -14, width: 50 },
    room: [[0, 6, 0], 34],
    solids: [box.body(o), box.shutLid(o), ...(plan.painted ?? []).map((p) => group([words(p.text, p.h ?? 2.2, { font: 'sans', depth: 0.03, material: 'WhitePaint(0)' })], { rotate: [-90, 0, p.turn ?? 0], at: [p.at[0], p.at[1], -box.Z - 0.01] }))],
    points: new Map([['case', [9, 6, -box.Z]]]),
  };
}

/** Named units laid out on the stand. */
export function detail(layout, o, folder, plan, shot) {
  const points = new Map();
  const solids = shot.things.map(({ part, unit = 0, model, at, level = 0 }) => {
    const [x, z, turn = 0] = at;
    const c = part ? contextOf(o, part, { index: unit, ...o.units.get(part)[unit] }) : {};
    if (part && !points.has(part)) points.set(part, [x, 1 + level, z]);
    return group([(model ? beside[model] : (beside[part] ?? models[part]))({ ...c, upright: shot.upright })], { rotate: [0, turn, 0], at: [x, level, z] });
  });
  const width = shot.width ?? 28;
  return { camera: { look: shot.look ?? [0, 0.6, 0], distance: width * 2.6, tilt: shot.tilt ?? 24, turn: shot.turn ?? 0, width }, room: [[0, 0, 0], width * 0.85], solids, points };
}

/** What could be seen of an outfit that was opened and closed again: sacking over the tray, and what lay on top of it. */
export function covered(layout, o, folder) {
  const top = layout.levels.tray.lift;
  const crease = (t, sharp = 3) => (1 - Math.abs(Math.sin(t))) ** sharp;
  const fold = (x, z) =>
    0.9 * crease(x * 0.13 + 0.1 * z + 0.5 * Math.sin(z * 0.3) + 0.4) + 0.6 * crease(x * 0.1 - z * 0.19 + 0.6 * Math.sin(x * 0.17) + 2, 4) +
    0.5 * crease(z * 0.24 + 0.5 * Math.sin(x * 0.21) + 1.1, 5) + 0.3 * crease(x * 0.34 + 0.22 * z + Math.sin(z * 0.5), 6) + 0.22 * crease(x * 0.27 - z * 0.45 + 1.7 * Math.sin(x * 0.2), 6) +
    0.12 * Math.sin(x * 0.9 + 2 * Math.sin(z * 0.6)) * Math.sin(z * 1.1);
  const lap = (d) => (d <= 0 ? 0 : d < 1.2 ? 0.5 * d * d : 0.72 + 4.2 * (d - 1.2));
  const over = (x, z) => {
    const [dx, dz] = [Math.abs(x) - 17.4, -z - 11.2];
    return Math.min(9.4, lap(dx) + lap(dz)) * (1 + 0.05 * Math.sin(x * 0.8 + z));
  };
  const mouth = [10.6, 0.6];
  const cloth = sheet(-19.8, -13.4, 19.8, 7.2, 220, 130, (x, z) => {
    const hem = z > 5 ? (z - 5) * 0.16 * Math.sin(x * 0.8 + Math.sin(x * 0.31)) : 0;
    const r = Math.hypot(x - mouth[0], z - mouth[1]);
    const gather = 1.6 * Math.exp(-(((r - 2.1) / 1.3) ** 2)) - (r < 1.5 ? 3 * (1.5 - r) : 0) + 0.12 * Math.sin(9 * Math.atan2(z - mouth[1], x - mouth[0])) * Math.exp(-(((r - 3) / 2) ** 2));
    const y = top + 0.95 + fold(x, z) * (r < 5 ? r / 5 : 1) + gather - over(x, z) - 0.6 * Math.max(0, (z - 5.6) / 1.6) + hem;
    return [x - Math.sign(x) * Math.max(0, Math.abs(x) - 18.6) * 0.55, y, z + Math.max(0, -z - 12.2) * 0.5];
  }, 'Sacking(0)');
  const pipe = contextOf(o, 'blowpipe', o.units.get('blowpipe')[0]);
  const bottle = contextOf(o, 'cyanide-bottle', o.units.get('cyanide-bottle')[0]);
  return {
    camera: { look: [0, 9, 0], distance: 150, tilt: 17, width: 47 },
    room: [[0, 8, 0], 40],
    solids: [
      box.body(o),
      group([box.trayBoard(o, layout.levels.tray, recessesOf(layout, o, 'tray').filter((r) => r.shapes[0][2] === 8.2), folder)], { at: [0, top, 0] }),
      group([models.blowpipe(pipe)], { at: [-5.1, top - 1.25, 8.2] }),
      cloth,
      group([models['cyanide-bottle'](bottle)], { rotate: [4, 30, -6], at: [10.6, top - 2.6, 0.6] }),
    ],
    points: new Map([['blowpipe', [0, top + 0.5, 8.2]], ['cyanide-bottle', [10.6, top + 4, 0.6]], ['case', [-12, box.TALL, -11]]]),
  };
}
