import { block, cone, cut, cylinder, group, n, sheet, slab, smooth, sphere, strap, torus, turned, v, words } from '../engine/shapes.mjs';
import { reliefMap, reliefSolid } from '../engine/relief.mjs';

export const X = 17.8;
export const Z = 11.45;
export const TALL = 13.4;
const WALL = 0.95;
const LID = 4.2;
const OPEN = 58;

const lining = (o) => ((o.features['tray-lining'] ?? (o.pattern === '3' ? 'chamois' : 'green-baize')) === 'chamois' ? `Chamois(${o.wear})` : `Baize(${o.wear})`);
const binding = (o) => (o.pattern === '2' ? `Brass(${0.2 + o.wear * 0.6})` : `Iron(${0.3 + o.wear * 0.7})`);
const boards = (o, seed) => `Oak(${o.wear}, ${seed})`;

/** Four walls as boards whose grain runs along them, y0 to y1. */
const walls = (o, y0, y1) =>
  group([
    block([-X, y0, -Z], [X, y1, -Z + WALL], 0.07, boards(o, 1)),
    block([-X, y0, Z - WALL], [X, y1, Z], 0.07, boards(o, 2)),
    ...[-1, 1].map((s) => `object { ${block([-Z + WALL - 0.02, y0, -WALL / 2], [Z - WALL + 0.02, y1, WALL / 2], 0.07, boards(o, 4 + s))} rotate 90*y translate ${n(s * (X - WALL / 2))}*x }`),
  ]);

/** Angles of metal round the four upright edges, with their screws. */
const corners = (o, y0, y1) => {
  const m = binding(o);
  const screw = (p, axis) => group([cylinder([0, 0, 0], [0, 0.07, 0], 0.2, m), block([-0.17, 0.05, -0.025], [0.17, 0.08, 0.025], 0, 'Ink(0)')], { rotate: axis === 'z' ? [-90, 0, 20] : [0, 30, axis === 'x' ? -90 : 90], at: p });
  return group(
    [-1, 1].flatMap((s) => [-1, 1].flatMap((t) => [
      block([Math.min(s * X, s * (X - 2.6)), y0, Math.min(t * (Z + 0.1), t * (Z - 0.02))], [Math.max(s * (X + 0.1), s * (X - 2.6)), y1, Math.max(t * (Z + 0.1), t * (Z - 0.02))], 0.04, m),
      block([Math.min(s * (X + 0.1), s * (X - 0.02)), y0, Math.min(t * (Z + 0.1), t * (Z - 2.6))], [Math.max(s * (X + 0.1), s * (X - 0.02)), y1, Math.max(t * (Z + 0.1), t * (Z - 2.6))], 0.04, m),
      ...(t < 0 ? [0.25, 0.75].map((f) => screw([s * (X - 1.6), y0 + (y1 - y0) * f, -Z - 0.1], 'z')) : []),
    ])),
  );
};

/** Lozenge let in flush or shield laid on, round the keyhole. */
export function lockPlate(o, y = 11.2) {
  const m = `Brass(${0.15 + o.wear * 0.6})`;
  const lozenge = (o.features['lock-plate'] ?? 'shield') === 'lozenge';
  const outline = lozenge
    ? [[0, 1.9], [1.45, 0], [0, -1.9], [-1.45, 0]]
    : [...smooth([[-1.25, 0, 1.35], [-0.6, 0, 1.25], [0, 0, 1.5], [0.6, 0, 1.25], [1.25, 0, 1.35]], 5), ...smooth([[1.3, 0, 0.2], [1.0, 0, -1.0], [0, 0, -1.9], [-1.0, 0, -1.0], [-1.3, 0, 0.2]], 5)].map(([x, , z]) => [x, z]);
  const plate = cut(slab(outline, lozenge ? 0.05 : 0.16), [cylinder([0, -1, 0.15], [0, 1, 0.15], 0.24), block([-0.11, -1, -0.75], [0.11, 1, 0.15], 0)], m);
  const pins = lozenge ? [[0, 1.4], [0, -1.4]] : [[-0.95, 0.95], [0.95, 0.95], [0, -1.4]];
  return `object { ${group([plate, ...pins.map(([x, z]) => sphere([x, lozenge ? 0.04 : 0.15, z], 0.12, m)), block([-0.35, -0.4, -0.8], [0.35, 0.005, 0.45], 0, 'Ink(0)')])} rotate -90*x translate ${v(0, y, -Z)} }`;
}

