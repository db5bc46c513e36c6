import { block, cone, cut, cylinder, group, lying, ribbon, slab, roundedOutline, sheet, smooth, smoothFlat, sphere, strap, torus, turned, wire, words } from '../engine/shapes.mjs';

const brass = (c) => `Brass(${0.05 + c.wear * 0.7})`;
const steel = (c) => `Steel(${0.2 + c.wear * 0.75})`;

export const key = (c) => group([cut(block([-0.5, 0, -0.5], [0.5, 0.9, 0.5], 0.05), [], steel(c)), cylinder([0, 0.4, 0.4], [0, 0.4, 3.2], 0.26, steel(c)), cylinder([-1.4, 0.4, 3.4], [1.4, 0.4, 3.4], 0.3, steel(c))]);
export const lineClamp = (c) => group([ribbon(smoothFlat([[1.8, -1.2], [-0.6, -1.2], [-1.7, 0], [-0.6, 1.2], [1.8, 1.2]]), 0.6, 1.0, brass(c)), cylinder([1.2, 0.5, -2.6], [1.2, 0.5, 0.6], 0.3, brass(c)), group([turned([[0, 0], [0.9, 0, 0.1], [0.9, 0.5, 0.1], [0, 0.5]], brass(c))], { rotate: [90, 0, 0], at: [1.2,0.9,-2.7] }), c.mark && words(c.mark, 0.4, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-1.5, 1.005, 0], rotate: [0, 90, 0] })]);
export const earthPin = (c) => group([wire(smooth([[-14, 0.5, 0], [-8, 0.5, 0.05], [-1, 0.5, /Bent|worn/.test(c.note + c.part.condition) ? 0.9 : 0.05], [7, 0.5, 0.2], [11.5, 0.5, -0.2]], 8), 0.5, `Zinc(${c.wear})`), cone([-15.6, 0.5, 0], 0.05, [-13.9, 0.5, 0], 0.5, `Zinc(${c.wear})`), sphere([11.6, 0.55, -0.2], 0.85, `Zinc(${c.wear})`), block([11.2, 0.9, -1.5], [12.0, 1.3, 1.1], 0.15, brass(c))]);
export const pliers = (c) => {
  const m = steel(c);
  const handle = (s) => ribbon(smoothFlat([[2.4, 0.3 * s], [0.4, 1.2 * s], [-4, 1.75 * s], [-10, 1.35 * s]]), (t) => 1.05 - 0.25 * t, 0.85, m);
  return group([handle(1), handle(-1), cylinder([2.4, 0, 0], [2.4, 1.1, 0], 1.25, m), cylinder([2.4, 1.0, 0], [2.4, 1.25, 0], 0.5, m), ...[1, -1].map((s) => slab([[2.6, 0.06 * s], [2.8, 1.25 * s], [5.2, 1.15 * s], [7.4, 0.6 * s], [7.4, 0.05 * s]], 0.95, m)), c.mark && words(`T.S.V. ${c.mark}`, 0.42, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-4.6, 0.855, 1.72], rotate: [0, 2, 0] })]);
};
export const drawTongs = (c) => {
  const m = steel(c);
  return group([
    ...[1, -1].map((s) => group([ribbon(smoothFlat([[-9.6, 2.0 * s], [-5, 1.6 * s], [-1, 0.5 * s]]), 0.9, 0.9), ribbon(smoothFlat([[-1, -0.5 * s], [3, -1.3 * s], [6.2, -0.9 * s]]), (t) => 1.1 - 0.3 * t, 0.9)], { material: m })),
    cylinder([-0.6, 0, 0], [-0.6, 1.2, 0], 0.8, m),
    cut(cylinder([-8.2, 0.5, 0], [-8.2, 0.95, 0], 1.6), Array.from({ length: 18 }, (_, i) => cylinder([-8.2 + 1.68 * Math.cos(i * 0.349), 0, 1.68 * Math.sin(i * 0.349)], [-8.2 + 1.68 * Math.cos(i * 0.349), 2, 1.68 * Math.sin(i * 0.349)], 0.2)), brass(c)),
    block([-8.55, 0.9, -0.35], [-7.85, 1.6, 0.35], 0.04, m),
    c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [3.2, 0.905, 1.15] }),
  ]);
};
export const drawKey = (c) => group([cylinder([0, 0.4, -1.8], [0, 0.4, 1.8], 0.34, steel(c)), cylinder([0, 0.4, 1.8], [4.6, 0.4, 1.8], 0.34, steel(c)), cylinder([4.6, 0.4, 1.8], [4.6, 2.0, 1.8], 0.45, 'Boxwood(0.5)'), block([-0.5, 0, -2.8], [0.5, 0.9, -1.7], 0.06, steel(c))]);
export const cableGrip = (c) => group([...[1, -1].map((s) => cut(block([-4.5, 0, s > 0 ? 0.1 : -2.4], [4.5, 1.6, s > 0 ? 2.4 : -0.1], 0.3), [cylinder([-6, 0.8, 0], [6, 0.8, 0], 1.2)], 'Brass(0.35)')), ...[-3, 3].map((x) => group([cylinder([x, 0.8, -3], [x, 0.8, 3], 0.35, 'Steel(0.4)'), cylinder([x, 0.8, -3.2], [x, 0.8, -2.5], 0.75, 'Steel(0.4)')])), c.mark && words(c.mark, 0.7, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [0, 1.605, 1.6] })]);
export const armourSaw = (c) => group([slab([[-10, -0.9], [4, -1.3], [4, 1.1], [-10, 0.6]], 0.12, steel(c), 0.5), block([-10, 0.3, 0.5], [4, 0.95, 1.0], 0.06, brass(c)), group([cut(slab(roundedOutline(6.4, 4.2, 1.4), 1.4), [slab(roundedOutline(3.6, 1.5, 0.7), 4, '', -1)], `Boxwood(${c.wear})`)], { at: [6.6, 0, 0] })]);
export const wireGauge = (c) => cut(cylinder([0, 0, 0], [0, 0.3, 0], 2.7), [cylinder([0, -1, 0], [0, 1, 0], 0.6), ...Array.from({ length: 14 }, (_, i) => group([block([2.05, -1, -0.05 - 0.012 * i], [3, 1, 0.05 + 0.012 * i], 0), cylinder([2.05, -1, 0], [2.05, 1, 0], 0.14 + 0.008 * i)], { rotate: [0, i * 25.7, 0] }))], steel(c));
export const knife = (c) => group([lying(turned([[0, 0], [0.75, 0.05, 0.3], [0.8, 2, 1], [0.68, 5, 1], [0.78, 7.6, 0.4], [0, 7.8]], 'Boxwood(0.6)'), 0.8, { at: [-7, 0] }), slab(/Point broken/.test(c.note) ? [[0.7, -0.5], [4.4, -0.62], [4.2, 0.3], [0.7, 0.5]] : [[0.7, -0.5], [4.2, -0.7], [6.0, 0.2], [6.5, 1.3], [5.2, 0.6], [0.7, 0.5]], 0.14, steel(c), 0.72)]);
export const screwdriver = (c) =>
  c.index
    ? lying(turned([[0, 0], [0.42, 0, 0.1], [0.42, 3, 0.2], [0.16, 3.4], [0.16, 8, 0.02], [0, 8]], steel(c)), 0.42, { at: [-4, 0] })
    : group([
        lying(turned([[0, 0], [0.9, 0.1, 0.4], [1.1, 2, 1], [0.8, 4.6, 1], [0.95, 6.4, 0.3], [0, 6.6]], 'Boxwood(0.5)'), 1.0, { at: [-8, 0] }),
        lying(turned([[0, 6.4], [0.5, 6.5, 0.1], [0.5, 7.4], [0.3, 7.5], [0.3, 14.4], [0, 14.4]], steel(c)), 1.0, { at: [-8, 0] }),
        block([6.0, 0.78, -0.55], [7.2, 1.22, 0.55], 0.05, steel(c)),
      ]);
