import { block, cut, cylinder, group, roundedOutline, sheet, slab, smooth, sphere, strap, turned, v, words } from '../engine/shapes.mjs';
import { board, book, caseKit, leaf } from '../engine/case-kit.mjs';
import { contextOf, partsOf, recessesOf, unitsIn } from '../engine/places.mjs';
import * as instruments from './instruments.mjs';
import * as tools from './tools.mjs';

const kit = caseKit({ X: 20.6, Z: 13, TALL: 15, LID: 4.6, OPEN: 58 });
const kebab = (o) => Object.fromEntries(Object.entries(o).map(([name, f]) => [name.replace(/[A-Z]/g, (x) => `-${x.toLowerCase()}`), f]));

const wires = (w, d) => group(Array.from({ length: 9 }, (_, i) => {
  const [x, z] = [-w * 0.38 + (i % 3) * w * 0.3, d * 0.2 - Math.floor(i / 3) * d * 0.24];
  return group([block([x, 0, z - 0.025], [x + w * 0.26, 0.012, z + 0.025], 0), block([x + w * 0.13, 0, z - d * 0.1], [x + w * 0.13 + 0.05, 0.012, z], 0), cut(cylinder([x + w * 0.26, 0, z], [x + w * 0.26, 0.012, z], 0.55), [cylinder([x + w * 0.26, -1, z], [x + w * 0.26, 1, z], 0.48)])]);
}), { material: 'Ink(0)', at: [0, 0.05, 0] });

export const models = {
  ...kebab({ ...instruments, ...tools }),
  'circuit-card': () => group([slab(roundedOutline(15, 17, 0.2), 0.05, 'Waxed(0)'), wires(14, 14), words('CIRCUITS OF THE SET', 0.6, { material: 'Ink(0)', depth: 0.004, at: [0, 0.055, 7.2] }), ...[[-7, -8], [7, -8], [-7, 8], [7, 8]].map(([x, z]) => sphere([x, 0.05, z], 0.2, 'Brass(0.3)'))]),
  'cabin-card': (c) => group([slab(roundedOutline(15, 17, 0.1), 0.05, 'Paper(0.6)'), wires(14, 14), words(`CABIN ${c.mark ?? ''}`, 0.7, { font: 'sans', material: 'Ink(0)', depth: 0.004, at: [0, 0.055, 7.2] })]),
  handbook: (c) => {
    const early = c.variant === 'line-set-a' && !c.model;
    const year = c.model === 'handbook-1909' || c.variant === 'line-set-b' ? '1909' : '1922';
    return book([8.6, 12.6, 0.9], early ? 'PaperOf(rgb <0.3,0.3,0.29>, 0.6)' : 'Oilcloth(0.3)', early ? [['CIRCULARS', 0.6, 2.6], ['1 TO 60', 0.46, 1.7]] : [['LINEMAN’S', 0.56, 3.5], ['HANDBOOK', 0.66, 2.6], [year, 0.42, 1.6]], { label: !early });
  },
  'fault-book': () => book([8.2, 6.2, 0.7], 'Buff(0.6)', [['FAULTS', 0.6, 0.9, 'sans']]),
};

const woods = { teak: 'Teak', oak: 'Oak', 'sheet-steel': 'GreySteel' };
export function outfitOf(item, variants, plan) {
  const o = partsOf(item, variants, plan);
  const wood = woods[o.features['case-wood']];
  return {
    ...o,
    boards: (seed) => `${wood}(${wood === 'Oak' ? o.wear : o.wear * 0.8}, ${seed})`,
    binding: '',
    brass: wood === 'GreySteel' ? 'Steel(0.4)' : `Brass(${0.2 + o.wear * 0.6})`,
    lining: plan.lining ?? 'BaizeRed(0.3)',
    lidLining: wood === 'GreySteel' ? 'GreySteel(0.2, 4)' : `${wood}(0.2, 9)`,
    setMark: undefined,
    handle: true,
  };
}

