import { block, cut, cylinder, group, lying, ribbon, slab, roundedOutline, sheet, smooth, smoothFlat, sphere, strap as band, torus, turned, wire, words } from '../engine/shapes.mjs';

/** A strap rolled up on its edge, its japanned buckle outermost. */
export function strap(c) {
  const m = `Bridle(${c.wear})`;
  const roll = Array.from({ length: 150 }, (_, i) => {
    const a = (i / 149) * 11.4 * Math.PI;
    const r = 1.5 + a * 0.098 + 0.12 * Math.sin(a * 0.53) + 0.05 * Math.sin(a * 1.7);
    return [1.12 * r * Math.cos(a), 0.92 * r * Math.sin(a)];
  });
  const [ex, ez] = roll.at(-1);
  const tail = smoothFlat([[ex, ez], [ex + 0.6, ez - 2], [ex + 2.2, ez - 4], [ex + 4.6, ez - 5.4], [ex + 6.8, ez - 5.9]], 8).slice(1);
  return group([
    ribbon([...roll, ...tail], 0.27, 2.3, m),
    group([ribbon([[-1.5, -1.25], [-1.5, 1.25], [1.5, 1.25], [1.5, -1.25], [-1.5, -1.25]], 0.28, 0.3), cylinder([-1.5, 0.15, 0], [1.7, 0.15, 0], 0.13)], { material: 'Japanned(0)', rotate: [-82, 0, 0], at: [ex + 8.1, 1.2, ez - 6.1] }),
    ...(c.wear > 0.5 ? [0.35, 0.8].flatMap((f) => Array.from({ length: 5 }, (_, i) => sphere([...[tail[Math.floor(f * (tail.length - 1))]].map(([x]) => x + i * 0.12), 2.32, tail[Math.floor(f * (tail.length - 1))][1]], 0.06, 'Paper(0.5)'))) : []),
  ]);
}

/** Two shoulder straps and a breast strap on a leather pad with its stamp. */
export function harness(c) {
  if (c.model === 'pack-frame') return packFrame();
  const pad = sheet(-5.5, -7, 5.5, 7, 40, 50, (x, z) => {
    const e = Math.max((Math.abs(x) / 5.5) ** 6, (Math.abs(z) / 7) ** 6);
    return 0.9 * Math.sqrt(Math.max(0, 1 - e)) + 0.08 * Math.sin(x * 0.8 + z * 0.3);
  }, `Bridle(${c.wear})`);
  const web = (points, m = 'Webbing(0)') => band(points, 3, 0.3, m);
  return group([
    pad,
    web([[-3.2, 0.6, 6.5], [-4.2, 0.7, 9], [-6.2, 0.4, 9.6], [-8.2, 0.1, 6], [-8.4, 0.05, 0], [-7.6, 0.1, -5], [-5.2, 0.3, -6.8], [-3.4, 0.8, -6.2]]),
    web([[3.2, 0.6, 6.5], [4.2, 0.7, 9.2], [6.4, 0.4, 9.4], [8.0, 0.1, 5.6], [8.6, 0.05, 0], [7.4, 0.1, -5.4], [5.2, 0.3, -6.9], [3.4, 0.8, -6.2]]),
    web([[-8.2, 0.4, 1.8], [-4, 1.2, 2.6], [0, 1.25, 2.2], [4, 1.2, 2.7], [8.3, 0.4, 2.0]], 'Canvas(0)'),
    ...[[-7.9, 5], [8.0, 4.6]].map(([x, z]) => group([ribbon([[-1.9, -0.9], [-1.9, 0.9], [1.9, 0.9], [1.9, -0.9], [-1.9, -0.9]], 0.28, 0.3), cylinder([-1.9, 0.3, 0], [1.9, 0.3, 0], 0.12)], { material: 'Brass(0.6)', at: [x, 0.4, z] })),
    group([ribbon([[-1.3, -0.7], [0, 1.3], [1.3, -0.7], [-1.3, -0.7]], 0.2, 0.06, 'Cut(0)'), words('M.S.V.', 0.6, { font: 'bold', material: 'Cut(0)', depth: 0.03, at: [0, 0.03, -1.7] })], { at: [0, 0.93, -2.4] }),
  ]);
}

