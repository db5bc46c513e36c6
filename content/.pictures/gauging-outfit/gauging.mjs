import { block, cone, cut, cylinder, group, lying, ribbon, slab, roundedOutline, smooth, smoothFlat, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';
import { fitting, nickel } from './proving.mjs';

const copper = (c) => (nickel(c) ? `Nickel(${c.wear})` : `Copper(${0.15 + c.wear * 0.6})`);
const boxwood = (c) => `Boxwood(${0.1 + c.wear * 0.6})`;
const steel = (c) => `Steel(${0.2 + c.wear * 0.7})`;
const inches = (x0, x1, y, z, long = 0.5) => Array.from({ length: Math.floor((x1 - x0) / 0.635) + 1 }, (_, i) => block([x0 + i * 0.635 - 0.018, y - 0.02, z], [x0 + i * 0.635 + 0.018, y + 0.006, z + (i % 4 ? long * 0.5 : long)], 0, 'Ink(0)'));

/** Joints side by side, along x. */
export function dipRod(c) {
  const count = { screwed: 4, hinged: 3, bayonet: 3 }[c.features['rod-joint']] ?? 4;
  const ends = fitting(c);
  return group(Array.from({ length: count }, (_, i) => group([
    block([-16.6, 0, -0.55], [16.6, 1.0, 0.55], 0.14, boxwood(c)),
    ...[-1, 1].map((s) => block([Math.min(s * 16.9, s * 15.2), -0.03, -0.6], [Math.max(s * 16.9, s * 15.2), 1.04, 0.6], 0.12, ends)),
    c.features['rod-joint'] === 'screwed' && lying(turned([[0, 0], [0.34, 0], [0.34, 1.0, 0.05], [0, 1.1]], ends), 0.5, { at: [16.8, 0] }),
    ...inches(-14.6, 14.6, 1.0, -0.5, 0.8),
    words(String(i + 1), 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [-15.8, 1.05, 0] }),
    i === 0 && c.mark && words(c.mark, 0.44, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [-12.6, 1.005, 0.22] }),
  ], { at: [i % 2 ? 0.4 : 0, 0, 2.1 - i * 1.42] })));
}
export const headRod = (c) => group([
  block([-14.6, 0, -0.6], [14.2, 0.8, 0.6], 0.1, boxwood(c)),
  ...inches(-13.5, 12.5, 0.8, -0.55, 0.7),
  ribbon([[-15.2, -1.5], [-15.2, 0], [-14, 0.1]], 0.34, 0.8, fitting(c)),
  block([4, -0.04, -0.85], [5.4, 1.0, 0.85], 0.1, fitting(c)),
  sphere([4.7, 1.1, 0], 0.3, fitting(c)),
  c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [9, 0.805, 0.15] }),
]);
export const chargeRod = (c) => group([block([-15, 0, -0.5], [15, 1.0, 0.5], 0.06, `Brass(${c.wear})`), ...inches(-14, 14, 1.0, -0.5, 0.9), c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [11, 1.005, 0.2] })]);

export const callipers = (c) => {
  const arm = (x, s) => ribbon(smoothFlat([[x, 1.3 * s], [x + 0.2 * s, 0.6], [x + 1.6, 0.4 * s], [x + 6.5, 0.2 * s]]), (t) => 0.7 - 0.3 * t, 0.34, fitting(c), 0.85);
  return group([
    block([-14.6, 0, -1.5], [10, 0.8, -0.3], 0.1, boxwood(c)),
    block([-10, 0, 0.3], [14.6, 0.8, 1.5], 0.1, boxwood(c)),
    ...[-6, 5].map((x) => block([x - 0.6, -0.04, -1.65], [x + 0.6, 0.98, 1.65], 0.1, fitting(c))),
    ...inches(-8, 4, 0.8, 0.4, 0.6),
    arm(-14.2, -1), arm(7.4, 1),
    ...[[-14, -0.9], [14, 0.9]].map(([x, z]) => cylinder([x, 0.7, z], [x, 1.3, z], 0.35, fitting(c))),
    c.mark && words(c.mark, 0.46, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [0, 0.805, -0.95] }),
  ]);
};