/** The panel with its terminals and the maker's name, and what hangs from it. */
function panel(layout, o) {
  const ebonised = /Mahogany/.test(o.units.get('panel')?.[0]?.note ?? '');
  const wood = o.variant.id === 'line-set-a' && !ebonised;
  const m = wood ? 'Mahogany(0.2, 6)' : ebonised ? 'Japanned(0)' : 'PanelEbonite(0)';
  const { solids, points } = unitsIn(layout, o, 'panel', models, { y: layout.levels.panel.lift });
  const y = layout.levels.panel.lift;
  const ink = wood ? 'Gilt(0)' : 'PaperWhite(0)';
  const c = contextOf(o, 'panel', o.units.get('panel')?.[0] ?? {});
  return {
    solids: [
      block([-19.6, y - 0.8, -12], [19.6, y, 12], 0.05, m),
      ...[[-19, -11.4], [19, -11.4], [-19, 11.4], [19, 11.4]].map(([x, z], i) => group([cylinder([0, 0, 0], [0, 0.1, 0], 0.35, o.brass), block([-0.32, 0.09, -0.035], [0.32, 0.11, 0.035], 0, 'Ink(0)')], { rotate: [0, 50 * i, 0], at: [x, y, z] })),
      ...Array.from({ length: 8 }, (_, i) => group([instruments.terminal({ ...c, variant: o.variant.id })], { rotate: [0, 20 * Math.sin(i * 2.1), 0], at: [-16.4 + i * 4.68, y, -10.2] })),
      ...['LINE', 'EARTH', 'BAT +', 'BAT -', 'TEL', 'TEL', 'X', 'Y'].map((t, i) => words(t, 0.42, { font: 'sans', material: ink, depth: 0.006, at: [-16.4 + i * 4.68, y, -8.75] })),
      words('RUICK BROTHERS', 0.8, { font: 'serif', material: ink, depth: 0.006, at: [12.2, y, -3.9] }),
      words('CANAL QUAY  ESTROW', 0.46, { font: 'serif', material: ink, depth: 0.006, at: [12.2, y, -5.0] }),
      o.mark('resistance-box') && words(`SET ${o.mark('resistance-box')}`, 0.6, { font: 'sans', material: ink, depth: 0.006, at: [12.2, y, -6.3] }),
      ...solids,
    ],
    points,
  };
}

const loop = (x, w, half, tall) => strap([[x, 1.15, w - half], [x, tall, w - half * 0.8], [x, tall + 0.25, w], [x, tall, w + half * 0.8], [x, 1.15, w + half]].map(([a, b, c]) => [a, b, c]), 1.1, 0.12, 'Bridle(0.4)');

function lidFurnishings(layout, o) {
  const { solids } = unitsIn(layout, o, 'lid', models, { y: 1.3, wrapped: false });
  const clips = [['draw-tongs', [-15, -5], 20.4, 2.6], ['pliers', [-12.5, -2], 11.6, 2.2], ['copper-bit', [-14, -1], 7.2, 1.6], ['earth-pin', [-12, 4], 3.2, 1.3]].filter(([id]) => o.variant.parts[id]);
  return [...solids, ...clips.flatMap(([, xs, w, half]) => xs.map((x) => loop(x, w, half, 2.55)))];
}

const trayAt = [-38.6, 0, -1];
const crateAt = [-37, 0, 23.5];

function openCase(layout, o, folder, plan) {
  const top = panel(layout, o);
  const tray = unitsIn(layout, o, 'tray', models, { at: trayAt, y: layout.levels.tray.lift });
  const crate = unitsIn(layout, o, 'crate', models, { at: crateAt, wrapped: false });
  const ground = unitsIn(layout, o, 'ground', models, { wrapped: false });
  const lidIds = Object.entries(layout.places).filter(([id, p]) => p.level === 'lid' && o.has(id));
  return {
    camera: { look: [-17.4, 8, 9.2], distance: 245, tilt: 13, width: 87 },
    room: [[-15, 8, 4], 58],
    solids: [
      kit.body(o), kit.lid(o, lidFurnishings(layout, o)), ...top.solids,
      group([board(o, layout.levels.tray.size, recessesOf(layout, o, 'tray'), folder, 3.8)], { at: [trayAt[0], layout.levels.tray.lift, trayAt[2]] }),
      ...tray.solids, ...crate.solids, ...ground.solids,
      ...(plan.beside ?? []).map(({ model, at: [x, z, turn = 0] }) => group([extras[model]()], { rotate: [0, turn, 0], at: [x, 0, z] })),
      'Scale_Bar(<-53, 0, -18.8>)',
    ],
    points: new Map([...lidIds.map(([id, p]) => [id, kit.lidPoint([p.at[0][0], 2, p.at[0][1]])]), ...ground.points, ...crate.points, ...tray.points, ...top.points, ['case', [14, kit.TALL, -12.6]], ['panel', [17, 13.6, -7.6]]]),
  };
}

/** The panel close to. */
function mainPiece(layout, o) {
  const top = panel(layout, o);
  return {
    camera: { look: [-0.6, 13.4, 0.2], distance: 100, tilt: 24, turn: -4, width: 39 },
    room: [[0, 13, 0], 34],
    solids: [kit.body(o), kit.lid(o, []), ...top.solids],
    points: top.points,
  };
}

