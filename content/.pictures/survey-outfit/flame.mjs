import { block, cone, cut, cylinder, group, ribbon, slab, roundedOutline, smooth, sphere, torus, turned, wire } from '../engine/shapes.mjs';

const oval = (points, m) => `object { ${turned(points, m)} scale <1.28,1,0.92> }`;

/** Font with its cap chained beside it, so that the burner can be seen. */
export function lamp(c) {
  const round = c.features['lamp-burner'] === 'round-wick' || ((c.pattern === '3' || c.pattern === '1u') && c.features['lamp-burner'] !== 'flat-wick');
  const m = c.pattern === '3' ? `Nickel(${c.wear})` : `Brass(${c.wear * 0.85})`;
  const font = [[0, 0], [2.3, 0, 0.3], [2.5, 1.2, 0.6], [2.42, 2.5, 0.6], [1.6, 3.2, 0.6], [1.0, 3.4, 0.2], [0.95, 3.8, 0.1], [0, 3.8]];
  const lugs = round && c.pattern === '1u';
  const askew = c.state === 'unverified' ? 9 : 0;
  const tall = [[0, 3.8], [0.86, 3.8, 0.05], [0.86, 4.1, 0.05]];
  return group([
    round ? turned(font, m) : oval(font, m),
    `object { ${torus(2.46, 0.05, { at: [0, 0.5, 0], material: m })} ${round ? '' : 'scale <1.28,1,0.92>'} }`,
    round
      ? group([turned([...tall, [0.62, 4.2, 0.06], [0.6, 4.9, 0.03], [0.68, 4.95, 0.03], [0.68, 5.1, 0.03], [0.55, 5.15], [0.5, 4.6], [0, 4.6]], m), cylinder([0, 4.4, 0], [0, 5.28, 0], 0.42, 'Wick(0)')])
      : group([turned([...tall, [0.7, 4.25, 0.06], [0, 4.3]], m), cut(block([-0.8, 4.2, -0.26], [0.8, 5.0, 0.26], 0.05), [block([-0.64, 4.4, -0.12], [0.64, 5.2, 0.12], 0)], m), block([-0.62, 4.3, -0.1], [0.62, 5.14, 0.1], 0.04, 'Wick(0)')]),
    ...(lugs ? [-1, 1].map((s) => `object { ${group([block([1.75, 2.9, -0.35], [2.5, 3.6, 0.35], 0.06, m), askew && sphere([1.85, 2.95, 0.35], 0.3, 'Tin(0.2)'), askew && sphere([2.0, 2.85, -0.3], 0.26, 'Tin(0.2)')])} rotate ${s < 0 ? 180 + askew : askew * 0.4}*y }`) : []),
    wire(smooth([[0.9, 3.5, -0.3], [1.3, 3.4, -1.3], [1.9, 2.9, -2.0], [2.2, 1.6, -2.45], [1.5, 0.6, -2.6]], 6), 0.06, m),
  ]);
}
/** The cap, lying beside its lamp. */
export const lampCap = (c) => {
  const m = c.pattern === '3' ? `Nickel(${c.wear})` : `Brass(${c.wear * 0.85})`;
  return group([cut(turned([[0, 0], [0.95, 0, 0.05], [0.95, 1.2, 0.3], [0.3, 1.5, 0.1], [0.28, 1.7, 0.1], [0, 1.75]]), [], m), torus(0.95, 0.05, { at: [0, 0.1, 0], material: m })]);
};

export function spiritCan(c) {
  const m = c.pattern === '3' ? `Aluminium(${c.wear})` : `Tin(${0.1 + c.wear * 0.6})`;
  return group([
    block([-3, 0, -2], [3, 4.7, 2], 0.3, m),
    `object { ${slab(roundedOutline(5.3, 3.3, 0.5), 0.07, m)} translate 4.68*y }`,
    wire([...roundedOutline(5.9, 3.9, 0.4).map(([x, z]) => [x, 4.68, z]), [2.95, 4.68, 1.55]], 0.09, m),
    `object { ${turned([[0, 4.7], [0.85, 4.7, 0.05], [0.85, 5.0, 0.05], [0.66, 5.05], [0.66, 5.4], [0, 5.4]], m)} translate -1.6*x }`,
    group([turned([[0, 5.3], [0.82, 5.3, 0.05], [0.82, 6.0, 0.1], [0, 6.02]], `Brass(${c.wear})`), ...Array.from({ length: 24 }, (_, i) => cylinder([0.82 * Math.cos((i * Math.PI) / 12), 5.4, 0.82 * Math.sin((i * Math.PI) / 12)], [0.82 * Math.cos((i * Math.PI) / 12), 5.9, 0.82 * Math.sin((i * Math.PI) / 12)], 0.07, `Brass(${c.wear})`))], { at: [-1.6, 0, 0] }),
    wire(smooth([[-0.1, 4.7, 0], [0.1, 5.2, 0], [1.2, 5.5, 0], [2.3, 5.2, 0], [2.5, 4.7, 0]], 8), 0.13, m),
    c.pattern === '2' && `object { ${cone([0, 0, 0], 0.5, [0, 0.9, 0], 0.2, m)} rotate 35*z translate <-2.6,4.6,1.2> }`,
  ]);
}

