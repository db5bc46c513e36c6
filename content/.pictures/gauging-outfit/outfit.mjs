import { block, cut, cylinder, group, roundedOutline, sheet, slab, smooth, sphere, strap, torus, turned, words } from '../engine/shapes.mjs';
import { board, book, caseKit, leaf } from '../engine/case-kit.mjs';
import { contextOf, partsOf, recessesOf, unitsIn } from '../engine/places.mjs';
import * as proving from './proving.mjs';
import * as gauging from './gauging.mjs';

const kit = caseKit({ X: 34.4, Z: 12.9, TALL: 11.4, LID: 4.4, OPEN: 60 });

const green = 'texture { pigment { rgb <0.035,0.16,0.055> } finish { diffuse 0.8 } }';
const gold = 'Gilt(0)';
export const models = {
  ...Object.fromEntries(Object.entries({ ...proving, ...gauging }).map(([name, f]) => [name.replace(/[A-Z]/g, (x) => `-${x.toLowerCase()}`), f])),
  tables: (c) => {
    const oil = /oilcloth/i.test(c.note);
    const first = c.variant === 'gauging-first' || c.variant === 'gauging-distillery' || (c.variant === 'gauging-coast' && !oil);
    const volume = book([12, 18.5, 1.9], first ? green : oil ? 'Oilcloth(0.4)' : 'GreyBoards(0.3)', [['TABLES OF STRENGTH', 0.74, 4.6, 'bold', gold], ['BOARD OF DUTIES', 0.5, 3.2, 'serif', gold]]);
    return c.packed.includes('bag') ? group([volume, bag(6.9, 10.2, 2.1)]) : volume;
  },
  instructions: () => book([8.6, 12.4, 1.0], 'LeatherDark(0.1)', [['INSTRUCTIONS', 0.55, 2.8, 'serif', gold], ['TO OFFICERS', 0.42, 1.9, 'serif', gold]]),
  'dimension-book': () => book([9.4, 6.8, 0.9], 'Buff(0.6)', [['DIMENSION BOOK', 0.5, 1.0]]),
  'duty-book': () => book([9.4, 6.8, 0.9], 'Oilcloth(0.2)', [['DUTY BOOK', 0.5, 1.0, 'sans']], { label: true }),
  'issue-note': (c) => leaf([9.6, 5.4], 'Paper(0.5)', [['ISSUE NOTE', 0.46, 1.7], [c.mark ?? '', 0.7, 0.5, 'bold'], ['SIGNED', 0.3, -1.6]]),
  oilskin: () => {
    const crease = (t) => (1 - Math.abs(Math.sin(t))) ** 4;
    const fold = (x, z, y) => {
      const edge = Math.max(0, 1 - Math.abs(x / 6.2) ** 14) * Math.max(0, 1 - Math.abs(z / 2.6) ** 10);
      return y * edge ** 0.4 + (0.16 * crease(x * 0.55 + 0.5 * z) + 0.1 * crease(x * 0.9 - z * 1.1 + 2) + 0.04 * Math.sin(x * 1.3 + z)) * edge;
    };
    return group([
      sheet(-6.3, -2.7, 6.3, 2.7, 90, 44, (x, z) => fold(x, z, 0.55), 'Oilcloth(0.6)'),
      group([sheet(-6.2, -2.4, 6.2, 2.5, 90, 44, (x, z) => fold(x + 0.2, z, 0.95), 'Oilcloth(0.8)')], { rotate: [0, 1.5, 0], at: [-0.1, 0, 0.1] }),
      ...[-3.2, 3.0].map((x) => strap([[x, 0, -2.9], [x + 0.1, 1.1, -2.3], [x, 1.3, 0], [x - 0.1, 1.1, 2.4], [x, 0, 2.9]], 0.35, 0.12, 'Webbing(0)')),
    ]);
  },
  strap: () => group([strap([[-7, 0, -1.6], [-4, 0.4, 0.2], [0, 0.9, 1.5], [4, 0.5, 0.4], [7, 0.1, -1.2], [5, 0.2, -2.6], [0, 0.5, -2.0], [-5, 0.2, -2.8]], 2.4, 0.25, 'Webbing(0)'), torus(0.9, 0.2, { at: [-7.4, 0.3, -1.8], material: 'Nickel(0.6)' })]),
};

/** A clear bag round something w by d, half-measures, lying on the stand. */
function bag(w, d, tall) {
  return group([
    `box { <${-w},-0.02,${-d}>, <${w},${tall},${d}> texture { pigment { rgbt <0.85,0.87,0.88,0.86> } normal { wrinkles 0.8 scale 2.2 } finish { diffuse 0.22 specular 0.3 roughness 0.02 reflection { 0.03, 0.2 } } } no_shadow no_radiosity }`,
    block([-w, tall - 0.1, d - 0.5], [w, tall + 0.1, d - 0.2], 0.06, 'texture { pigment { rgbt <0.5,0.08,0.06,0.25> } finish { diffuse 0.7 specular 0.4 } }'),
  ]);
}