function plateOf(o) {
  const unit = o.units.get('lid-plate')?.[0];
  const blank = /Nothing in the space/.test(unit?.note ?? '');
  const disc = o.variant.id.startsWith('line-set-c');
  const wear = { fine: 0.08, sound: 0.3, worn: 0.7 }[unit?.condition] ?? 0.3;
  const m = `Brass(${wear})`;
  if (o.variant.id === 'line-set-railway') return group([words('G.L.R.', 2.2, { font: 'sans', material: 'WhitePaint(0)', depth: 0.004, at: [0, 0.004, 1.6] }), words(o.set ?? '', 2.2, { font: 'sans', material: 'WhitePaint(0)', depth: 0.004, at: [0, 0.004, -1.8] })]);
  if (!unit || !o.there(unit)) return group([slab(Array.from({ length: 60 }, (_, i) => [3.1 * Math.cos((i * Math.PI) / 30), 3.1 * Math.sin((i * Math.PI) / 30)]), 0.004, 'OakPale(0, 7)'), ...[90, 210, 330].map((a) => cylinder([2.6 * Math.cos((a * Math.PI) / 180), 0, 2.6 * Math.sin((a * Math.PI) / 180)], [2.6 * Math.cos((a * Math.PI) / 180), 0.012, 2.6 * Math.sin((a * Math.PI) / 180)], 0.11, 'Ink(0)'))]);
  const outline = disc ? Array.from({ length: 72 }, (_, i) => [3.1 * Math.cos((i * Math.PI) / 36), 3.1 * Math.sin((i * Math.PI) / 36)]) : roundedOutline(9.4, 5.2, 0.4);
  const pins = disc ? [90, 210, 330].map((a) => [2.6 * Math.cos((a * Math.PI) / 180), 2.6 * Math.sin((a * Math.PI) / 180)]) : [[-4.2, -2.1], [4.2, -2.1], [-4.2, 2.1], [4.2, 2.1]];
  return group([
    slab(outline, 0.16, m),
    cut(slab(outline.map(([x, z]) => [x * 0.95, z * 0.92]), 0.006, '', 0.16), [slab(outline.map(([x, z]) => [x * 0.935, z * 0.895]), 1, '', -0.1)], 'Ink(0)'),
    words('T.S.V.', disc ? 0.95 : 1.15, { font: 'bold', material: 'Ink(0)', depth: 0.005, at: [0, 0.162, disc ? 0.6 : 0.85] }),
    !blank && words(o.mark('lid-plate') === 'T.S.V.' ? '' || ' ' : (o.mark('lid-plate') ?? ' '), disc ? 0.85 : 1.15, { font: 'bold', material: 'Ink(0)', depth: 0.005, at: [0, 0.162, disc ? -0.8 : -1.1] }),
    ...pins.map(([x, z]) => sphere([x, 0.12, z], 0.16, m)),
  ]);
}

function plate(layout, o) {
  return {
    camera: { look: [0, 0.2, 0], distance: 56, tilt: 20, turn: -6, width: 17 },
    room: [[0, 0, 0], 15, -10],
    solids: [block([-30, -2, -20], [30, 0, 20], 0.1, o.boards(7)), plateOf(o)],
    points: new Map([['lid-plate', [0, 0.2, 0]], ['case', [6, 0, -4]]]),
  };
}

function front(layout, o) {
  return {
    camera: { look: [0, 8.6, -2], distance: 160, tilt: 55, turn: -16, width: 56 },
    room: [[0, 6, 0], 38],
    solids: [kit.body(o), kit.shutLid(o, [group([plateOf(o)], { at: [0, 0, -7.6] })])],
    points: new Map([['lid-plate', [0, kit.TALL + kit.LID, -7.6]], ['case', [14, 9, -13]]]),
  };
}