export const gloves = () => group([0, 1].map((k) => `object { ${sheet(-3.4, -7, 3.4, 7, 40, 60, (x, z) => {
  const palm = z < 1.5 ? 1 : 0;
  const finger = z >= 1.5 ? Math.max(0, Math.cos(((x + 3.4) / 6.8) * 8 * Math.PI) * 0.5 + 0.5) ** 0.5 : 1;
  const e = Math.max(0, 1 - Math.abs(x / 3.4) ** 6) * Math.max(0, 1 - Math.abs(z / 7) ** 10);
  return -0.05 + e * (palm ? 0.7 : 0.75 * finger) + 0.1 * e * Math.sin(x * 1.6 + z * 0.9);
}, 'texture { pigment { wrinkles color_map { [0 rgb <0.26,0.055,0.035>] [1 rgb <0.16,0.03,0.02>] } scale 2 } normal { wrinkles 0.3 scale 0.6 } finish { diffuse 0.8 specular 0.15 roughness 0.06 } }')} rotate ${k ? 16 : -6}*y translate <${k * 3.6},${k * 0.25},${k * -0.6}> }`));
export const blowLamp = (c) => group([turned([[0, 0], [3.1, 0, 0.4], [3.3, 1.6, 0.8], [3.1, 3.6, 0.8], [1.2, 4.7, 0.4], [1.0, 5.6, 0.1], [0, 5.6]], brass(c)), cylinder([0, 6.0, -0.6], [0, 6.6, 3.4], 0.95, brass(c)), cylinder([0, 6.58, 3.3], [0, 6.62, 3.5], 0.75, 'Ink(0)'), group([turned([[0, 4.2], [0.7, 4.2, 0.05], [0.7, 5.2, 0.1], [0, 5.2]], brass(c))], { at: [-1.9,0,0.4] }), wire(smooth([[2.6, 4.2, -0.6], [4.6, 5.2, -1.4], [5.2, 3.4, -2], [4.6, 1.2, -1.8], [3.0, 0.9, -1]], 8), 0.3, 'Boxwood(0.5)'), c.mark && words(c.mark, 0.6, { font: 'bold', material: 'Ink(0)', depth: 0.03, at: [-0.3, 4.3, -1.7], rotate: [-22, 0, 0] })]);
export const heatCard = (c) => group([block([-3.6, 0, -2.6], [3.6, 0.2, 2.6], 0.03, 'Tin(0.5)'), block([-3.4, 0.18, -2.4], [3.4, 0.32, 2.4], 0.02, 'Millboard(0)'), c.packed.includes('bag') && 'box { <-4,-0.02,-3>, <4,0.5,3> texture { pigment { rgbt <0.85,0.87,0.88,0.86> } normal { wrinkles 0.8 scale 2 } finish { diffuse 0.22 specular 0.3 roughness 0.02 reflection { 0.03, 0.2 } } } no_shadow no_radiosity }']);
export const copperBit = (c) => group([lying(turned([[0, 0], [0.9, 0.1, 0.3], [1.0, 3, 1], [0.8, 8, 0.5], [0, 8.2]], 'AshWood(0.6)'), 1.0, { at: [-11, 0] }), cylinder([-3.2, 1, 0], [5, 1, 0], 0.32, `Iron(${0.4})`), slab([[4.4, -0.9], [8.6, -0.9], [9.2, 1.9], [7.0, 2.6], [4.4, 0.9]], 1.2, `Copper(${0.2 + c.wear * 0.25})`, 0.4)]);
export const solder = (c) => `object { ${slab([[-9.6, -0.5], [9.2 - 3 * (c.index % 2), -0.5], [9.2 - 3 * (c.index % 2), 0.5], [-9.6, 0.5]], 0.6, 'Tin(0.2)')} }`;
export const fluxBottle = (c) => (c.features['battery-kind'] === 'dry-cells' && c.features.resistances === 'dials' ? group([turned([[0, 0], [2.2, 0, 0.15], [2.2, 1.4, 0.15], [0, 1.45]], 'Tin(0.4)'), words('RESIN', 0.6, { font: 'sans', material: 'Ink(0)', depth: 0.006, at: [0, 1.46, 0] })]) : group([turned([[0, 0], [2.0, 0, 0.1], [2.0, 2.6, 0.05], [1.9, 2.62], [1.88, 0.1], [0, 0.1]], /eaten/.test(c.note) ? 'Iron(1)' : 'Tin(0.5)'), turned([[0, 0.2], [1.6, 0.2, 0.2], [1.6, 3.6, 0.5], [0.7, 4.4, 0.2], [0.7, 5, 0.05], [0.5, 5], [0.5, 4.2], [1.4, 3.4, 0.3], [1.4, 0.4], [0, 0.4]], 'Flint(0)'), turned([[0, 4.4], [0.95, 4.6, 0.1], [0.95, 5.6, 0.2], [0, 5.7]], 'Lead(0.5)'), c.packed.includes('bag') && `object { ${turned([[2.3, 0.05], [2.4, 3, 0.6], [1.9, 5.4, 0.8], [0.5, 6.6, 0.3], [0.9, 7.4]])} texture { pigment { rgbt <0.8,0.82,0.82,0.82> } normal { wrinkles 0.8 scale 0.9 } finish { diffuse 0.3 specular 0.4 roughness 0.02 reflection { 0.03, 0.2 } } } no_shadow no_radiosity }`]));
/** Four of each of three sizes. */
export const jointSleeve = (c) => {
  const k = Math.floor(c.index / 4);
  const r = 0.5 - k * 0.1;
  return lying(cut(cylinder([0, 0, 0], [0, 4.6 - k * 0.6, 0], r), [cylinder([0, -1, 0], [0, 6, 0], r * 0.78)], `Copper(${0.25})`), r, { at: [-2.2, 0] });
};
export const tape = () => group([turned([[0, 0], [2.3, 0, 0.15], [2.3, 1.6, 0.1], [2.36, 1.62, 0.06], [2.36, 2.0, 0.15], [0, 2.05]], 'texture { pigment { rgb <0.30,0.045,0.03> } finish { diffuse 0.75 specular 0.35 roughness 0.03 reflection { 0.0, 0.1 } } }'), slab([[-0.28, -1.2], [0.28, -1.2], [0.18, 0.6], [-0.18, 0.6]], 0.02, 'PaperWhite(0)', 2.04), block([-0.22, 2.04, 0.6], [0.22, 2.065, 1.0], 0, 'Gilt(0)'), slab([[-1.3, -1.4], [1.3, -1.4], [1.1, -1.15], [-1.1, -1.15]], 0.02, 'Ink(0)', 2.04)]);
export const springTin = (c) => group([block([-2.4, 0, -1.6], [2.4, 0.8, 1.6], 0.25, c.state === 'unverified' ? 'Iron(1)' : 'Tin(0.4)'), block([-2.45, 0.5, -1.65], [2.45, 0.95, 1.65], 0.25, c.state === 'unverified' ? 'Iron(1)' : 'Tin(0.5)')]);
export const spareSpring = (c) => (c.state === 'unverified' ? '' : group([slab([[-0.9, -0.9], [0.9, -0.9], [0.9, 0.9], [-0.9, 0.9]], 0.03, 'PaperWhite(0)'), wire(Array.from({ length: 40 }, (_, i) => [(0.1 + i * 0.014) * Math.cos(i * 0.6), 0.06, (0.1 + i * 0.014) * Math.sin(i * 0.6)]), 0.022, 'Blued(0)')], { rotate: [0, 20 * c.index, 0] }));
export const spareFibre = (c) => group([slab([[-1.6, -0.4], [1.6, -0.4], [1.6, 0.4], [-1.6, 0.4]], 0.05, 'PaperWhite(0)'), ...[-0.8, 0, 0.8].map((x) => block([x - 0.1, -0.01, -0.43], [x + 0.1, 0.07, 0.43], 0, 'PaperOf(rgb <0.75,0.72,0.6>, 0)'))]);
export const cellLink = (c) => cut(slab(roundedOutline(5.6, 0.9, 0.3), 0.1), [[-2.2, 0], [2.2, 0]].map(([x, z]) => cylinder([x, -1, z], [x, 1, z], 0.2)), /worn/.test(String(c.part.condition)) ? 'texture { pigment { granite color_map { [0 rgb <0.30,0.13,0.06>] [0.5 rgb <0.2,0.16,0.1>] [0.7 rgb <0.10,0.30,0.20>] [1 rgb <0.12,0.33,0.24>] } scale 0.5 } finish { diffuse 0.7 } }' : 'Copper(0.35)');
export const excitingSalt = () => group([turned([[0, 0], [2, 0, 0.1], [2, 3.4, 0.1], [0, 3.4]], 'Tin(0.4)'), words('SALT', 0.8, { font: 'sans', material: 'Ink(0)', depth: 0.006, at: [0, 3.41, 0] })]);
export const mercuryPhial = () => turned([[0, 0], [1.1, 0, 0.2], [1.1, 4, 0.3], [0, 4.4]], 'Boxwood(0.4)');
export const dryingBox = (c) => group([block([-3.6, 0, -2.6], [3.6, 2.4, 2.6], 0.2, 'Japanned(0)'), block([-3.1, 2.38, -2.1], [3.1, 2.44, 2.1], 0, 'texture { pigment { hexagon rgb <0.4,0.36,0.26>, rgb <0.3,0.27,0.2>, rgb <0.05,0.05,0.05> scale 0.12 } finish { diffuse 0.7 specular 0.2 } }')]);
export const dryingLime = (c) => group([turned([[0, 0], [2.3, 0, 0.1], [2.3, 3.6, 0.15], [1.8, 3.9, 0.5], [0, 4.3]], `Tin(${0.5 + c.wear * 0.5})`), 'box { <-3.2,-0.02,-3.2>, <3.2,4.7,3.2> texture { pigment { rgbt <0.85,0.88,0.9,0.9> } finish { diffuse 0.15 specular 0.5 roughness 0.01 reflection { 0.03, 0.2 } } } no_shadow no_radiosity }']);
export const signalKey = (c) => group([cylinder([-5, 0.5, 0], [4, 0.5, 0], 0.45, steel(c)), cylinder([-5, 0.5, -3], [-5, 0.5, 3], 0.5, steel(c)), block([3.6, 0, -0.8], [5.4, 1.0, 0.8], 0.1, steel(c)), c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [0, 0.955, 0] })]);
export const relayGauge = (c) => group([slab(roundedOutline(8.6, 0.9, 0.4), 0.1, 'Steel(0.1)')], { rotate: [0, (c.index - 1.5) * 13, 0], at: [0.6, c.index * 0.12, 0] });
export const gaugeCheek = () => group([cylinder([-3.2, 0, 0], [-3.2, 0.8, 0], 0.6, 'Brass(0.2)'), block([-4.4, 0, -0.6], [-0.6, 0.12, 0.6], 0.04, 'Brass(0.2)')]);
export const inspectionLamp = () => lying(turned([[0, 0], [1.6, 0, 0.2], [1.6, 12, 0.2], [2.4, 13, 0.3], [2.4, 14.4, 0.1], [0, 14.5]], 'Nickel(0.3)'), 2.4, { at: [-7, 0] });