export function body(o) {
  return group([
    walls(o, 0.5, TALL),
    block([-X + 0.1, 0.3, -Z + 0.1], [X - 0.1, 0.9, Z - 0.1], 0, boards(o, 6)),
    ...[-1, 1].flatMap((s) => [-1, 1].map((t) => turned([[0, 0], [0.8, 0, 0.1], [0.9, 0.5, 0.1], [0, 0.5]], 'Brass(0.5)')).map((f, i) => `object { ${f} translate ${v(s * (X - 1.4), 0, (i ? 1 : -1) * (Z - 1.4))} }`)),
    corners(o, 0.5, TALL - 0.01),
    lockPlate(o),
    cylinder([-X + 0.4, TALL, Z + 0.13], [X - 0.4, TALL, Z + 0.13], 0.2, binding(o)),
    // The seat of the hinges and of the lid's tongue.
    ...[-11, 11].map((x) => group([cylinder([x - 1.4, TALL, Z + 0.15], [x + 1.4, TALL, Z + 0.15], 0.26, `Brass(${0.2 + o.wear * 0.6})`), block([x - 1.4, TALL - 0.04, Z - WALL], [x + 1.4, TALL + 0.05, Z + 0.1], 0.02, `Brass(${0.2 + o.wear * 0.6})`)])),
    block([-1.1, TALL - 0.03, -Z + 0.12], [1.1, TALL + 0.03, -Z + 0.8], 0.02, `Brass(${0.2 + o.wear * 0.5})`),
    block([-0.5, TALL - 0.1, -Z + 0.3], [0.5, TALL + 0.035, -Z + 0.62], 0, 'Ink(0)'),
    o.setMark && words(o.setMark, 0.5, { font: 'bold', depth: 0.02, material: 'Cut(0)', at: [4.2, TALL, -Z + WALL / 2] }),
    o.planed && block([-6.2, TALL - 0.02, -Z + 0.02], [-2.6, TALL + 0.012, -Z + WALL - 0.03], 0, 'OakPale(0, 3)'),
  ]);
}

/** Takes a point of the lid as it would lie open flat (x, height, distance from the hinge) to the scene. */
export function lidPoint([x, h, w]) {
  const a = (OPEN * Math.PI) / 180;
  const y = h - LID;
  return [x, TALL + y * Math.cos(a) + w * Math.sin(a), Z + 0.15 - y * Math.sin(a) + w * Math.cos(a)];
}

/** The lid as it lies open flat, its inside up. */
function lidShell(o, furnishings) {
  const D = 2 * Z;
  const cloth = lining(o);
  const pad = sheet(-X + WALL, WALL, X - WALL, D - WALL, 70, 46, (x, z) => {
    const edge = Math.min(X - WALL - Math.abs(x), z - WALL, D - WALL - z);
    return 1.15 + 0.14 * Math.min(1, Math.max(0, edge) / 1.2) ** 0.5 + 0.02 * Math.sin(x * 0.9 + Math.sin(z)) * Math.sin(z * 0.8);
  }, cloth);
  return group([
    group([walls({ ...o }, 0, LID)], { at: [0, 0, Z] }),
    block([-X, 0, 0], [X, 0.9, D], 0.06, boards(o, 7)),
    group([corners(o, 0, LID - 0.01)], { at: [0, 0, Z] }),
    pad,
    block([-0.45, LID - 0.02, D - 0.64], [0.45, LID + 0.75, D - 0.32], 0.05, `Brass(${0.2 + o.wear * 0.5})`),
    ...[-11, 11].map((x) => block([x - 1.4, LID - 0.05, 0.05], [x + 1.4, LID + 0.05, WALL], 0.02, `Brass(${0.2 + o.wear * 0.6})`)),
    ...furnishings,
  ]);
}

/** The lid shut, with the handle that the case is carried by. */
export function shutLid(o) {
  const top = TALL + LID;
  const m = `Brass(${0.2 + o.wear * 0.5})`;
  return group([
    `object { ${lidShell(o, [])} translate ${v(0, -LID, 0)} rotate 180*x translate ${v(0, TALL, Z)} }`,
    strap([[-5.4, top + 0.2, 0], [-4.6, top + 1.0, 0], [-2.5, top + 1.9, 0], [0, top + 2.1, 0], [2.5, top + 1.9, 0], [4.6, top + 1.0, 0], [5.4, top + 0.2, 0]], 2.1, 0.5, `Bridle(${o.wear})`),
    ...[-5.2, 5.2].map((x) => group([block([x - 1.1, top, -1.3], [x + 1.1, top + 0.14, 1.3], 0.06, m), cylinder([x, top + 0.5, -1.3], [x, top + 0.5, 1.3], 0.22, m), ...[-0.9, 0.9].map((z) => sphere([x + Math.sign(x) * 0.7, top + 0.14, z], 0.18, m))])),
  ]);
}

