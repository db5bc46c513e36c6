import { block, cut, cylinder, group, lying, slab, roundedOutline, sheet, smooth, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';

const skins = { gilt: 'Gilt(0)', nickelled: 'Nickel(0.2)', bare: 'Brass(0.5)' };
export const nickel = (c) => ['gauging-revised', 'gauging-bonded', 'gauging-trial'].includes(c.variant);
const skin = (c) => (/nickelled/i.test(c.note) ? skins.nickelled : skins[c.features['float-finish']]);
export const fitting = (c) => (c.variant === 'gauging-bonded' ? 'Gilt(0)' : nickel(c) ? `Nickel(${c.wear})` : `Brass(${c.wear * 0.8})`);

/** Along x, the divided stem towards +x; axis at height 2.4. */
export function float(c) {
  const m = skin(c);
  const cone = c.features['float-body'] === 'double-cone';
  const flat = c.features.stem === 'flat';
  const bodyOf = cone
    ? [[0.3, 6.4], [0.42, 6.6, 0.1], [2.3, 9.0, 0.25], [2.36, 9.15, 0.1], [2.3, 9.3, 0.25], [0.42, 11.6, 0.1], [0.3, 11.8]]
    : [[0.3, 6.6], [0.45, 6.75, 0.1], ...Array.from({ length: 17 }, (_, i) => [2.35 * Math.sin(0.2 + (i / 16) * 2.74), 9.1 - 2.35 * Math.cos(0.2 + (i / 16) * 2.74), 0.4]), [0.45, 11.45, 0.1], [0.3, 11.6]];
  const ticks = c.features['stem-divisions'] === '20' ? 20 : 20;
  const [h, w] = flat ? [0.16, 0.62] : [0.36, 0.36];
  return group([
    lying(group([
      turned([[0, 0], [0.62, 0, 0.15], [0.72, 0.5, 0.3], [0.5, 1.1, 0.2], [0.26, 1.3, 0.1], [0.2, 2.0], [0.2, 5.6], [0.36, 5.7, 0.06], [0.36, 6.1, 0.06], [0.28, 6.2], [0.28, 6.7]], m),
      turned(bodyOf, m),
      !cone && torus(2.35, 0.025, { at: [0, 9.1, 0], material: 'Ink(0)' }),
      turned([[0.28, 11.5], [0.34, 11.6, 0.05], [0.34, 12.0, 0.05], [0.2, 12.2], [0, 12.2]], m),
    ]), 2.4, { at: [-10.5, 0] }),
    block([1.5, 2.4 - h / 2, -w / 2], [10.2, 2.4 + h / 2, w / 2], 0.03, m),
    ...Array.from({ length: ticks + 1 }, (_, i) => block([1.9 + i * 0.4 - 0.018, 2.4 + h / 2 - 0.01, -w / 2], [1.9 + i * 0.4 + 0.018, 2.4 + h / 2 + 0.008, i % 2 ? w * 0.05 : w / 2], 0, 'Ink(0)')),
    c.mark && words(c.mark, 0.42, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-0.9, cone ? 3.86 : 4.42, 0], rotate: [0, 90, cone ? -38 : -12] }),
  ]);
}

export function washFloat(c) {
  const dent = /dent/i.test(c.note);
  return group([
    cut(lying(turned([[0, 0], [0.8, 0, 0.2], [0.8, 1, 0.3], [0.24, 1.4], [0.24, 3], [0.5, 3.1, 0.1], ...Array.from({ length: 17 }, (_, i) => [2.9 * Math.sin(0.2 + (i / 16) * 2.74), 6 - 2.9 * Math.cos(0.2 + (i / 16) * 2.74), 0.4]), [0.5, 8.95, 0.1], [0.3, 9.4], [0.26, 9.4], [0, 9.5]]), 2.9, { at: [-6, 0] }), dent ? [sphere([1.9, 6.0, -1.2], 1.35)] : [], `Brass(${c.wear})`),
    block([3.2, 2.72, -0.18], [8, 3.08, 0.18], 0.03, `Brass(${c.wear})`),
    words('W', 0.6, { font: 'bold', material: 'Ink(0)', depth: 0.03, at: [0.4, 5.8, 0], rotate: [0, 90, -8] }),
  ]);
}