/** The packing crate, its top boards off, the shut case inside. */
function crated(layout, o) {
  const deal = (seed) => `Deal(0.3, ${seed})`;
  const [cx, cz] = [25, 17.5];
  const side = (z, seed) => group([0, 1, 2].map((k) => block([-cx - 1, 0.6 + k * 7.2, z - 0.8], [cx + 1, 7.4 + k * 7.2, z + 0.8], 0.1, deal(seed + k))));
  const end = (x, seed) => group([0, 1, 2].map((k) => `object { ${block([-cz, 0.6 + k * 7.2, -0.8], [cz, 7.4 + k * 7.2, 0.8], 0.1, deal(seed + k))} rotate 90*y translate ${x}*x }`));
  const straw = Array.from({ length: 260 }, (_, i) => {
    const a = i * 2.399;
    const edge = i % 2 ? [(cx - 2.2) * Math.sin(i * 1.7), (i % 4 < 2 ? 1 : -1) * (15.2 + Math.sin(i * 5) * 0.9)] : [(i % 4 < 2 ? 1 : -1) * (22.7 + Math.sin(i * 3) * 0.9), (cz - 2) * Math.sin(i * 2.3)];
    return cylinder([edge[0] - 1.8 * Math.cos(a), 14 + 3.4 * Math.abs(Math.sin(i * 0.9)), edge[1] - 1.8 * Math.sin(a)], [edge[0] + 1.8 * Math.cos(a), 14.6 + 3.2 * Math.abs(Math.cos(i * 1.3)), edge[1] + 1.8 * Math.sin(a)], 0.13);
  });
  return {
    camera: { look: [0, 10, -1], distance: 190, tilt: 30, turn: -8, width: 70 },
    room: [[0, 10, 0], 46],
    solids: [
      group([kit.body(o), kit.shutLid(o, [group([plateOf(o)], { at: [0, 0, -7.6] })])], { at: [0, 1.2, 0] }),
      side(-cz - 0.8, 1), side(cz + 0.8, 4), end(-cx - 0.2, 7), end(cx + 0.2, 10),
      block([-cx, 0, -cz], [cx, 0.7, cz], 0, deal(2)),
      group(straw, { material: 'texture { pigment { rgb <0.47,0.34,0.14> } finish { diffuse 0.8 } }' }),
      o.has('carrying-strap') && group([models['carrying-strap'](contextOf(o, 'carrying-strap', o.units.get('carrying-strap')[0]))], { scale: 0.8, at: [9.5, kit.TALL + kit.LID + 1.2, 4.2] }),
      ...['T.S.V. DEPOT', 'BRENNOCK TO MARCHBY', '1 SET C'].map((t, i) => group([words(t, 1.5, { font: 'sans', material: 'texture { pigment { rgbt <0.02,0.02,0.02,0.12> } }', depth: 0.02 })], { rotate: [-90, 0, 0], at: [-6 + i * 0.4, 18.6 - i * 7.1, -cz - 1.62] })),
      group([block([-26, 0, -2.2], [26, 1.5, 2.2], 0.1, deal(13)), block([-26, 0, 3], [26, 1.5, 7.2], 0.1, deal(14))], { rotate: [0, 4, 0], at: [-2, 0, -32] }),
    ],
    points: new Map([['lid-plate', [0, kit.TALL + kit.LID + 1.4, -7.6]], ['carrying-strap', [9.5, kit.TALL + kit.LID + 2, 4.2]], ['case', [-14, kit.TALL + kit.LID + 1.2, 4]]]),
  };
}

const extras = {
  foldedMap: () => group([slab([[-7, -5], [7, -5], [7, 5], [-7, 5]], 0.16, 'Paper(0.5)'), block([-0.05, 0.15, -5], [0.05, 0.2, 5], 0, 'Paper(0.9)'), words('ESTROW EXCHANGES', 0.6, { material: 'Ink(0)', depth: 0.004, at: [0, 0.165, 3] }), words('1934', 0.5, { material: 'Ink(0)', depth: 0.004, at: [0, 0.165, 2] })]),
  receipt: () => leaf([9, 6], 'Paper(0.8)', [['RECEIVED', 0.5, 1.9], ['ONE OUNCE OF MERCURY', 0.42, 0.7], ['OSSEL 1908', 0.4, -0.6]]),
};

function detail(layout, o, folder, plan, shot) {
  const points = new Map();
  const solids = shot.things.map(({ part, model, unit = 0, at: [x, z, turn = 0], level = 0 }) => {
    const c = part ? { ...contextOf(o, part, o.units.get(part)[unit]), loose: true } : {};
    if (part && !points.has(part)) points.set(part, [x, 1 + level, z]);
    return group([(model ? extras[model] : models[part])(c)], { rotate: [0, turn, 0], at: [x, level, z] });
  });
  const width = shot.width ?? 30;
  return { camera: { look: shot.look ?? [0, 0.6, 0], distance: width * 2.6, tilt: shot.tilt ?? 24, width }, room: [[0, 0, 0], width * 0.85], solids, points };
}

export const scenes = { openCase, mainPiece, plate, front, crated, detail };