function packFrame() {
  const tube = (points) => wire(smooth(points, 8), 0.55, 'Aluminium(0.5)');
  return group([
    tube([[-6.2, 0.6, -10], [-6.2, 0.6, 0], [-6.0, 0.6, 8], [-4.6, 0.6, 10.6], [0, 0.6, 11], [4.6, 0.6, 10.6], [6.0, 0.6, 8], [6.2, 0.6, 0], [6.2, 0.6, -10]]),
    ...[-8, -1.5, 5.5].map((z) => tube([[-6.1, 0.7, z], [0, 1.1, z - 0.3], [6.1, 0.7, z]])),
    ...[[-7, -3.4], [0.2, 4.6]].map(([z0, z1]) => sheet(-5.9, z0, 5.9, z1, 30, 12, (x, z) => 1.25 - 0.012 * x * x + 0.06 * Math.sin(z * 3), 'Canvas(0)')),
    ...[-1, 1].map((s) => band([[s * 2.2, 1.4, 8.8], [s * 3, 1.9, 6], [s * 4, 2.2, 1], [s * 4.6, 1.8, -4], [s * 5.8, 0.9, -8.4]], 2.6, 0.35, 'Canvas(0)')),
  ]);
}

const colours = ['<0.02,0.05,0.32>', '<0.01,0.20,0.10>', '<0.30,0.08,0.30>', '<0.42,0.20,0.03>', '<0.45,0.40,0.10>', '<0.10,0.26,0.30>', '<0.36,0.04,0.04>', '<0.5,0.48,0.42>'];

export const glassTubes = () =>
  group(
    Array.from({ length: 11 }, (_, i) =>
      lying(turned([[0, 0], [0.28, 0.05, 0.2], [0.3, 0.4, 0.1], [0.3, 7.4, 0.02], [0.24, 7.4, 0.02], [0.24, 0.5, 0.1], [0, 0.3]], 'Flint(0)'), 0.3, { at: [-3.7 + 0.25 * Math.sin(i * 2.3), i * 0.68], turn: 3 * Math.sin(i * 1.7) }),
    ),
  );

export const beadCard = () =>
  group([
    slab(roundedOutline(9.2, 6.4, 0.1), 0.06, 'Paper(0.8)'),
    ...colours.map((k, i) => cylinder([-3.2 + (i % 4) * 2.1, 0.05, i < 4 ? 0.9 : -1.4], [-3.2 + (i % 4) * 2.1, 0.075, i < 4 ? 0.9 : -1.4], 0.62, `texture { pigment { rgb ${k} } finish { diffuse 0.8 } }`)),
    words('COLOURS OF BEADS', 0.4, { material: 'Ink(0)', depth: 0.004, at: [0, 0.062, 2.5] }),
  ]);

export const pocketRule = () =>
  group([
    ...[0, 1].map((k) => group([block([-7.6, 0, -0.75], [7.6, 0.3, 0.75], 0.04, 'Boxwood(0.5)'), ...Array.from({ length: 60 }, (_, i) => block([-7.4 + i * 0.25 - 0.012, 0.295, k ? 0.75 - (i % 4 ? 0.3 : 0.6) : -0.75], [-7.4 + i * 0.25 + 0.012, 0.305, k ? 0.75 : -0.75 + (i % 4 ? 0.3 : 0.6)], 0, 'Ink(0)'))], { rotate: [0, k * 9, 0], at: [k * -0.1, 0, k * 2.9] })),
    cylinder([7.5, 0, 0.9], [7.5, 0.34, 0.9], 0.8, 'Brass(0.4)'),
  ]);

export const flintTin = () =>
  group([
    turned([[0, 0], [2.4, 0, 0.1], [2.4, 1.1, 0.03], [0, 1.1]], 'Zinc(0.5)'),
    turned([[0, 1.0], [2.5, 1.0, 0.03], [2.5, 1.7, 0.15], [2.2, 1.78, 0.1], [0, 1.85]], 'Zinc(0.7)'),
    words('FLINTS', 0.7, { font: 'sans', material: 'Cut(0)', depth: 0.05, at: [0, 1.83, 0] }),
  ]);