export function slideRule(c) {
  const plain = c.model === 'boxwood-rule' || c.features['rule-stock'] === 'boxwood';
  const aged = /yellow/.test(c.note);
  const stock = plain ? 'Boxwood(0.15)' : c.features['rule-stock'] === 'ivory' ? 'Ivory(0)' : 'PaperOf(rgb <0.72,0.66,0.50>, 0.2)';
  const scale = (z, ink) => Array.from({ length: 70 }, (_, i) => {
    const x = -10.8 + 21.6 * Math.log10(1 + (9 * i) / 69);
    return block([x - 0.014, 0.6, z], [x + 0.014, 0.615, z + (i % 5 ? 0.18 : 0.34)], 0, ink);
  });
  return group([
    block([-11.4, 0, -1.5], [11.4, 0.6, 1.5], 0.06, stock),
    ...[-0.55, 0.55].map((z, k) => block([-11.2 + k * 0.8, 0.2, z - 0.4], [11.2 + k * 0.8, 0.612, z + 0.4], 0.02, aged ? 'PaperOf(rgb <0.55,0.40,0.16>, 0.4)' : stock)),
    ...[-0.95, -0.15, 0.15, 0.95].map((z) => block([-11.4, 0.59, z - 0.012], [11.4, 0.607, z + 0.012], 0, 'Ink(0)')),
    ...scale(-1.4, 'Ink(0)'), ...scale(0.98, 'RedPaint(0)'), ...scale(-0.5, 'Ink(0)'),
    aged && `object { ${block([-1.1, 0, -1.4], [1.1, 0.05, 1.4], 0.02, 'PaperOf(rgb <0.5,0.36,0.14>, 0.6)')} rotate 16*z translate <10.9,0.72,0> }`,
  ]);
}