/** One of nine discs, its value up; the number of the float is on the back, or on the edge. */
export function poise(c) {
  const m = c.spare && /gilt/i.test(c.note) ? 'Gilt(0)' : c.features['float-finish'] === 'nickelled' || /nickelled/i.test(c.note) ? 'Nickel(0.25)' : 'Gilt(0)';
  const r = 1.36;
  const slit = c.features['poise-form'] === 'side-slit';
  const value = c.spare && /fourth/i.test(c.note) ? 40 : (c.index + 1) * 10;
  const holes = slit
    ? [block([-0.17, -1, -2], [0.17, 2, 0.15], 0), cylinder([0, -1, 0.15], [0, 2, 0.15], 0.17)]
    : [cylinder([0, -1, 0], [0, 2, 0], 0.32), block([-0.13, -1, -0.85], [0.13, 2, 0], 0)];
  return group([
    cut(turned([[0, 0], [r, 0, 0.06], [r, 0.5, 0.07], [r - 0.12, 0.56, 0.04], [0, 0.56]]), holes, m),
    torus(r - 0.22, 0.03, { at: [0, 0.56, 0], material: m }),
    words(String(value), 0.46, { font: 'bold', material: 'Ink(0)', depth: 0.012, at: [0, 0.565, 0.78] }),
  ]);
}
export const poiseBack = (c) =>
  group([cut(turned([[0, 0], [1.36, 0, 0.06], [1.36, 0.5, 0.07], [1.24, 0.56, 0.04], [0, 0.56]]), [cylinder([0, -1, 0], [0, 2, 0], 0.32), block([-0.13, -1, -0.85], [0.13, 2, 0], 0)], c.spare ? 'Gilt(0)' : skin(c)), c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.012, at: [0, 0.565, 0.8] })]);

export function proofCap(c) {
  const m = c.variant === 'gauging-bonded' || c.features['float-finish'] === 'gilt' ? 'Gilt(0)' : 'Nickel(0.2)';
  return nickel(c)
    ? group([block([-0.8, 0, -0.5], [0.8, 0.5, 0.5], 0.1, m), wire(smooth([[-0.8, 0.5, 0], [-0.2, 0.75, 0], [0.5, 0.6, 0]], 6), 0.07, m)])
    : group([cut(block([-0.75, 0, -0.75], [0.75, 0.8, 0.75], 0.08), [block([-0.2, 0.4, -0.2], [0.2, 1, 0.2], 0)], m), /thread/.test(c.note) && wire(smooth([[0.5, 0.85, 0.5], [1.6, 0.4, 1.2], [2.6, 0.9, 0.8], [3.6, 0.85, 1.8]], 7), 0.05, 'Webbing(0)')]);
}

/** Along x; the tube before its plate, in a sheath for the sea. */
export function thermometer(c) {
  const later = c.model === 'later-thermometer';
  const kind = later ? 'porcelain' : c.features['thermometer-scale'];
  const plate = kind === 'ivory' ? 'Ivory(0)' : kind === 'boxwood' ? 'Boxwood(0.2)' : 'PaperWhite(0)';
  const frame = later || nickel(c) ? 'Nickel(0.15)' : 'Brass(0.3)';
  const broken = /broken in three/.test(c.note);
  const threads = broken ? [[-6, -2.4], [-1.6, 0.3], [1.0, 2.2]] : [[-8, 2.4]];
  return group([
    block([-10.4, 0, -0.95], [10.2, 0.42, 0.95], 0.12, frame),
    block([-10, 0.36, -0.75], [9.8, 0.5, 0.75], 0.06, plate),
    ...Array.from({ length: 61 }, (_, i) => block([-7 + i * 0.26 - 0.012, 0.49, 0.22], [-7 + i * 0.26 + 0.012, 0.506, i % 5 ? 0.42 : 0.6], 0, 'Ink(0)')),
    cylinder([-8.6, 0.62, 0], [9.4, 0.62, 0], 0.17, 'texture { pigment { rgbt <0.8,0.85,0.85,0.75> } finish { diffuse 0.2 specular 1 roughness 0.003 reflection 0.12 } } no_shadow'),
    sphere([-9, 0.66, 0], 0.34, 'Nickel(0)'),
    ...threads.map(([a, b]) => cylinder([a - 0.6, 0.62, 0], [b, 0.62, 0], 0.06, 'Nickel(0)')),
    ...[-6, 0, 6].map((x) => group([torus(0.22, 0.05, { at: [x, 0.6, 0], rotate: [0, 0, 90] }), block([x - 0.06, 0.45, -0.4], [x + 0.06, 0.6, 0.4], 0.02)], { material: frame })),
  ]);
}

