import { block, cone, cut, cylinder, group, lying, slab, sphere, torus, turned, words } from '../engine/shapes.mjs';

const octagon = (r) => Array.from({ length: 8 }, (_, i) => [r * Math.cos(((i + 0.5) * Math.PI) / 4), r * Math.sin(((i + 0.5) * Math.PI) / 4)]);

/** Handle along x, head at -x with its square face towards -z. */
export function hammer(c) {
  const bench = c.model === 'bench-hammer';
  const m = `Steel(${0.15 + c.wear * 0.8})`;
  const head =
    c.pattern === '3'
      ? group([
          slab([[-0.75, -1.2], [0.75, -1.2], [0.8, 0.8], [0.2, 2.7], [-0.2, 2.7], [-0.8, 0.8]], 1.5),
          `object { ${turned([[0, 0], [0.72, 0, 0.1], [0.8, 0.2], [0.8, 1.2, 0.2], [0.55, 1.7], [0, 1.7]])} rotate -90*x translate <0,0.75,-2.8> scale <1,1,1> }`,
        ])
      : slab([[-0.72, -2.8], [0.72, -2.8], [0.8, -2.62], [0.8, -1.5], [0.66, -1.2], [0.66, -0.8], [0.82, -0.5], [0.82, 0.6], [0.6, 1.0], [0.2, 2.72], [0.08, 2.8], [-0.08, 2.8], [-0.2, 2.72], [-0.6, 1.0], [-0.82, 0.6], [-0.82, -0.5], [-0.66, -0.8], [-0.66, -1.2], [-0.8, -1.5], [-0.8, -2.62]], 1.5);
  const handle = turned([[0, 0], [0.5, 0, 0.1], [0.52, 2.2], [0.46, 4.5, 1], [0.5, 9, 3], [0.68, 14.5, 3], [0.74, 17.2, 1], [0.66, 18.3, 0.4], [0.3, 18.7, 0.3], [0, 18.75]]);
  return group([
    `object { ${cut(head, [], m)} translate <-8.6,0.05,0> }`,
    `object { ${handle} scale <1,1,0.78> rotate 90*y rotate -90*z scale <1,0.85,1> translate <-9.7,0.8,0> AshWood(${c.wear}) }`,
    block([-9.72, 0.7, -0.3], [-9.66, 0.9, 0.3], 0, 'Iron(0.5)'),
    !bench && c.mark && words(c.mark, 0.62, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-8.6, 1.555, -2.05], rotate: [0, 0, 0] }),
  ]);
}

export function mortar(c) {
  const m = c.pattern === '3' ? `AgateHoney(0)` : c.honey ? 'AgateHoney(0)' : 'AgateGrey(0)';
  const outside =
    c.pattern === '3'
      ? turned([[0, 0], [1.7, 0, 0.3], [2.25, 1.4, 0.4], [2.3, 2.3, 0.12], [0, 2.3]])
      : c.pattern === '2'
        ? slab(octagon(2.72), 2.4)
        : block([-2.5, 0, -2.5], [2.5, 2.4, 2.5], 0.14);
  const chip = c.part.note?.includes('flake') ? [sphere([1.7, 2.75, -1.75], 0.62)] : [];
  return cut(outside, [sphere([0, 3.55, 0], 2.36), ...chip], m);
}

export function pestle(c) {
  const m = 'AgateGrey(0)';
  if (c.pattern === '3')
    return lying(group([turned([[0, 0], [0.42, 0, 0.08], [0.45, 1.6], [0, 1.6]], 'AgateHoney(0)'), turned([[0, 1.5], [0.55, 1.5, 0.1], [0.6, 2.2, 0.2], [0.42, 3.4, 0.6], [0.5, 5.6, 0.6], [0.62, 6.6, 0.3], [0.35, 7.2, 0.2], [0, 7.25]], 'AshWood(0.3)')]), 0.62, { at: [-3.6, 0] });
  return lying(turned([[0, 0], [0.45, 0, 0.06], [0.52, 0.4, 0.1], [0.5, 3.4], [0.62, 5.4, 0.8], [0.86, 6.5, 0.5], [0.72, 7.3, 0.4], [0, 7.5]], m), 0.8, { at: [-3.75, 0] });
}