const woods = { mahogany: 'Mahogany', teak: 'Teak', oak: 'Oak' };
const linings = { 'green-paper': (w) => `GreenPaper(${w})`, baize: (w) => `BaizeBlue(${w})`, velvet: (w) => `Velvet(${w})` };

/** A gauging outfit as the scenes need it. */
export function outfitOf(item, variants, plan) {
  const o = partsOf(item, variants, plan);
  const wood = woods[o.features['case-wood']];
  return {
    ...o,
    boards: (seed) => `${wood}(${wood === 'Oak' ? o.wear : o.wear * 0.6}, ${seed})`,
    binding: o.features['case-wood'] === 'teak' ? `Brass(${0.2 + o.wear * 0.6})` : '',
    brass: o.variant.id === 'gauging-revised' ? `Nickel(${0.2 + o.wear * 0.5})` : `Brass(${0.2 + o.wear * 0.6})`,
    lining: linings[o.features.lining](o.wear),
    setMark: o.mark('case'),
  };
}

const trayAt = [-10.6, 0, -29.5];
const caseAt = [0, 0, 0];

/** The case, its tray set down before it, the papers beside. */
function openCase(layout, o, folder, plan) {
  const at = (id) => layout.levels[id];
  const inside = unitsIn(layout, o, 'case', models, { at: caseAt, y: at('case').lift });
  const tray = unitsIn(layout, o, 'tray', models, { at: trayAt, y: at('tray').lift });
  const ground = unitsIn(layout, o, 'ground', models);
  return {
    camera: { look: [0.2, 6, -17.0], distance: 240, tilt: 14, width: 87 },
    room: [[0, 6, -10], 56],
    solids: [
      kit.body(o), kit.lid(o, []),
      group([board(o, at('case').size, recessesOf(layout, o, 'case'), folder, 4)], { at: [0, at('case').lift, 0] }),
      o.has('tray') && group([board(o, at('tray').size, recessesOf(layout, o, 'tray'), folder, 4.2)], { at: [trayAt[0], at('tray').lift, trayAt[2]] }),
      ...inside.solids, ...tray.solids, ...ground.solids,
      ...(plan.beside ?? []).map(({ part, model, at: [x, z, turn = 0], unit = 0, inTray }) => group([(extras[model] ?? models[part])(part ? contextOf(o, part, o.units.get(part)[unit]) : {})], { rotate: [0, turn, 0], at: inTray ? [x + trayAt[0], at('tray').lift - 0.5, z + trayAt[2]] : [x, 0, z] })),
      'Scale_Bar(<-37, 0, -44.4>)',
    ],
    points: new Map([...ground.points, ...inside.points, ...tray.points, ['case', [20, kit.TALL, -12.4]], ['tray', [-35, 4.6, -29]]]),
  };
}

/** Float, poises, cap and thermometer laid out. */
function mainPiece(layout, o) {
  const solids = [];
  const points = new Map();
  const put = (id, unit, at, point = at) => {
    solids.push(group([models[id](contextOf(o, id, unit))], { rotate: [0, at[2] ?? 0, 0], at: [at[0], 0, at[1]] }));
    if (!points.has(id)) points.set(id, [point[0], 1, point[1]]);
  };
  const all = (id) => (o.units.get(id) ?? []).filter(o.there);
  for (const u of all('float')) put('float', u, [-1.4, 4.6, 4], [-2.6, 4.7]);
  for (const u of all('poise')) put('poise', u, u.surplus ? [14.4, 0.2, 30] : [-13.2 + u.index * 3.3, -1.0 + 0.5 * Math.sin(u.index * 2.2), 12 * Math.sin(u.index * 3.3)]);
  for (const u of all('proof-cap').slice(0, 1)) put('proof-cap', u, [13.0, 4.4, 14]);
  for (const u of all('thermometer')) put('thermometer', u, u.surplus ? [1.6, -9.0, 2] : [-0.4, -6.0, -3]);
  return { camera: { look: [0.2, 0.8, -0.8], distance: 84, tilt: 26, width: 34 }, room: [[0, 0, 0], 29], solids, points };
}

/** The shut lid with its plate, or the shadow of a transfer. */
function plate(layout, o) {
  const top = plateOf(o);
  return {
    camera: { look: [0, 0.2, 0], distance: 60, tilt: 20, turn: -6, width: 21 },
    room: [[0, 0, 0], 18, -10],
    solids: [block([-30, -2, -14], [30, 0, 14], 0.1, o.boards(7)), top],
    points: new Map([['lid-plate', [0, 0.2, 0]]]),
  };
}