export function lid(o, furnishings) {
  const stay = [-1, 1].map((s) => {
    const [a, b] = [[s * (X - 1.25), TALL - 0.5, 3.6], lidPoint([s * (X - 1.25), LID - 0.5, 8.2])];
    const m = `Brass(${0.25 + o.wear * 0.5})`;
    return group([cylinder(a, b, 0.13, m), cylinder([a[0] - 0.3, a[1], a[2]], [a[0] + 0.45, a[1], a[2]], 0.24, m), cylinder([b[0] - 0.3, b[1], b[2]], [b[0] + 0.45, b[1], b[2]], 0.24, m)]);
  });
  return group([`object { ${lidShell(o, furnishings)} translate ${v(0, -LID, 0)} rotate ${-OPEN}*x translate ${v(0, TALL, Z + 0.15)} }`, ...stay]);
}

/** Pocket of the lid with the handbook and the card standing in it; drawn as the lid lies flat. */
export function pocket(o, papers) {
  const cloth = o.pattern === '3' ? 'Chamois(0.3)' : 'LeatherDark(0.3)';
  const front = sheet(-X + WALL + 0.4, WALL + 0.2, X - WALL - 0.4, 9.6, 60, 20, (x, z) => {
    const swell = papers.reduce((s, p) => Math.max(s, (p.thick ?? 0) / (1 + Math.exp((Math.abs(x - p.x) - p.w / 2 - 0.9) * 6))), 0);
    return 1.46 + swell + 0.03 * Math.sin(x * 1.7) * ((z - 1) / 9);
  }, cloth);
  const hem = smooth(Array.from({ length: 31 }, (_, i) => {
    const x = -X + WALL + 0.4 + (i / 30) * (2 * X - 2 * WALL - 0.8);
    const swell = papers.reduce((s, p) => Math.max(s, (p.thick ?? 0) / (1 + Math.exp((Math.abs(x - p.x) - p.w / 2 - 0.9) * 6))), 0);
    return [x, 1.46 + swell, 9.6];
  }), 2);
  return [front, `sphere_sweep { linear_spline ${hem.length}, ${hem.map((p) => `${v(...p)}, 0.12`).join(', ')} ${cloth} }`, ...papers.map((p) => p.solid)];
}

export function trayBoard(o, level, recesses, folder) {
  const [w, d] = level.size;
  const deepest = Math.max(...recesses.map((r) => r.depth));
  const file = reliefMap(folder, level.size, recesses, deepest);
  const frame = boards(o, 8);
  const [ex, ez] = [w / 2 + 0.42, d / 2 + 0.42];
  return group([
    reliefSolid(file, level.size, deepest, lining(o)),
    ...[-1, 1].map((s) => block([-ex, -2.2, s > 0 ? d / 2 - 0.02 : -ez], [ex, 0.1, s > 0 ? ez : -d / 2 + 0.02], 0.06, frame)),
    ...[-1, 1].map((s) => `object { ${block([-d / 2, -2.2, -0.22], [d / 2, 0.1, 0.22], 0.06, frame)} rotate 90*y translate ${n(s * (w / 2 + 0.2))}*x }`),
    o.trayMark && words(o.trayMark, 0.3, { font: 'bold', depth: 0.004, material: 'Ink(0)', at: [-w / 2 - 0.2, 0.102, 3], rotate: [0, -90, 0] }),
  ]);
}

/** Two loops of tape by which the tray is lifted. */
export const liftTapes = (o) =>
  group([-1, 1].map((s) => strap([[s * 16.15, 0.02, -1.1], [s * 15.6, 0.5, -0.7], [s * 15.35, 0.62, 0], [s * 15.6, 0.5, 0.7], [s * 16.15, 0.02, 1.1]], 0.9, 0.08, o.pattern === '3' ? 'Webbing(0)' : 'Bridle(0.4)')));

export function drawer(o, level, recesses, folder) {
  const [w, d] = level.size;
  const deepest = Math.max(...recesses.map((r) => r.depth));
  const file = reliefMap(folder, level.size, recesses, deepest);
  const side = 'OakPale(0, 2)';
  return group([
    group([reliefSolid(file, level.size, deepest, lining(o))], { at: [0, level.lift, 0] }),
    ...[-1, 1].map((s) => block([-w / 2 - 0.4, 0, s > 0 ? d / 2 : -d / 2 - 0.5], [w / 2 + 0.4, 3.9, s > 0 ? d / 2 + 0.5 : -d / 2], 0.08, side)),
    block([w / 2, 0, -d / 2 - 0.5], [w / 2 + 0.45, 3.4, d / 2 + 0.5], 0.05, side),
    `object { ${block([-d / 2 - 0.7, -0.05, -0.5], [d / 2 + 0.7, 4.1, 0.5], 0.1, boards(o, 3))} rotate 90*y translate ${n(-w / 2 - 0.5)}*x }`,
    block([-w / 2, 0, -d / 2], [w / 2, 0.4, d / 2], 0, side),
    `object { ${group([torus(0.95, 0.13, { at: [0, 0, 0], rotate: [90, 0, 0] }), cylinder([0, 0.95, -0.1], [0, 0.95, 0.3], 0.22), cylinder([0, 0.95, 0.2], [0, 0.95, 0.36], 0.6)], { material: `Brass(${0.2 + o.wear * 0.6})` })} rotate 65*x rotate 90*y translate ${v(-w / 2 - 1.2, 2.1, 0)} }`,
  ]);
}