export const samplingTube = (c) => group([
  lying(turned([[0.28, 0], [0.36, 0.1, 0.05], [1.15, 9, 4], [1.2, 15.5], [1.32, 15.6, 0.05], [1.32, 16.6, 0.05], [1.2, 16.7], [1.2, 29.5, 0.1], [0.5, 30.4, 0.3], [0.32, 31], [0, 31.1]], copper(c)), 1.3, { at: [-15.5, 0] }),
  torus(0.95, 0.16, { at: [12.8, 2.6, 0], rotate: [90, 0, 0], material: fitting(c) }),
  c.mark && words(c.mark, 0.55, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [8.4, 2.505, 0] }),
]);
export const dippingCan = (c) => group([
  turned([[0, 0], [1.9, 0, 0.1], [1.9, 3.4, 0.05], [2.05, 3.45, 0.06], [2.05, 3.6, 0.06], [1.8, 3.6, 0.05], [1.76, 0.3], [0, 0.3]], copper(c)),
  torus(2.0, 0.09, { at: [0, 3.5, 0], rotate: [0, 0, 18], material: copper(c) }),
  ...Array.from({ length: 12 }, (_, i) => torus(0.26, 0.06, { at: [0.9 * Math.cos(i * 0.8), 0.5 + i * 0.07, 0.9 * Math.sin(i * 0.8)], rotate: [i % 2 ? 70 : 10, i * 40, 0], material: nickel(c) ? 'Nickel(0.2)' : 'Brass(0.5)' })),
]);
export function sampleBottle(c) {
  const odd = c.model === 'chemists-bottle';
  const round = odd || nickel(c);
  const full = /third full/.test(c.note) && c.index === 0;
  const shape = round
    ? [[[0, 0], [1.55, 0, 0.2], [1.55, 4.6, 0.7], [0.7, 5.5, 0.3], [0.7, 6.0, 0.1], [0.92, 6.05, 0.08], [0.92, 6.3, 0.08]], [[0, 0.3], [1.35, 0.3, 0.2], [1.35, 4.5, 0.6], [0.48, 5.4, 0.3], [0.48, 6.3, 0.05]]]
    : [[[0, 0], [1.6, 0, 0.2], [1.6, 4.7, 0.3], [1.3, 5.1, 0.3], [0.7, 5.5, 0.3], [0.7, 6.0, 0.1], [0.92, 6.05, 0.08], [0.92, 6.3, 0.08]], [[0, 0.3], [1.4, 0.3, 0.2], [1.4, 4.6, 0.4], [0.48, 5.4, 0.3], [0.48, 6.3, 0.05]]];
  return group([
    turned([...shape[0], ...[...shape[1]].reverse()], 'Flint(0)', round ? undefined : (y) => Math.min(1, Math.max(0, (5.3 - y) / 0.5))),
    full && block([-1.3, 0.35, -1.3], [1.3, 2.1, 1.3], 0.1, 'texture { pigment { rgb <0.42,0.24,0.06> } finish { diffuse 0.6 specular 0.5 roughness 0.01 } }'),
    odd || full ? turned([[0, 5.4], [0.46, 5.4], [0.52, 6.9, 0.06], [0, 6.95]], 'Cork(0)') : nickel(c) && turned([[0, 5.4], [0.44, 5.4], [0.5, 6.3], [0.42, 6.45, 0.06], [0.8, 6.7, 0.1], [0.8, 6.95, 0.1], [0, 7]], 'Flint(0)'),
    c.variant === 'gauging-distillery' && !odd && words(c.index < 4 ? 'W' : 'S', 0.6, { font: 'bold', material: 'PaperWhite(0)', depth: 0.02, at: [0, 5.15, -1.05] }),
  ]);
}
export const cork = () => group([turned([[0, 0], [0.55, 0, 0.05], [0.66, 1.6, 0.06], [0, 1.62]], 'Cork(0)'), words('BD', 0.34, { font: 'bold', material: 'Cut(0)', depth: 0.02, at: [0, 1.62, 0] })]);
export const funnel = (c) => group([turned([[0.3, 0], [0.4, 0, 0.03], [0.5, 2.4, 0.1], [2.75, 4.6, 0.1], [2.85, 4.65, 0.05], [2.85, 4.85, 0.05], [2.68, 4.8], [0.4, 2.5, 0.1], [0.3, 0]], c.variant === 'gauging-revised' ? 'Aluminium(0.2)' : copper(c))]);
export const testCup = (c) => {
  const m = c.state === 'unverified' ? 'Platinum(0)' : `Pewter(${c.wear})`;
  return group([turned([[0, 0], [1.5, 0, 0.3], [2.2, 1.3, 0.4], [2.32, 1.5, 0.05], [2.2, 1.52, 0.05], [1.4, 0.2, 0.3], [0, 0.14]], m), `object { ${cut(slab(roundedOutline(2.0, 1.7, 0.7), 0.16), [cylinder([0.3, -1, 0], [0.3, 1, 0], 0.28)], m)} translate <3.1,1.34,0> }`, c.mark && words(c.mark, 0.36, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [2.75, 1.5, 0], rotate: [0, 90, 0] })]);
};
export const boatLamp = (c) => {
  const m = `Brass(${c.wear})`;
  const mesh = 'texture { pigment { hexagon rgbt <0.25,0.22,0.16,0.1>, rgbt <0.12,0.10,0.07,0.25>, rgbt <0.2,0.17,0.12,0.5> scale 0.07 rotate 90*x } finish { diffuse 0.6 specular 0.3 } }';
  const hole = /holed/.test(c.note);
  return group([
    turned([[0, 0], [3, 0, 0.3], [3, 2.6, 0.5], [2.2, 3.2, 0.3], [2.2, 3.5, 0.1], [0, 3.5]], m),
    cut(turned([[0, 3.4], [1.9, 3.4], [1.8, 7.4, 0.5], [0, 7.5]]), hole ? [sphere([0.9, 7.3, -0.9], 0.7)] : [], mesh),
    ...[0, 120, 240].map((a) => cylinder([2.2 * Math.cos((a * Math.PI) / 180), 3.4, 2.2 * Math.sin((a * Math.PI) / 180)], [1.9 * Math.cos((a * Math.PI) / 180), 7.6, 1.9 * Math.sin((a * Math.PI) / 180)], 0.12, m)),
    torus(1.9, 0.16, { at: [0, 7.6, 0], material: m }),
    wire(smooth([[-2, 7.6, 0], [-1.7, 8.6, 0.5], [0, 9, 0.9], [1.7, 8.6, 0.5], [2, 7.6, 0]], 8), 0.12, m),
  ]);
};
export const lampOil = () => group([block([-3, 0, -1.9], [3, 4.4, 1.9], 0.3, 'Tin(0.25)'), group([turned([[0, 4.3], [0.8, 4.4, 0.05], [0.8, 5.1, 0.1], [0, 5.15]], 'Lead(0.2)')], { at: [-1.6, 0, 0] }), words('OIL', 1.0, { font: 'sans', material: 'Ink(0)', depth: 0.01, at: [1.3, 4.405, 0] })]);
export const decantingTap = () => group([lying(turned([[0, 0], [0.1, 0.1], [0.5, 2.2, 0.2], [0.7, 2.4, 0.1], [0.7, 4.6, 0.1], [0.45, 4.8], [0.45, 6.6, 0.1], [0, 6.6]], 'Gilt(0)'), 0.8, { at: [-3.3, 0] }), cylinder([0.3, 0.6, 0], [0.3, 2.1, 0], 0.4, 'Gilt(0)'), block([-0.9, 2.0, -0.24], [1.5, 2.4, 0.24], 0.15, 'Gilt(0)'), cylinder([2.4, 0.6, 0], [2.4, 0.6, -1.7], 0.4, 'Gilt(0)')]);
export const plumbLine = (c) => group([
  lying(turned([[0, 0], [0.12, 0.1], [1.1, 2.6, 0.4], [1.1, 3.4, 0.2], [0.5, 3.8, 0.1], [0.5, 4.3, 0.1], [0, 4.3]], fitting(c)), 1.1, { at: [-4, 0] }),
  group([turned([[0, 0], [1.5, 0, 0.1], [1.5, 0.3, 0.1], [0.9, 0.5, 0.1], [1.2, 1.0, 0.4], [0.9, 1.6, 0.1], [1.5, 1.8, 0.1], [1.5, 2.1, 0.1], [0, 2.1]], 'Boxwood(0.4)')], { at: [2.6, 0, 0] }),
  torus(1.05, 0.32, { at: [2.6, 1.05, 0], material: 'Webbing(0)' }),
  wire(smooth([[0.3, 1.1, 0], [1, 1.2, 0.8], [1.7, 1.1, 0.5]], 6), 0.08, 'Webbing(0)'),
]);
export const tape = (c) => {
  const broken = /Broken/.test(c.note);
  return group([
    turned([[0, 0], [2.8, 0, 0.3], [2.9, 0.8, 0.3], [2.8, 1.6, 0.3], [0, 1.65]], nickel(c) ? 'LeatherDark(0.2)' : `Bridle(${c.wear})`),
    turned([[0, 1.6], [1.0, 1.65, 0.06], [1.0, 1.8, 0.06], [0, 1.85]], 'Brass(0.4)'),
    block([-0.25, 1.8, -0.2], [1.9, 1.95, 0.2], 0.06, 'Brass(0.4)'),
    broken && block([2.6, 0.5, -0.5], [4.4, 0.56, 0.4], 0, 'Paper(0.6)'),
  ]);
};
export const chalk = (c) => block([-3.8, 0, -0.48], [3.4 + 0.4 * Math.sin(c.index * 3), 0.95, 0.48], 0.08, c.index % 4 < 2 ? 'PaperWhite(0)' : 'PaperOf(rgb <0.46,0.10,0.07>, 0.3)');
export const timberScribe = (c) => group([lying(turned([[0, 0], [0.7, 0, 0.2], [0.62, 2, 0.8], [0.75, 4.5, 0.8], [0.5, 6, 0.2], [0, 6]], 'Boxwood(0.5)'), 0.75, { at: [-6, 0] }), ribbon(smoothFlat([[0, 0], [3, 0.05], [5.2, 0.1], [6.1, 0.7], [5.6, 1.2]]), (t) => 0.55 - 0.25 * t, 0.5, steel(c), 0.5), lying(turned([[0, 0], [0.62, 0, 0.05], [0.62, 0.9, 0.05], [0, 0.9]], fitting(c)), 0.75, { at: [-0.4, 0] }), ribbon(smoothFlat([[1, -0.1], [2.6, -0.8], [4.6, -1.0]]), 0.3, 0.4, steel(c), 0.5)]);
export const sealPliers = (c) => {
  const m = steel(c);
  const handle = (s) => ribbon(smoothFlat([[1.4, 0.3 * s], [-0.6, 1.5 * s], [-4, 2.1 * s], [-8.6, 1.5 * s]]), (t) => 1.1 - 0.35 * t, 0.9, m);
  return group([
    handle(1), handle(-1), cylinder([1.2, 0, 0], [1.2, 1.25, 0], 1.15, m), cylinder([1.2, 1.2, 0], [1.2, 1.4, 0], 0.5, m),
    ...[1, -1].map((s) => ribbon(smoothFlat([[1.2, 0.2 * s], [3.4, 1.5 * s], [6.4, 1.2 * s], [7.6, 0.75 * s]]), (t) => 1.5 - 0.3 * t, 1.1, m)),
    !/drawn/.test(c.note) && block([5.6, 0.15, -0.75], [7.2, 1.0, 0.75], 0.08, 'Brass(0.4)'),
    c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-5, 0.905, 1.95] }),
  ]);
};
/** Seals lie heaped in their tin. */
export const leadSeal = (c) => {
  const a = c.index * 2.4;
  const r = 1.65 * Math.sqrt(((c.index % 8) + 0.3) / 8);
  return group([cut(turned([[0, 0], [0.62, 0, 0.06], [0.62, 0.26, 0.06], [0, 0.26]]), [-0.22, 0.22].map((x) => cylinder([x, -1, 0], [x, 1, 0], 0.08)), 'Lead(0.3)')], { rotate: [12 * Math.sin(a * 3), c.index * 50, 9 * Math.cos(a * 2)], at: [r * Math.cos(a), 0.25 + Math.floor(c.index / 8) * 0.3, r * Math.sin(a)] });
};
export const sealTin = () => group([turned([[0, 0], [2.4, 0, 0.1], [2.4, 1.7, 0.05], [2.3, 1.72, 0.03], [2.28, 0.15], [0, 0.15]], 'Tin(0.5)')]);
export const sealWire = (c) => (nickel(c) ? group([block([-2, 0, -1.5], [2, 0.1, 1.5], 0, 'Buff(0.3)'), ...Array.from({ length: 7 }, (_, i) => cylinder([-0.9 + i * 0.3, 0.16, -1.55], [-0.9 + i * 0.3, 0.16, 1.55], 0.1, 'Copper(0.3)'))]) : group([turned([[0, 0], [1.7, 0, 0.1], [1.7, 0.3, 0.1], [0.8, 0.4], [0.8, 1.7], [1.7, 1.8, 0.1], [1.7, 2.1, 0.1], [0, 2.1]], 'Boxwood(0.4)'), ...Array.from({ length: 7 }, (_, i) => torus(1.15, 0.13, { at: [0, 0.55 + i * 0.18, 0], rotate: [3 * Math.sin(i), 0, 0], material: c.variant === 'gauging-coast' ? 'Copper(0.3)' : 'Tin(0.3)' }))]));
export const punchBlock = (c) => cut(block([-5.4, 0, -1.1], [5.4, 1.6, 1.1], 0.1), Array.from({ length: 10 }, (_, i) => cylinder([-4.75 + i * 1.055, 0.4, 0], [-4.75 + i * 1.055, 2, 0], 0.4)), c.variant === 'gauging-coast' ? 'Brass(0.4)' : 'Mahogany(0.2, 3)');
export const datePunch = (c) => group([cylinder([0, 0.4, 0], [0, 2.8, 0], 0.36, steel(c)), words(String((c.index + 1) % 10), 0.36, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [0, 2.8, 0] })], { at: [-4.75 + c.index * 1.055, 0, 0] });
export const sealingWax = (c) => group([block([-4.6, 0, -0.5], [4.6 - 1.4 * (c.index % 2), 0.9, 0.5], 0.16, 'Wax(rgb <0.36,0.022,0.016>)'), block([2.6, 0.88, -0.3], [3.2, 0.92, 0.3], 0, 'Wax(rgb <0.25,0.015,0.01>)')]);
export const dateStamp = () => group([block([-2.2, 0, -1], [2.2, 1.6, 1], 0.15, 'Nickel(0.3)'), lying(turned([[0, 0], [0.6, 0, 0.1], [0.5, 2, 0.5], [0.7, 4.4, 0.4], [0, 4.6]], 'Japanned(0)'), 0.8, { at: [2, 0] }), ...[-1, 0, 1].map((z) => cylinder([-1.2, 1.3, z * 0.6 - 0.2], [-1.2, 1.3, z * 0.6 + 0.2], 0.75, 'Ebonite(0)'))]);
export const inkPad = () => group([block([-3.4, 0, -1.3], [3.4, 0.8, 1.3], 0.1, 'Japanned(0)'), block([-3.1, 0.7, -1.05], [3.1, 0.86, 1.05], 0.06, 'texture { pigment { rgb <0.07,0.02,0.14> } normal { granite 0.3 scale 0.1 } finish { diffuse 0.8 } }')]);
export const stillLock = (c) => group([block([-2.2, 0, -2.4], [2.2, 1.3, 1.6], 0.3, `Iron(${0.3 + c.wear * 0.5})`), ribbon(smoothFlat([[-1.4, 1.2], [-1.4, 2.8], [-0.8, 3.7], [0.8, 3.7], [1.4, 2.8], [1.4, 1.2]]), 0.6, 0.6, 'Iron(0.4)', 0.35), block([-1.3, 1.28, -1.7], [1.3, 1.34, 0.3], 0, 'Paper(0.3)'), words('7.206', 0.5, { material: 'Ink(0)', depth: 0.006, at: [0, 1.345, -0.7] })]);
export const key = (c) => {
  const m = c.variant === 'gauging-coast' ? 'Brass(0.4)' : 'Steel(0.4)';
  return group([torus(0.62, 0.14, { at: [-1.55, 0.2, 0], material: m }), cylinder([-0.95, 0.2, 0], [1.9, 0.2, 0], 0.2, m), block([1.1, 0.12, -0.8], [1.8, 0.28, 0], 0.02, m)]);
};
