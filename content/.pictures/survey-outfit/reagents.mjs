import { block, cut, cylinder, group, lying, slab, smooth, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';

const contents = ['rgb <0.72,0.71,0.68>', 'rgb <0.16,0.30,0.36>', 'rgb <0.66,0.60,0.42>', 'rgb <0.10,0.07,0.06>', 'rgb <0.60,0.62,0.60>', 'rgb <0.55,0.33,0.12>'];

/** Ground stopper with a flat disc for the numeral, standing in a neck at height y. */
const stopper = (y, numeral, glass) =>
  group([
    turned([[0, y - 0.9], [0.42, y - 0.9], [0.5, y], [0.4, y + 0.18, 0.08], [0.66, y + 0.42, 0.1], [0.7, y + 0.62, 0.08], [0.62, y + 0.72, 0.06], [0, y + 0.72]], glass),
    numeral && words(numeral, 0.62, { font: 'serif', material: 'PaperWhite(0)', depth: 0.012, at: [0, y + 0.735, 0] }),
  ]);

/** A hollow vessel in one closed mesh: up the outside, over the lip, down the inside. */
const vessel = (outside, inside, glass, square) => turned([...outside, ...[...inside].reverse()], glass, square);

/** Height of every standing bottle's rim, so that the row is level. */
const TALL = 6.4;

export function reagentBottle(c) {
  if (c.model === 'chemists-bottle') return chemistsBottle(c);
  const glass = 'Flint(0)';
  const numeral = String(c.index + 1);
  const round = c.pattern === '3';
  const fill = 2.6 + 1.2 * Math.sin(c.index * 2.3 + (c.seed ?? 0));
  return group([
    round
      ? vessel([[0, 0], [1.35, 0, 0.2], [1.35, 4.5, 0.7], [0.72, 5.5, 0.35], [0.72, 6.1, 0.1], [0.9, 6.2, 0.08], [0.9, TALL, 0.08]], [[0, 0.3], [1.15, 0.3, 0.2], [1.15, 4.4, 0.6], [0.52, 5.4, 0.3], [0.52, TALL, 0.05]], glass)
      : vessel([[0, 0], [1.3, 0, 0.2], [1.3, 4.6, 0.3], [1.15, 4.95, 0.3], [0.72, 5.3, 0.3], [0.72, 6.1, 0.1], [0.95, 6.2, 0.08], [0.95, TALL, 0.08]], [[0, 0.3], [1.1, 0.3, 0.2], [1.1, 4.5, 0.4], [0.52, 5.2, 0.3], [0.52, TALL, 0.05]], glass, (y) => Math.min(1, Math.max(0, (5.2 - y) / 0.5))),
    !c.empty && (round ? cylinder([0, 0.34, 0], [0, 0.3 + fill, 0], 1.1, `Powder(${contents[c.index % 6]})`) : block([-1.05, 0.34, -1.05], [1.05, 0.3 + fill, 1.05], 0.15, `Powder(${contents[c.index % 6]})`)),
    label(c, round),
    stopper(TALL, numeral, glass),
    words(numeral, 0.36, { font: 'serif', material: 'PaperWhite(0)', depth: 0.02, at: [0, 4.86, -1.0] }),
  ]);
}

/** Fired enamel on the front. */
function label(c, round) {
  const face = `box { <-1.02,1.5,-0.02>, <1.02,3.9,0.02> texture { pigment { rgb <0.80,0.78,0.70> } finish { diffuse 0.8 specular 0.3 roughness 0.02 } } translate -1.315*z }`;
  const text = ['Na2 CO3', 'KHSO4', 'BORAX', 'NITRE', 'Sn', 'Co SOL.'][c.index % 6];
  return group([face, `object { ${words(text, 0.42, { font: 'sans', material: 'Ink(0)', depth: 0.01 })} rotate -90*x translate <0,2.9,-1.345> }`, `object { ${words(String(c.index + 1), 0.5, { font: 'serif', material: 'Ink(0)', depth: 0.01 })} rotate -90*x translate <0,2.0,-1.345> }`], round ? { at: [0, 0, -0.06] } : {});
}

const chemistsBottle = (c) =>
  group([
    vessel([[0, 0], [1.15, 0, 0.2], [1.15, 4.2, 0.6], [0.6, 5.0, 0.3], [0.6, 5.6, 0.05], [0.78, 5.65, 0.08], [0.78, 6.0, 0.08]], [[0, 0.25], [1.0, 0.25, 0.2], [1.0, 4.1, 0.5], [0.42, 4.9, 0.2], [0.42, 7]], 'Flint(0)'),
    cylinder([0, 0.3, 0], [0, 2.2 + 0.8 * (c.index % 2), 0], 0.96, `Powder(${contents[(c.index + 2) % 6]})`),
    turned([[0, 5.2], [0.44, 5.2], [0.5, 6.5, 0.06], [0, 6.52]], 'Cork(0)'),
    `intersection { cylinder { <0,1.3,0>, <0,3.6,0>, 1.17 } box { <-1.2,1,-2>, <1.2,4,-0.35> } Paper(0.8) }`,
  ]);

/** A small round bottle; the flux shows through the shoulder. */
export function flux(c) {
  const fill = 3 + 0.5 * Math.sin(c.index * 1.9 + 1);
  return group([
    vessel([[0, 0], [1.18, 0, 0.2], [1.18, 4.4, 0.5], [0.7, 5.2, 0.3], [0.7, 6.0, 0.05], [0.88, 6.1, 0.08], [0.88, TALL, 0.08]], [[0, 0.25], [1.02, 0.25, 0.2], [1.02, 4.3, 0.4], [0.5, 5.1, 0.2], [0.5, 7]], 'Flint(0)'),
    cylinder([0, 0.3, 0], [0, fill, 0], 0.99, 'Powder(rgb <0.78,0.77,0.73>)'),
    `intersection { cylinder { <0,1.3,0>, <0,3.7,0>, 1.2 } box { <-1.3,1,-2>, <1.3,4,-0.3> } Paper(0.5) }`,
    stopper(TALL, ['B', 'S', 'M'][c.index % 3], 'Flint(0)'),
  ]);
}

export function mercuryBottle(c) {
  const bag = c.part.packed?.includes('bag');
  const iron = c.pattern === '2';
  const m = iron ? `Iron(${0.2 + c.wear * 0.5})` : `Boxwood(${0.3 + c.wear * 0.5})`;
  return group([
    iron
      ? group([turned([[0, 0], [1.1, 0, 0.15], [1.1, 4.4, 0.4], [0.7, 5.0, 0.2], [0.7, 5.4, 0.1], [0, 5.4]], m), turned([[0, 5.4], [0.62, 5.4], [0.62, 5.5, 0.05], [0, 5.5]], 'Bridle(0.5)'), block([-0.42, 5.5, -0.42], [0.42, 6.1, 0.42], 0.08, m)])
      : group([turned([[0, 0], [1.0, 0, 0.12], [1.22, 0.9, 0.5], [1.26, 2.4, 0.9], [1.16, 3.9, 0.4], [1.16, 4.0, 0.03], [1.06, 4.06, 0.02], [1.06, 4.14, 0.02], [1.18, 4.2, 0.04], [1.12, 5.3, 0.25], [0.55, 5.7, 0.2], [0.5, 5.85, 0.1], [0, 5.9]], m), ...[1.2, 3.4, 4.5].map((y) => torus(1.21 - Math.abs(y - 2.4) * 0.028, 0.025, { at: [0, y, 0], material: 'Cut(0)' }))]),
    bag &&
      `object { ${turned([[1.5, 0.1], [1.62, 2, 0.6], [1.5, 5, 0.8], [0.5, 6.6, 0.3], [0.9, 7.4]])} texture { pigment { rgbt <0.8,0.82,0.82,0.82> } normal { wrinkles 0.9 scale 0.9 } finish { diffuse 0.3 specular 0.7 roughness 0.01 reflection { 0.03, 0.25 } } } no_shadow }`,
    bag && torus(0.52, 0.09, { at: [0, 6.55, 0], material: 'Webbing(0)' }),
  ]);
}

export function leadFoil(c) {
  const loose = c.part.packed === 'loose';
  const roll = lying(group([turned([[0, 0], [1.02, 0, 0.06], [1.02, 3, 0.06], [0, 3]], loose ? 'Lead(1)' : 'Lead(0.4)'), ...[0.3, 0.5, 0.7, 0.88].map((r) => torus(r, 0.025, { at: [0, 3.0, 0], material: 'Iron(0)' }))]), 1.02, { at: [-1.5, 0] });
  const bloom = `texture { pigment { granite turbulence 0.4 color_map { [0 rgb <0.62,0.63,0.63>] [0.5 rgb <0.50,0.51,0.52>] [0.75 rgb <0.25,0.255,0.265>] [1 rgb <0.25,0.255,0.265>] } scale 0.8 } normal { granite 0.3 scale 0.3 } finish { diffuse 0.8 } }`;
  return loose ? lying(turned([[0, 0], [1.0, 0, 0.1], [1.02, 3, 0.1], [0.3, 3.02], [0, 2.9]], bloom), 1.02, { at: [-1.5, 0] }) : group([roll, lying(turned([[1.05, -0.25], [1.08, 0.3], [1.06, 2.3], [1.12, 2.55]], 'Waxed(0)'), 1.05, { at: [-1.5, 0] }), `object { ${slab([[-1.6, -0.7], [1.0, -0.7], [1.1, 0.9], [-1.6, 0.9]], 0.03, 'Waxed(0)')} rotate 35*x translate <0.1,1.75,-0.9> }`]);
}

export const cyanideBottle = () =>
  group([
    vessel([[0, 0], [1.3, 0, 0.2], [1.3, 4.3, 0.7], [0.68, 5.2, 0.3], [0.68, 5.9, 0.05], [0.85, 5.95, 0.08], [0.85, 6.2, 0.08]], [[0, 0.3], [1.1, 0.3, 0.2], [1.1, 4.2, 0.5], [0.45, 5.1, 0.2], [0.45, 7]], 'BrownGlass(0)'),
    ...Array.from({ length: 26 }, (_, i) => cylinder([1.31 * Math.cos((i * Math.PI) / 13), 0.6, 1.31 * Math.sin((i * Math.PI) / 13)], [1.31 * Math.cos((i * Math.PI) / 13), 3.9, 1.31 * Math.sin((i * Math.PI) / 13)], 0.09, 'BrownGlass(0)')),
    cylinder([0, 0.35, 0], [0, 2.9, 0], 1.05, 'Powder(rgb <0.55,0.45,0.33>)'),
    turned([[0, 5.6], [0.9, 5.75, 0.2], [0.98, 6.3, 0.2], [0.8, 6.75, 0.25], [0.3, 7.0, 0.2], [0, 7.02]], 'Wax(rgb <0.33,0.02,0.015>)'),
    ...[0, 90].map((a) => `object { ${wire(smooth([[-0.98, 5.75, 0], [-0.9, 6.5, 0.02], [-0.4, 7.02, 0], [0, 7.1, 0], [0.4, 7.02, 0], [0.9, 6.5, -0.02], [0.98, 5.75, 0]], 6), 0.045, 'Iron(0.5)')} rotate ${a}*y }`),
    torus(0.95, 0.05, { at: [0, 5.8, 0], material: 'Iron(0.5)' }),
  ]);

export const acidBottle = () =>
  group([
    vessel([[0, 0], [1.2, 0, 0.2], [1.2, 4.0, 0.6], [0.6, 4.9, 0.3], [0.6, 5.4, 0.05]], [[0, 0.25], [1.0, 0.25, 0.2], [1.0, 3.9, 0.5], [0.4, 4.8, 0.2], [0.4, 7]], 'Flint(0)'),
    cylinder([0, 0.3, 0], [0, 2.6, 0], 0.98, 'texture { pigment { rgb <0.5,0.42,0.16> } finish { diffuse 0.5 specular 0.4 roughness 0.01 } }'),
    vessel([[0, 4.2], [1.0, 4.2, 0.1], [1.0, 6.3, 0.7]], [[0, 4.0], [0.86, 4.0], [0.86, 6.2, 0.6]], 'Flint(0)'),
  ]);