/** The lower level: walls of the compartments, and the lidded boxes in front where a pattern has nothing else there. */
export function well(o, partitions, lift, covered) {
  const wood = 'Mahogany(0.3, 5)';
  const cloth = lining(o);
  const boxLid = ([x0, z0, x1, z1]) =>
    group([block([x0 + 0.35, lift + 4.6, z0 + 0.35], [x1 - 0.35, lift + 5.1, z1 - 0.35], 0.1, 'Mahogany(0.1, 7)'), group([turned([[0, 0], [0.55, 0, 0.1], [0.3, 0.3, 0.1], [0.6, 0.75, 0.3], [0, 0.95]], 'Bone(0)')], { at: [(x0 + x1) / 2, lift + 5.1, (z0 + z1) / 2] })]);
  return group([
    block([-X + WALL, lift - 0.4, -Z + WALL], [X - WALL, lift, Z - WALL], 0, cloth),
    ...partitions.map(([x0, z0, x1, z1]) => (x0 === x1 ? `object { ${block([z0 - 0.05, lift, -0.2], [z1 + 0.05, lift + 4.7, 0.2], 0.08, wood)} rotate -90*y translate ${n(x0)}*x }` : block([x0, lift, z0 - 0.2], [x1, lift + 4.7, z0 + 0.2], 0.08, wood))),
    ...[-1, 1].map((s) => block([s < 0 ? -X + WALL : X - WALL - 0.5, lift + 4.8, -Z + WALL], [s < 0 ? -X + WALL + 0.5 : X - WALL, lift + 5.3, Z - WALL], 0.05, wood)),
    ...covered.map(boxLid),
  ]);
}

/** Contract plate in the plane of x and z, its face up, w by d. */
export function contractPlate(o) {
  const zinc = o.pattern === '3' && o.contract !== '112';
  const m = zinc ? `Zinc(${o.plateWear})` : `Brass(${o.plateWear * 0.8})`;
  const [w, d] = [9.6, 5.6];
  const screws = o.fixing === 'four-screws';
  const places = screws ? [[-4.4, -2.4], [4.4, -2.4], [-4.4, 2.4], [4.4, 2.4]] : [[-4.45, 0], [4.45, 0]];
  const line = (text, h, z, font = 'serif', x = 0) => words(text, h, { font, depth: 0.004, at: [x, 0.2, z] });
  const digits = [...(o.plateSet ?? '')];
  const wander = o.pattern === '1' || o.pattern === '1u';
  const struck = digits.map((t, i) => words(t, 0.72, { font: 'bold', depth: 0.004, rotate: [0, wander ? Math.sin(i * 4.3 + digits.length) * 7 : 0, 0], at: [1.5 + i * 0.68, 0.2, -0.75 + (wander ? 0.11 * Math.sin(i * 2.9 + 1 + (digits[0]?.charCodeAt(0) ?? 0)) : 0)] }));
  const engraved = [line('QUERNBY & LISK', 0.66, 1.62, 'bold'), line('THWALE', 0.5, 0.55, 'serif'), line('M.S.V.  SET NO.', 0.52, -0.72, 'serif', -1.6), ...struck, line(`CONTRACT ${o.contract}`, 0.52, -1.8, 'serif'), block([-3.6, 0.19, 1.02], [3.6, 0.203, 1.05], 0), block([-1.2, 0.19, 0.12], [1.2, 0.203, 0.15], 0)];
  const [ex, ez] = [w / 2 - 0.22, d / 2 - 0.22];
  const frame = [-1, 1].flatMap((s) => [block([-ex, 0.19, s * ez - 0.025], [ex, 0.203, s * ez + 0.025], 0), block([s * ex - 0.025, 0.19, -ez], [s * ex + 0.025, 0.203, ez], 0)]);
  return group([
    block([-w / 2, 0, -d / 2], [w / 2, 0.2, d / 2], 0.06, m),
    group([...engraved, ...frame], { material: 'Ink(0)' }),
    ...places.map(([x, z], i) => (screws ? group([cut(turned([[0, 0.15], [0.27, 0.2, 0.02], [0.24, 0.24, 0.03], [0, 0.26]]), [block([-0.3, 0.225, -0.035], [0.3, 0.4, 0.035], 0)], zinc ? 'Steel(0.3)' : m)], { rotate: [0, 37 * i + 15, 0], at: [x, 0, z] }) : sphere([x, 0.13, z], 0.15, m))),
  ]);
}