export const readingGlass = (c) => {
  const horn = c.variant === 'gauging-first' || c.variant === 'gauging-distillery';
  const mount = horn ? 'Bridle(0.2)' : fitting(c);
  return group([
    torus(1.75, 0.26, { at: [-1.2, 0.3, 0], material: mount }),
    `object { ${turned([[0, 0.14], [1.5, 0.3, 0.2], [1.6, 0.36], [1.5, 0.42, 0.2], [0, 0.6]], 'Flint(0)')} translate -1.2*x }`,
    block([0.4, 0.05, -0.5], [4.2, 0.5, 0.5], 0.2, mount),
    cylinder([0.55, 0, 0], [0.55, 0.62, 0], 0.22, 'Brass(0.3)'),
  ]);
};

export const wipingLeather = () =>
  group([0, 1, 2].map((i) => `object { ${sheet(-2.4, -2.3, 2.4, 2.3, 26, 26, (x, z) => 0.12 + i * 0.24 + 0.07 * Math.sin(x * 1.4 + i) * Math.sin(z * 1.1 + i) + 0.02 * (x + z), 'Chamois(0.1)')} rotate ${i * 5 - 4}*y }`));

/** A jar on its side; glass on a foot, cut glass, copper or tin. */
export function trialJar(c) {
  const coast = c.variant === 'gauging-coast' && c.model !== 'glass-jar';
  const metal = c.model === 'tin-jar' ? 'Tin(0.3)' : coast ? `Copper(${0.2 + c.wear * 0.5})` : undefined;
  const foot = fitting(c);
  if (metal)
    return group([
      lying(turned([[0, 0], [2.3, 0, 0.15], [2.3, 22, 0.05], [2.44, 22.05, 0.06], [2.44, 22.3, 0.06], [2.15, 22.3, 0.05], [2.15, 0.4], [0, 0.4]], metal), 2.4, { at: [-11.2, 0] }),
      coast && group([torus(2.55, 0.16, { at: [6, 2.4, 0], rotate: [0, 0, 90] }), cylinder([6, 2.4, -3.1], [6, 2.4, -2.3], 0.16), cylinder([6, 2.4, 2.3], [6, 2.4, 3.1], 0.16)], { material: 'Brass(0.4)' }),
      coast && /nail/.test(c.repairs) && cylinder([6, 2.6, -3.6], [6, 2.5, -2.4], 0.09, 'Iron(0.8)'),
      c.model === 'tin-jar' && block([-11, 4.66, -0.05], [11, 4.74, 0.05], 0, 'Tin(0.9)'),
    ]);
  const facets = c.variant === 'gauging-bonded';
  return group([
    lying(turned([[0, 1.2], [2.0, 1.2, 0.3], [2.0, 22, 0.1], [2.3, 22.6, 0.1], [2.12, 22.65, 0.05], [1.8, 22, 0.1], [1.8, 1.7, 0.3], [0, 1.7]], 'Flint(0)'), 2.4, { at: [-11.2, 0] }),
    facets && lying(group(Array.from({ length: 12 }, (_, i) => cylinder([2.0 * Math.cos((i * Math.PI) / 6), 3, 2.0 * Math.sin((i * Math.PI) / 6)], [2.0 * Math.cos((i * Math.PI) / 6), 14, 2.0 * Math.sin((i * Math.PI) / 6)], 0.1, 'Flint(0)'))), 2.4, { at: [-11.2, 0] }),
    lying(turned([[0, 0], [2.6, 0, 0.15], [2.6, 0.5, 0.2], [1.5, 0.9, 0.3], [2.15, 1.3, 0.1], [2.15, 1.8, 0.06], [0, 1.8]], foot), 2.6, { at: [-11.6, 0] }),
  ]);
}
