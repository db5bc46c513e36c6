import { block, cone, cut, cylinder, group, lying, ribbon, slab, roundedOutline, smooth, smoothFlat, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';

const brass = (c) => `Brass(${0.05 + c.wear * 0.7})`;
const dialPaper = 'PaperOf(rgb <0.66,0.62,0.52>, 0.15)';
const clear = 'texture { pigment { rgbt <0.95,0.97,0.97,0.94> } finish { diffuse 0.03 specular 0.6 roughness 0.004 reflection 0.05 } } no_shadow no_radiosity';
const rad = (a) => (a * Math.PI) / 180;

/** Face up in the panel; pointer at its zero, or fallen where the fibre is broken. */
export function galvanometer(c) {
  const sector = c.features['dial-form'] === 'sector';
  const luminous = c.features.pointer === 'luminous';
  const astatic = c.features.galvanometer === 'astatic-needle';
  const ring = c.variant === 'line-set-railway' ? 'Japanned(0)' : brass(c);
  const broken = /Fibre broken/.test(c.note);
  const flakes = /Flakes/.test(c.note);
  const glow = 'texture { pigment { rgb <0.48,0.42,0.16> } normal { granite 0.4 scale 0.1 } finish { diffuse 0.8 } }';
  const span = sector ? 45 : 160;
  const count = sector ? 30 : 64;
  const centre = sector ? -2.6 : 0;
  const reach = sector ? 6.6 : 4.7;
  const tick = (i) => {
    const a = -span + (2 * span * i) / count;
    const long = i % 5 === 0;
    return group([block([-0.025 - (long ? 0.015 : 0), 0.36, reach - (long ? 0.75 : 0.45)], [0.025 + (long ? 0.015 : 0), 0.372, reach], 0, luminous && long ? glow : 'Ink(0)')], { rotate: [0, a, 0], at: [0, 0, centre] });
  };
  const figures = (sector ? [-40, -20, 0, 20, 40] : [-150, -100, -50, 0, 50, 100, 150]).map((a) => words(String(Math.abs(Math.round(a / (sector ? 2 : 5)))), 0.52, { font: 'sans', material: luminous ? glow : 'Ink(0)', depth: 0.006, at: [(reach - 1.3) * Math.sin(rad(a)), 0.37, centre + (reach - 1.3) * Math.cos(rad(a))] }));
  const lean = broken ? 57 : 0;
  const needle = group([
    slab(luminous ? [[-0.16, -1.6], [0.16, -1.6], [0.14, reach - 1.6], [0, reach - 1.1], [-0.14, reach - 1.6]] : [[-0.1, astatic ? -3.6 : -1.5], [0.1, astatic ? -3.6 : -1.5], [0.05, reach - 0.9], [0, reach - 0.7], [-0.05, reach - 0.9]], 0.05, luminous ? glow : 'Blued(0)', 0.75),
    turned([[0, 0.3], [0.42, 0.3, 0.05], [0.42, 0.7, 0.1], [0.2, 0.9, 0.1], [0, 0.95]], 'Brass(0.1)'),
  ], { rotate: [0, lean, 0], at: [0, 0, centre] });
  const frame = sector
    ? cut(slab(roundedOutline(14.4, 11.4, 1.2), 1.3), [slab(roundedOutline(12.6, 9.6, 0.7), 3, '', 0.3)], ring)
    : cut(turned([[0, 0], [6.7, 0, 0.2], [6.7, 0.9, 0.3], [6.1, 1.5, 0.3], [0, 1.5]]), [cylinder([0, 0.3, 0], [0, 3, 0], 5.6)], ring);
  return group([
    frame,
    sector ? slab(roundedOutline(12.7, 9.7, 0.7), 0.06, dialPaper, 0.3) : cylinder([0, 0.3, 0], [0, 0.36, 0], 5.65, dialPaper),
    ...Array.from({ length: count + 1 }, (_, i) => tick(i)),
    ...figures,
    words('RUICK BROTHERS', 0.42, { material: 'Ink(0)', depth: 0.005, at: [0, 0.37, sector ? -0.6 : 1.9] }),
    words('ESTROW', 0.3, { material: 'Ink(0)', depth: 0.005, at: [0, 0.37, sector ? -1.4 : 1.25] }),
    needle,
    flakes && group(Array.from({ length: 16 }, (_, i) => sphere([3.6 * Math.sin(i * 4.1), 0.42, -2.4 + 2.2 * Math.sin(i * 2.7)], 0.05 + 0.03 * Math.sin(i), glow))),
    sector ? slab(roundedOutline(12.7, 9.7, 0.7), 0.08, clear, 1.0) : cylinder([0, 1.15, 0], [0, 1.23, 0], 5.65, clear),
    ...(sector ? [[-6.6, -5.1], [6.6, -5.1], [-6.6, 5.1], [6.6, 5.1]] : [45, 135, 225, 315].map((a) => [6.4 * Math.cos(rad(a)), 6.4 * Math.sin(rad(a))])).map(([x, z], i) => group([cylinder([0, sector ? 1.28 : 0.9, 0], [0, sector ? 1.4 : 1.06, 0], 0.26, brass(c)), block([-0.24, sector ? 1.39 : 1.05, -0.03], [0.24, sector ? 1.405 : 1.065, 0.03], 0, 'Ink(0)')], { rotate: [0, 40 * i, 0], at: [x, 0, z] })),
    turned([[0, 1.1], [0.5, 1.15, 0.05], [0.5, 1.5, 0.06], [0, 1.55]], brass(c)),
    astatic && group([block([-7.6, 0, -0.4], [-6.4, 0.9, 0.4], 0.1, brass(c)), sphere([-7.7, 0.9, 0], 0.4, 'Ivory(0)')]),
    c.packed.includes('bag') && `box { <-7.8,-0.1,-6.4>, <7.8,2.0,6.4> texture { pigment { rgbt <0.85,0.87,0.88,0.84> } normal { wrinkles 0.7 scale 2.4 } finish { diffuse 0.2 specular 0.4 roughness 0.02 reflection { 0.03, 0.2 } } } no_shadow no_radiosity }`,
  ]);
}

const holes = (count) => Array.from({ length: count }, (_, i) => [(i % (count / 2)) * (16 / (count / 2)) - 8 + 8 / (count / 2), i < count / 2 ? 2.3 : -2.3]);
const holeCount = (c) => (c.variant === 'line-set-a' || c.features.terminals === 'milled-brass' ? 12 : 16);

/** Two rows of brass blocks with holes between them, or three switches. */
export function resistanceBox(c) {
  const m = brass(c);
  if (c.features.resistances === 'dials')
    return group([
      ...[-6.1, 0, 6.1].map((x, k) => group([
        cylinder([x, 0, 0.6], [x, 0.3, 0.6], 2.8, 'Ebonite(0)'),
        ...Array.from({ length: 10 }, (_, i) => {
          const a = rad(-135 + i * 30);
          return group([cylinder([x + 2.2 * Math.sin(a), 0.2, 0.6 + 2.2 * Math.cos(a)], [x + 2.2 * Math.sin(a), 0.5, 0.6 + 2.2 * Math.cos(a)], 0.27, m), words(String(i), 0.42, { font: 'sans', material: 'PaperWhite(0)', depth: 0.006, at: [x + 3.3 * Math.sin(a), 0.02, 0.6 + 3.3 * Math.cos(a)] })]);
        }),
        group([block([-0.42, 0.5, -0.6], [0.42, 0.72, 2.6], 0.08, m), turned([[0, 0.3], [1.0, 0.3, 0.1], [1.05, 1.3, 0.2], [0.8, 1.7, 0.3], [0, 1.75]], 'Ebonite(0)')], { rotate: [0, [-75, 45, 15][k], 0], at: [x, 0, 0.6] }),
        words(['HUNDREDS', 'TENS', 'UNITS'][k], 0.44, { font: 'sans', material: 'PaperWhite(0)', depth: 0.006, at: [x, 0.02, -4.2] }),
      ])),
    ]);
  const count = holeCount(c);
  const half = count / 2;
  const pitch = 16 / half;
  const burnt = /burnt/.test(c.note);
  const green = /Verdigris/.test(c.note);
  const units = count === 16 ? [1, 2, 3, 4, 10, 20, 30, 40, 100, 200, 300, 400, 1000, 2000, 3000, 4000] : [1, 2, 4, 10, 20, 40, 100, 200, 400, 1000, 2000, 4000];
  const row = (z) => cut(group(Array.from({ length: half + 1 }, (_, i) => block([-8 + (i - 0.5) * pitch + 0.14, 0, z - 1.0], [-8 + (i + 0.5) * pitch - 0.14, 0.8, z + 1.0], 0.07))), holes(count).filter(([, q]) => Math.sign(q) === Math.sign(z)).map(([x]) => cone([x - pitch / 2, 0.1, z], 0.3, [x - pitch / 2, 1, z], 0.42)), m);
  return group([
    row(2.3), row(-2.3),
    ...holes(count).map(([x, z], i) => words(String(units[i]), 0.4, { font: 'sans', material: 'PaperWhite(0)', depth: 0.006, at: [x - pitch / 2, 0.02, z - 1.5] })),
    ...(green ? holes(count).map(([x, z]) => sphere([x - pitch / 2, 0.05, z + 0.95], 0.2, 'texture { pigment { rgb <0.10,0.32,0.22> } normal { granite 0.6 scale 0.1 } finish { diffuse 0.8 } }')) : []),
    burnt && group([sphere([3.4, 0.02, -2.3], 1.3)], { scale: [1, 0.05, 1], material: 'texture { pigment { rgbt <0.03,0.02,0.01,0.25> } }' }),
    block([8.4, 0, -3.2], [9.4, 0.8, 3.2], 0.07, m),
  ]);
}

export function plug(c) {
  const count = c.variant === 'line-set-a' || c.features.terminals === 'milled-brass' ? 12 : 16;
  const pitch = 16 / (count / 2);
  const [x, z] = holes(count)[c.index] ?? [0, 6];
  const top = c.model === 'stray-plug' ? 'Ebonite(0)' : c.variant === 'line-set-a' || /Boxwood/.test(c.note) ? 'Boxwood(0.3)' : 'Ebonite(0)';
  const [dx, dz, y] = c.loose ? [0, 0, 0] : [x - pitch / 2, z, 0.3];
  return group([turned([[0, 0], [0.3, 0, 0.02], [0.4, 0.9, 0.02], [0.4, 1.1, 0.04], [0, 1.1]], brass(c)), turned([[0, 1.1], [0.5, 1.1, 0.05], [0.42, 1.6, 0.3], [0.66, 2.3, 0.3], [0.5, 2.75, 0.2], [0, 2.85]], top)], { at: [dx, y, dz] });
}

export const bridgeKey = (c) => group([
  block([-3.6, 0, -1], [3.6, 0.25, 1], 0.06, brass(c)),
  block([-3.4, 0.7, -0.55], [2.8, 0.82, 0.55], 0.03, 'Nickel(0.2)'),
  block([-3.4, 1.2, -0.55], [3.2, 1.32, 0.55], 0.03, brass(c)),
  block([-3.6, 0, -0.8], [-2.4, 1.36, 0.8], 0.06, 'Ebonite(0)'),
  group([turned([[0, 1.3], [0.9, 1.3, 0.15], [0.95, 1.8, 0.3], [0, 2.0]], 'Ebonite(0)')], { at: [2.9, 0, 0] }),
  ...[-3, -2.9].map((x, i) => cylinder([x, 1.3, i ? 0.4 : -0.4], [x, 1.5, i ? 0.4 : -0.4], 0.22, brass(c))),
]);

export function commutator(c) {
  const m = brass(c);
  const cups = c.features.commutator === 'mercury-cups' && c.model !== 'plug-commutator';
  if (c.features.commutator === 'rocker' && !cups)
    return group([block([-2.2, 0, -1.6], [2.2, 0.3, 1.6], 0.08, m), cylinder([-1.4, 0.7, 0], [1.4, 0.7, 0], 0.5, m), group([cylinder([0, 0.6, 0], [0, 2.0, 0], 0.22, m), turned([[0, 1.8], [0.6, 1.9, 0.2], [0.85, 2.6, 0.4], [0.5, 3.3, 0.3], [0, 3.4]], 'Ebonite(0)')], { rotate: [0, 0, 18] })]);
  if (cups)
    return group([
      ...[[-1.2, -1.2], [1.2, -1.2], [-1.2, 1.2], [1.2, 1.2]].map(([x, z]) => group([cut(cylinder([x, 0, z], [x, 0.9, z], 0.85), [cylinder([x, 0.3, z], [x, 2, z], 0.62)], 'Ivory(0)'), cylinder([x, 0.3, z], [x, 0.5, z], 0.6, 'Nickel(0)')])),
      wire(smooth([[-1.2, 0.5, -1.2], [-1.2, 1.4, -0.6], [-1.2, 1.4, 0.6], [-1.2, 0.5, 1.2]], 6), 0.12, 'Copper(0.3)'),
      wire(smooth([[1.2, 0.5, -1.2], [1.2, 1.4, -0.6], [1.2, 1.4, 0.6], [1.2, 0.5, 1.2]], 6), 0.12, 'Copper(0.3)'),
      block([-1.4, 1.3, -0.25], [1.4, 1.6, 0.25], 0.08, 'Ebonite(0)'),
      /beads/.test(c.note) && group(Array.from({ length: 12 }, (_, i) => sphere([-3.2 + i * 0.62 + 0.2 * Math.sin(i * 3), 0.09, -2.4 - 0.3 * Math.abs(Math.sin(i * 2.2))], 0.07 + 0.05 * Math.abs(Math.sin(i * 1.7)), 'Nickel(0)'))),
    ]);
  return group([
    cut(cylinder([0, 0, 0], [0, 0.7, 0], 2.3), [block([-3, -1, -0.12], [3, 2, 0.12], 0), cone([-1.1, 0.1, 0], 0.34, [-1.1, 1, 0], 0.46), cone([1.1, 0.1, 0], 0.34, [1.1, 1, 0], 0.46)], m),
    group([turned([[0, 0], [0.3, 0], [0.44, 1.0], [0.44, 1.2, 0.04], [0, 1.2]], m), turned([[0, 1.2], [0.55, 1.2, 0.05], [0.5, 1.8, 0.3], [0.75, 2.6, 0.3], [0, 3.0]], 'Ebonite(0)')], { at: [-1.1, 0.25, 0] }),
    ...Array.from({ length: 13 }, (_, i) => torus(0.17, 0.045, { at: [-0.9 + i * 0.26, 0.75, -0.9 - 1.1 * Math.sin((i / 12) * Math.PI)], rotate: [i % 2 ? 80 : 15, 30, 0], material: m })),
  ]);
}
export const buzzer = (c) => group([cut(cylinder([0, 0, 0], [0, 0.3, 0], 1.9), Array.from({ length: 12 }, (_, i) => cylinder([1.25 * Math.cos(i * 0.524), -1, 1.25 * Math.sin(i * 0.524)], [1.25 * Math.cos(i * 0.524), 1, 1.25 * Math.sin(i * 0.524)], 0.2)), brass(c)), turned([[0, 0.3], [0.6, 0.3, 0.05], [0.6, 1.1, 0.06], [0, 1.15]], brass(c)), block([-0.5, 1.13, -0.05], [0.5, 1.16, 0.05], 0, 'Ink(0)')]);
export const adjustingMagnet = (c) => group([cylinder([0, 0, 0], [0, 2.2, 0], 0.3, brass(c)), group([block([-0.3, 2.0, -0.3], [3.0, 2.3, 0.3], 0.1, brass(c)), block([1.6, 2.3, -1.9], [2.6, 2.9, 1.9], 0.06, 'Blued(0.1)')], { rotate: [0, 25, 0] })]);
/** A terminal of the panel; they go with the panel and are not counted. */
export const terminal = (c) => (c.features.terminals === 'winged'
  ? group([turned([[0, 0], [0.8, 0, 0.06], [0.8, 0.3, 0.06], [0.35, 0.35], [0.35, 1.2], [0.6, 1.25, 0.1], [0.6, 1.8, 0.1], [0, 1.85]], brass(c)), block([-1.25, 1.3, -0.16], [1.25, 2.2, 0.16], 0.15, brass(c))])
  : group([turned([[0, 0], [0.8, 0, 0.06], [0.8, 0.3, 0.06], [0.35, 0.35], [0.35, 1.0], [0.75, 1.05, 0.06], [0.75, 1.8, 0.1], [0, 1.85]], brass(c)), c.features.terminals === 'ebonite-capped' ? turned([[0, 1.5], [0.85, 1.5, 0.05], [0.85, 2.2, 0.2], [0, 2.3]], 'Ebonite(0)') : group(Array.from({ length: 20 }, (_, i) => cylinder([0.75 * Math.cos(i * 0.314), 1.15, 0.75 * Math.sin(i * 0.314)], [0.75 * Math.cos(i * 0.314), 1.7, 0.75 * Math.sin(i * 0.314)], 0.07, brass(c))))]));

/** Lying on its side, its cap towards +x, with its cord. */
export function receiver(c) {
  const shell = c.variant === 'line-set-railway' ? 'Aluminium(0.4)' : c.state === 'unverified' ? 'GreySteel(0.2, 1)' : c.features['receiver-shell'] === 'wood' ? 'Mahogany(0.3, 2)' : 'Ebonite(0)';
  const cord = c.features['receiver-shell'] === 'wood' ? 'texture { pigment { rgb <0.25,0.12,0.06> } finish { diffuse 0.8 } }' : 'texture { pigment { rgb <0.05,0.13,0.07> } normal { bumps 0.4 scale 0.08 } finish { diffuse 0.85 } }';
  return group([
    lying(turned([[0, 0], [0.9, 0, 0.2], [1.1, 1.0, 0.5], [1.2, 7, 2], [1.6, 8.6, 0.8], [2.9, 10, 0.4], [3.0, 10.6, 0.1], [3.15, 10.65, 0.06], [3.15, 12.0, 0.3], [2.4, 12.5, 0.4], [0.9, 12.1, 0.3], [0.5, 11.8], [0, 11.8]], shell), 3.1, { at: [-7, 0] }),
    torus(0.8, 0.14, { at: [-7.6, 3.1, 0], rotate: [90, 0, 0], material: brass(c) }),
    wire(smooth([[-7, 2.6, 0.4], [-8.4, 0.8, 1.6], [-6, 0.3, 3.3], [-1, 0.28, 3.7], [3, 0.28, 3.5], [5, 0.28, 4.4], [2, 0.3, 4.7], [-4, 0.3, 4.4]], 8), 0.24, cord),
  ]);
}
export const testLead = (c) => {
  const m = c.index < 2 ? 'texture { pigment { rgb <0.30,0.05,0.035> } normal { bumps 0.4 scale 0.08 } finish { diffuse 0.85 } }' : 'texture { pigment { rgb <0.05,0.14,0.07> } normal { bumps 0.4 scale 0.08 } finish { diffuse 0.85 } }';
  const tar = /tar/i.test(c.note) && (c.index % 2 === 1 || /Tar and/.test(c.note));
  const coil = Array.from({ length: 44 }, (_, i) => {
    const a = (i / 43) * 7 * Math.PI + c.index;
    const r = 2.1 + 0.22 * Math.sin(i * 0.9 + c.index);
    return [r * Math.cos(a), 0.25 + i * 0.016 + 0.1 * Math.sin(i * 0.5), r * Math.sin(a)];
  });
  return group([wire(coil, 0.2, tar ? 'texture { pigment { granite color_map { [0 rgb 0.012] [0.7 rgb 0.02] [1 rgb <0.35,0.15,0.07>] } scale 0.6 } normal { bumps 0.6 scale 0.2 } finish { diffuse 0.7 specular 0.5 roughness 0.02 } }' : m), block([1.4, 0.5, -2.6], [2.3, 0.62, -1.6], 0.03, 'Tin(0.3)'), block([-2.4, 0.9, 1.2], [-1.5, 1.02, 2.2], 0.03, 'Tin(0.3)'), `intersection { ${torus(2.1, 0.36, { at: [0, 0.6, 0] })} box { <-0.5,-1,1>, <0.5,3,4> } Webbing(0) }`]);
};