export function anvil(c) {
  const m = `Steel(${0.05 + c.wear * 0.7})`;
  const solid = c.pattern === '3' ? turned([[0, 0], [1.85, 0, 0.1], [1.9, 1.6, 0.16], [0, 1.6]], m) : block([-2, 0, -2], [2, 1.8, 2], c.pattern === '2' ? 0.22 : 0.07, m);
  return group([solid, c.mark && words(c.mark, 0.5, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [0, (c.pattern === '3' ? 1.6 : 1.8) + 0.002, -1.45] })]);
}

export function beadTray(c) {
  const m = c.pattern === '3' ? 'Enamel(0)' : `Porcelain(${c.wear})`;
  const rows = c.pattern === '3' ? [5, 2] : [4, 3];
  const cells = [];
  for (let i = 0; i < rows[0]; i += 1)
    for (let j = 0; j < rows[1]; j += 1) cells.push([(i - (rows[0] - 1) / 2) * (8 / rows[0]), (j - (rows[1] - 1) / 2) * (5.7 / rows[1])]);
  const r = c.pattern === '3' ? 0.66 : 0.76;
  const solid = cut(block([-4.3, 0, -3.1], [4.3, 1.1, 3.1], 0.22), cells.map(([x, z]) => sphere([x, 1.1 + r * 0.55, z], r * 1.14)), m);
  const broken = c.part.repairs?.some((x) => x.includes('riveted'));
  return group([
    solid,
    ...cells.map(([x, z]) => torus(r + 0.06, 0.05, { at: [x, 1.1, z], material: m })),
    c.pattern === '2' && group(cells.map(([x, z], i) => words(String(i + 1), 0.24, { font: 'sans', material: 'texture { pigment { rgb <0.05,0.1,0.4> } }', depth: 0.003, at: [x + 0.72, 1.1, z - 0.75] }))),
    broken && group([block([0.62, 1.06, -3.05], [0.66, 1.105, -1.1], 0, 'Cut(0)'), `object { ${block([-0.02, 1.06, -1.1], [0.02, 1.105, 4.1], 0, 'Cut(0)')} rotate -9*y translate <0.64,0,-1.1> scale <1,1,0.8> }`, ...[-2.1, 0.15, 2.2].map((z) => block([0.1, 1.08, z - 0.1], [1.15, 1.2, z + 0.1], 0.05, 'Brass(0.4)'))]),
    c.pattern === '3' && sphere([-3.6, 1.02, 2.4], 0.22, 'Japanned(0)'),
  ]);
}

export const charcoalBorer = (c) =>
  group([
    lying(cut(turned([[0, 0], [0.95, 0, 0.05], [0.95, 0.2], [0.12, 6.2, 0.05], [0, 6.25]]), [cone([0, -0.1, 0], 0.86, [0, 2, 0], 0.5)], `Zinc(${0.1 + c.wear * 0.4})`), 0.95, { at: [-3, 0] }),
    cylinder([-3.1, 0.95, -1.5], [-3.1, 0.95, 1.5], 0.2, `Iron(${0.4})`),
    sphere([-3.1, 0.95, -1.5], 0.28, 'Iron(0.4)'),
    sphere([-3.1, 0.95, 1.5], 0.28, 'Iron(0.4)'),
  ]);

export function streakPlate(c) {
  if (c.model === 'glazed-tile') return block([-2.1, 0, -2.3], [2.05, 0.62, 2.25], 0.1, 'GlazedTile(0)');
  const black = c.pattern !== '3' && c.index % 2 === 1;
  return block([-2.1, 0, -2.3], [2.1, 0.6, 2.3], 0.06, black ? 'BiscuitBlack(0)' : `Biscuit(${c.wear})`);
}

/** Standing on end, so that the rings show. */
export function charcoal(c) {
  const pressed = c.model === 'pressed-charcoal' || (c.pattern === '3' && !c.model);
  const shift = [Math.sin(c.index * 5.1), Math.sin(c.index * 3.7 + 1)];
  const used = c.part.note?.includes('used') && c.index < 2;
  const solid = cut(block([-1.2, 0, -1.2], [1.2, 5.2, 1.2], pressed ? 0.02 : 0.06), used ? [sphere([0.2, 5.5, 0.1], 0.8)] : [], pressed ? 'CharcoalPressed(0)' : 'Charcoal(0)');
  return group([solid], { rotate: [0, shift[0] * 3, 0], at: [shift[0] * 0.05, 0, shift[1] * 0.05] });
}