export const looseStoppers = () =>
  group(['3', '9'].map((t, i) => group([turned([[0, 0], [0.62, 0, 0.06], [0.7, 0.1, 0.08], [0.66, 0.3, 0.1], [0.4, 0.55, 0.08], [0.5, 0.7], [0.42, 1.6], [0, 1.6]], 'Flint(0)')], { rotate: [0, 0, 0], at: [i * 2.4, 0, i * 0.7] })));

export const leatherCap = () =>
  group([turned([[0, 2.0], [0.9, 1.9, 0.5], [1.5, 0.9, 0.5], [1.7, 0, 0.1], [1.55, 0], [0, 0.1]], 'Bridle(0.8)'), ...Array.from({ length: 14 }, (_, i) => sphere([1.62 * Math.cos((i * Math.PI) / 7), 0.3, 1.62 * Math.sin((i * Math.PI) / 7)], 0.08, 'Paper(0.8)'))]);

export const leadShot = () => group(Array.from({ length: 6 }, (_, i) => sphere([1.1 * Math.cos(i * 2.4) * Math.sqrt(i), 0.42, 0.9 * Math.sin(i * 2.4) * Math.sqrt(i)], 0.42, 'Lead(0.8)')));

/** The tag of the sealed pattern, on its cord, with the wax. */
export const sealedTag = () =>
  group([
    slab([[-4.6, -2.4], [3.4, -2.4], [4.6, -1.2], [4.6, 1.2], [3.4, 2.4], [-4.6, 2.4]], 0.07, 'Buff(0.6)'),
    torus(0.34, 0.08, { at: [3.9, 0.08, 0], material: 'Brass(0.3)' }),
    words('NOT TO BE OPENED', 0.42, { material: 'Ink(0)', depth: 0.004, at: [-0.7, 0.072, 1.5] }),
    words('EXCEPT IN THE PRESENCE', 0.34, { material: 'Ink(0)', depth: 0.004, at: [-0.7, 0.072, 0.75] }),
    words('OF THE STOREKEEPER', 0.34, { material: 'Ink(0)', depth: 0.004, at: [-0.7, 0.072, 0.1] }),
    wire(smooth([[3.9, 0.2, 0], [5.4, 0.15, 0.5], [6.6, 0.12, 1.8], [6.2, 0.12, 3.4], [4.2, 0.12, 4.2], [2.4, 0.12, 5.2]], 8), 0.1, 'Webbing(0)'),
    group([turned([[0, 0], [1.55, 0, 0.2], [1.6, 0.3, 0.2], [1.25, 0.42, 0.1], [1.15, 0.28, 0.06], [0, 0.28]], 'Wax(rgb <0.34,0.022,0.016>)')], { at: [1.6, 0.02, 5.6] }),
    words('1905', 0.5, { font: 'bold', material: 'Wax(rgb <0.42,0.04,0.03>)', depth: 0.05, at: [1.6, 0.31, 5.6] }),
  ]);

export const newspaper = () => sheet(-4, -3, 4, 3, 40, 30, (x, z) => 0.25 + 0.22 * Math.sin(x * 1.4 + Math.sin(z * 2)) * Math.sin(z * 1.2 + x * 0.4) + 0.03 * (x * x + z * z) * 0.5, 'Paper(0.9)');

export const paperSlip = () =>
  group([
    slab([[-3.6, -1.9], [3.5, -2], [3.6, 1.8], [-3.5, 2]], 0.03, 'Paper(0.9)'),
    ...['LAMP FAILS ABOVE', 'THE THIRD CAIRN', 'A.V.'].map((t, i) => words(t, 0.44, { material: 'texture { pigment { rgb <0.06,0.05,0.09> } }', depth: 0.004, at: [i === 2 ? 2 : -0.2, 0.032, 1 - i * 0.95] })),
  ]);