/** Jars with zinc and carbon, or pasteboard. */
export function cell(c) {
  const dry = c.features['battery-kind'] === 'dry-cells' || /dry|weep|leak/i.test(c.note);
  if (dry) return group([block([-3, 0, -3], [3, 9, 3], 0.15, 'PaperOf(rgb <0.42,0.30,0.16>, 0.5)'), block([-2.8, 8.9, -2.8], [2.8, 9.15, 2.8], 0.1, 'Wax(rgb <0.02,0.018,0.016>)'), turned([[0, 9], [0.5, 9], [0.5, 10, 0.1], [0, 10]], brass(c)), sphere([1.4, 9.1, -1.2], 0.9, 'texture { pigment { rgb <0.62,0.60,0.54> } normal { granite 0.8 scale 0.3 } finish { diffuse 0.85 } }')]);
  const crust = /Crust/.test(c.note);
  return group([
    turned([[0, 0], [3.0, 0, 0.3], [3.0, 8.8, 0.15], [2.75, 8.8, 0.15], [2.75, 0.4], [0, 0.4]], 'Flint(0)', () => 1),
    cylinder([1.5, 0.4, 1.4], [1.5, 10, 1.4], 0.5, 'Zinc(0.8)'),
    block([-2, 0.4, -1.8], [-0.4, 9.8, -0.8], 0.06, 'CharcoalPressed(0)'),
    group([turned([[0, 9.6], [0.4, 9.6], [0.4, 10.6, 0.1], [0, 10.6]], brass(c))], { at: [-1.2,0,-1.3] }),
    crust && group(Array.from({ length: 34 }, (_, i) => sphere([2.9 * Math.cos(i * 0.62), 8.75 + 0.2 * Math.sin(i * 3), 2.9 * Math.sin(i * 0.62)], 0.24 + 0.14 * Math.sin(i * 2.3)), ), { material: 'texture { pigment { rgb <0.70,0.70,0.67> } normal { granite 0.8 scale 0.25 } finish { diffuse 0.85 } }' }),
  ]);
}
/** The crate stands by the case, open; its divisions take the cells. */
export function batteryCrate(c) {
  const m = 'Deal(0.3, 2)';
  const stained = /Stained/.test(c.note);
  const long = (z) => block([-11.4, 0, z - 0.35], [11.4, 7.4, z + 0.35], 0.06, m);
  const cross = (x) => `object { ${block([-7.6, 0, -0.35], [7.6, 7.4, 0.35], 0.06, m)} rotate 90*y translate ${x}*x }`;
  return group([
    long(-7.4), long(7.4), long(0), cross(-11.2), cross(11.2), cross(-3.7), cross(3.7), block([-11.2, 0, -7.4], [11.2, 0.6, 7.4], 0, m),
    stained && block([-10.8, 0.58, -7], [-4, 0.64, 7], 0, 'texture { pigment { granite color_map { [0 rgb <0.62,0.60,0.54>] [1 rgb <0.5,0.42,0.3>] } scale 1.2 } finish { diffuse 0.85 } }'),
    strap([[-11.8, 3, 0], [-12.4, 6, 0], [-12.2, 8.4, 0]], 2, 0.25, 'Bridle(0.5)'), strap([[11.8, 3, 0], [12.4, 6, 0], [12.2, 8.4, 0]], 2, 0.25, 'Bridle(0.5)'),
  ]);
}
/** Rolled up on its edge, the buckle outermost. */
export const carryingStrap = (c) => {
  const roll = Array.from({ length: 130 }, (_, i) => {
    const a = (i / 129) * 9.4 * Math.PI;
    const r = 1.8 + a * 0.125 + 0.12 * Math.sin(a * 0.53);
    return [1.15 * r * Math.cos(a), 0.9 * r * Math.sin(a)];
  });
  const [ex, ez] = roll.at(-1);
  const tail = smoothFlat([[ex, ez], [ex - 0.4, ez + 2], [ex + 1.4, ez + 4], [ex + 4.4, ez + 4.6]], 8).slice(1);
  return group([ribbon([...roll, ...tail], 0.34, 3.4, `Bridle(${c.wear})`), group([ribbon([[-1.9, -1.7], [-1.9, 1.7], [1.9, 1.7], [1.9, -1.7], [-1.9, -1.7]], 0.36, 0.36), cylinder([-1.9, 0.2, 0], [2, 0.2, 0], 0.15)], { material: 'Brass(0.4)', rotate: [-80, 0, 0], at: [ex + 6.2, 1.7, ez + 4.6] })]);
};