function plateOf(o) {
  const name = o.plan.store ?? [];
  const lines = [['BOARD OF DUTIES', 0.86, name.length ? 1.15 : 0.75, 'serif'], ...(name.length ? name.map((t, i) => [t, 0.62, -0.1 - i * 1.0, 'serif']) : [[o.mark('lid-plate') ?? o.set ?? '', 1.15, -0.95, 'bold']])];
  const kind = o.features['lid-plate'];
  const m = `Brass(${(o.units.get('lid-plate')?.[0] ? { fine: 0.1, sound: 0.3, worn: 0.65 }[o.units.get('lid-plate')[0].condition] : 0.3) ?? 0.3})`;
  if (kind === 'transfer')
    return group([...lines.slice(0, 1).map(([t, h]) => words(t, h, { material: 'texture { pigment { rgbt <0.34,0.24,0.10,0.45> } }', depth: 0.006, at: [0, 0.005, 0.4] })), `object { ${cut(slab(roundedOutline(13, 4.6, 2.2), 0.006), [slab(roundedOutline(12.5, 4.1, 2), 1, '', -0.5)], 'texture { pigment { rgbt <0.34,0.24,0.10,0.6> } }')} }`]);
  const oval = kind === 'oval-brass';
  const outline = oval ? Array.from({ length: 72 }, (_, i) => [6.6 * Math.cos((i * Math.PI) / 36), 3.1 * Math.sin((i * Math.PI) / 36)]) : roundedOutline(13.2, 5.6, 0.3);
  const screws = oval ? [[-6.0, 0], [6.0, 0]] : [[-6.1, -2.3], [6.1, -2.3], [-6.1, 2.3], [6.1, 2.3]];
  const pits = /Pitted/i.test(o.variant.parts['lid-plate']?.look ?? '') || o.features['case-wood'] === 'teak' ? Array.from({ length: 26 }, (_, i) => sphere([6 * Math.sin(i * 12.9), 0.19, -2.5 + 0.5 * Math.abs(Math.sin(i * 7.7))], 0.03 + 0.05 * Math.abs(Math.sin(i * 3.1)), 'Brass(1)')) : [];
  return group([
    slab(outline, 0.18, m),
    cut(slab(outline.map(([x, z]) => [x * 0.965, z * 0.935]), 0.006, '', 0.18), [slab(outline.map(([x, z]) => [x * 0.955, z * 0.915]), 1, '', -0.1)], 'Ink(0)'),
    ...lines.map(([t, h, z, font]) => words(t, oval && t === 'BOARD OF DUTIES' ? 0.74 : h, { font, material: 'Ink(0)', depth: 0.005, at: [0, 0.182, z] })),
    ...screws.map(([x, z], i) => group([cut(turned([[0, 0.1], [0.3, 0.16, 0.02], [0.27, 0.22, 0.03], [0, 0.25]]), [block([-0.4, 0.21, -0.04], [0.4, 0.4, 0.04], 0)], m)], { rotate: [0, 31 * i + 12, 0], at: [x, 0.02, z] })),
    ...pits,
  ]);
}

const extras = {
  oldTables: () => group([book([12, 18.5, 1.7], green, [['TABLES OF STRENGTH', 0.74, 4.6, 'bold', gold]]), bag(6.9, 10.2, 1.9)]),
  bicycleClip: () => torus(2.6, 0.16, { at: [0, 0.2, 0], material: 'Nickel(0.4)' }),
  caskBung: () => group([turned([[0, 0], [2.2, 0, 0.1], [2.6, 2.6, 0.1], [0, 2.65]], 'OakPale(0, 3)'), words('VESSIN', 0.8, { font: 'sans', material: 'Cut(0)', depth: 0.03, at: [0, 2.65, 0] })]),
  poiseBack: (c) => models['poise-back'](c),
};

/** Named units laid out on the stand. */
function detail(layout, o, folder, plan, shot) {
  const points = new Map();
  const solids = shot.things.map(({ part, model, unit = 0, at: [x, z, turn = 0], level = 0, flip = false }) => {
    const c = part ? { ...contextOf(o, part, { ...o.units.get(part)[unit] }), spare: o.units.get(part)[unit].surplus } : {};
    if (part && !points.has(part)) points.set(part, [x, 1 + level, z]);
    return group([(extras[model] ?? models[model ?? part])(c)], { rotate: [flip ? 180 : 0, turn, 0], at: [x, level, z] });
  });
  const width = shot.width ?? 30;
  return { camera: { look: shot.look ?? [0, 0.6, 0], distance: width * 2.6, tilt: shot.tilt ?? 24, width }, room: [[0, 0, 0], width * 0.85], solids, points };
}

/** The case shut, with its plate. */
function front(layout, o) {
  return {
    camera: { look: [0, 6, -2], distance: 200, tilt: 52, turn: -13, width: 84 },
    room: [[0, 6, 0], 52],
    solids: [kit.body(o), kit.shutLid({ ...o, handle: o.plan.handle }, [plateOf(o)])],
    points: new Map([['lid-plate', [0, kit.TALL + kit.LID, 0]], ['case', [24, kit.TALL, -12.9]]]),
  };
}

export const scenes = { openCase, mainPiece, plate, detail, front };