export function spiritFlask(c) {
  const tin = c.model === 'tin-flask';
  const m = tin ? 'Tin(0.1)' : `Pewter(${c.wear})`;
  return group([
    `object { ${turned([[0, 0], [1.5, 0, 0.2], [1.55, 4.4, 0.6], [0.8, 5.2, 0.3], [0.62, 5.7], [0, 5.7]], m)} scale <1.25,1,0.62> }`,
    tin && block([-0.03, 0.2, -1.03], [0.03, 4.6, -0.9], 0, 'Tin(0.6)'),
    turned([[0, 5.5], [0.66, 5.5, 0.05], [0.66, 6.2, 0.12], [0, 6.25]], tin ? 'Brass(0.1)' : m),
    !tin && wire(smooth([[0.64, 5.8, 0], [1.2, 6.0, -0.2], [1.4, 5.4, -0.3], [1.1, 5.0, 0]], 6), 0.05, m),
  ]);
}

/** Three leaves folded together, seen from above as they lie. */
export function windscreen(c) {
  const bright = c.part.condition === 'as-made';
  const m = bright ? 'Tin(0)' : `Tin(${0.4 + c.wear * 0.6})`;
  const leaf = (y, z) =>
    `object { ${cut(slab(roundedOutline(7.6, 4.4, 0.25), 0.07), [-1, 1].map((s) => block([s * 2.6 - 0.12, -1, -2.4], [s * 2.6 + 0.12, 1, -0.9], 0)), m)} translate <0,${y},${z}> }`;
  const hinge = (y, z, odd) => [-2.4, 0, 2.4].map((x, i) => torus(0.22, odd && i === 1 ? 0.075 : 0.05, { at: [x, y, z], rotate: [0, 0, 90], material: odd && i === 1 ? 'Iron(0.8)' : m }));
  const fence = c.part.note?.includes('fence');
  return group([leaf(0, 0), `object { ${leaf(0.22, 0.12)} rotate 0.6*x }`, `object { ${leaf(0.46, -0.1)} rotate -0.8*y }`, ...hinge(0.18, 2.3, false), ...hinge(0.4, -2.35, fence),
    !bright && group([sphere([-1.6, 0.42, 1.2], 0.3), sphere([1.9, 0.44, -0.5], 0.24)], { scale: [1, 1, 1], material: 'texture { pigment { rgbt <0.23,0.09,0.03,0.35> } }' })]);
}

export function heatMat(c) {
  if (c.model === 'card-mat') return block([-4.8, 0, -4.8], [4.75, 0.25, 4.8], 0.02, 'PaperWhite(0)');
  const bagged = c.part.packed?.includes('bag');
  const open = c.part.note?.includes('open at one corner');
  const bound = c.pattern !== '3';
  return group([
    block([-5, 0, -5], [5, 0.5, 5], 0.05, 'Millboard(0)'),
    ...(bound ? [[-5.1, -5.1, 5.1, -4.5], [-5.1, 4.5, 5.1, 5.1], [-5.1, -5.1, -4.5, 5.1], [4.5, -5.1, 5.1, 5.1]].map(([a, b, d, e], i) => block([a, -0.04, b], [open && i === 1 ? d - 1.6 : d, 0.58, e], 0.05, `Tin(${0.15 + c.wear * 0.5})`)) : []),
    open && `object { ${block([-0.8, 0, -0.3], [0.8, 0.08, 0.3], 0.02, 'Tin(0.6)')} rotate 38*z translate <4.4,0.9,4.8> }`,
    bagged &&
      `box { <-5.7,-0.08,-5.7>, <5.7,0.72,5.7> texture { pigment { rgbt <0.85,0.87,0.88,0.86> } normal { wrinkles 0.8 scale 2.2 } finish { diffuse 0.25 specular 0.8 roughness 0.006 reflection { 0.04, 0.3 } } } no_shadow }`,
    bagged && block([-5.7, 0.6, 5.35], [5.7, 0.8, 5.6], 0.06, 'texture { pigment { rgbt <0.5,0.08,0.06,0.25> } finish { diffuse 0.7 specular 0.4 } }'),
  ]);
}
