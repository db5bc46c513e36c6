import { block, cone, cut, cylinder, group, lying, slab, smooth, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';

/** Folded flat on its base plate, beam along x; the pans lie in their own hollows. */
export function balance(c) {
  const brass = `Brass(${c.wear * 0.8})`;
  const light = c.features['balance-beam'] === 'aluminium' || c.pattern === '3';
  const m = light ? `Aluminium(${c.wear * 0.5})` : brass;
  const outline = [[-6.6, 0.12], [-6.3, 0.2], [-3, 0.42], [-0.5, 0.62], [0, 0.68], [0.5, 0.62], [3, 0.42], [6.3, 0.2], [6.6, 0.12], [6.6, -0.12], [6.3, -0.18], [0.5, -0.3], [0, -0.5], [-0.5, -0.3], [-6.3, -0.18], [-6.6, -0.12]];
  const holes = light
    ? [-1, 1].map((s) => `object { ${slab([[0.9 * s, -0.1], [5.2 * s, -0.06], [5.2 * s, 0.1], [0.9 * s, 0.32]], 3, '', -1)} }`)
    : [-1, 1].flatMap((s) => [1.25, 2.6, 3.9].map((x, i) => cylinder([x * s, -1, 0.1 - i * 0.02], [x * s, 2, 0.1 - i * 0.02], 0.2 - i * 0.035)));
  const beam = group([
    cut(slab(outline, 0.24), holes, m),
    ...[-6.45, 0, 6.45].map((x) => block([x - 0.1, 0.1, -0.16], [x + 0.1, 0.34, 0.16], 0.03, 'Steel(0)')),
    cone([0, 0.12, -0.4], 0.06, [0, 0.12, -2.9], 0.02, brass),
    cylinder([-6.45, 0.12, 0.1], [-6.45, 0.12, 0.62], 0.05, brass),
    cylinder([6.45, 0.12, 0.1], [6.45, 0.12, 0.62], 0.05, brass),
  ]);
  const pillar = lying(
    group([turned([[0, 0], [0.62, 0, 0.06], [0.62, 0.3, 0.08], [0.36, 0.5, 0.1], [0.3, 0.9], [0.28, 5.2], [0.42, 5.3, 0.05], [0.42, 5.6, 0.06], [0.26, 5.8], [0, 5.85]], brass)]),
    0.75,
    { at: [-6.9, -1.75] },
  );
  const fork = group([
    block([-0.95, 0.2, -2.35], [0.3, 0.5, -1.15], 0.06, brass),
    cylinder([-0.2, 0.3, -2.5], [-0.2, 0.3, -1.0], 0.14, brass),
  ]);
  return group([
    block([-7.6, 0, -3], [7.6, 0.42, 3], 0.1, c.pattern === '3' ? 'Mahogany(0.2, 4)' : 'Mahogany(0.1, 3)'),
    block([-7.3, 0.4, -2.75], [7.3, 0.5, -0.75], 0.05, brass),
    `object { ${beam} translate <0.2,0.72,1.25> }`,
    ...[-4.4, 4.4].map((x) => group([block([x - 0.18, 0.4, 0.75], [x + 0.18, 0.72, 1.75], 0.05, brass), sphere([x, 0.72, 1.75], 0.2, brass)])),
    pillar,
    fork,
    cut(cylinder([4.2, 0.5, -1.75], [4.2, 0.62, -1.75], 0.85), [], 'Ivory(0)'),
    ...Array.from({ length: 11 }, (_, i) => block([4.19, 0.615, -1.2], [4.21, 0.625, -0.98 - (i % 5 === 0 ? 0 : 0.08)], 0, 'Ink(0)')).map((tick, i) => `object { ${tick} translate <-4.2,0,1.75> rotate ${(i - 5) * 12}*y translate <4.2,0,-1.75> }`),
    ...[[-7, -2.5], [7, -2.5], [-7, 2.6], [7, 2.6]].map(([x, z]) => `object { ${turned([[0, 0.4], [0.28, 0.42, 0.05], [0.28, 0.62, 0.06], [0, 0.66]], brass)} translate <${x},0,${z}> }`),
    c.mark && words(c.mark, 0.42, { font: 'bold', material: 'Ink(0)', depth: 0.01, at: [6.2, 0.502, -2.4] }),
    ...[-3.7, 3.7].map((x, i) => pan(c, x, -5.5, i, brass)),
  ]);
}

function pan(c, x, z, i, brass) {
  const renewed = c.part.repairs?.some((r) => r.includes('chains'));
  const chain = renewed ? 'Nickel(0)' : brass;
  const at = (a, r, y) => [x + r * Math.cos(a), y, z + r * Math.sin(a)];
  return group([
    `object { ${turned([[0, 0.02], [1.2, 0.06, 0.4], [1.75, 0.3, 0.06], [1.8, 0.36, 0.04], [1.72, 0.36, 0.04], [1.2, 0.16, 0.4], [0, 0.1]], brass)} translate <${x},0,${z}> }`,
    ...[0.3, 2.4, 4.5].map((a) => {
      const path = smooth([at(a + i, 1.72, 0.38), at(a + i + 0.5, 1.2, 0.3), at(a + 0.9, 0.6, 0.24), at(a * 0.4 + 1, 0.25, 0.26)], 7);
      return group(path.map((p, k) => (k % 2 ? sphere(p, 0.055) : sphere(p, 0.04))), { material: chain });
    }),
    torus(0.22, 0.05, { at: [x + 0.2, 0.3, z + 0.2], material: chain }),
  ]);
}

const sizes = [0.56, 0.48, 0.42, 0.42, 0.36, 0.3];
/** Where each of the nine stands in its block, largest first; six turned, three of foil. */
const seats = [...[-4.0, -2.7, -1.5, -0.4, 0.65, 1.6].map((x) => [x, 0.25]), ...[2.5, 3.3, 4.1].map((x) => [x, 0.25])];

export function weightsBlock(c) {
  const wood = c.pattern === '3' ? 'Japanned(0)' : `Boxwood(${0.15 + c.wear * 0.4})`;
  const holes = seats.map(([x, z], i) => (i < 6 ? cylinder([x, 0.5, z], [x, 1.6, z], sizes[i] + 0.05) : block([x - 0.34, 1.1, z - 0.5], [x + 0.34, 1.6, z + 0.5], 0)));
  return group([
    cut(block([-4.8, 0, -1.3], [4.8, 1.3, 1.3], 0.12), holes, wood),
    ...['500', '200', '100', '100', '50', '20'].map((t, i) => words(t, 0.24, { font: 'sans', material: 'Cut(0)', depth: 0.005, at: [seats[i][0], 1.302, -0.85] })),
  ]);
}
export function weight(c) {
  const [x, z] = seats[c.index] ?? [4.1, 0.9];
  const r = sizes[c.index];
  const brass = c.pattern === '3' && c.index > 3 ? 'Aluminium(0)' : `Brass(${c.wear * 0.6})`;
  if (r) return `object { ${turned([[0, 0.5], [r, 0.5, 0.03], [r, 1.35 + r * 0.5, 0.05], [r * 0.35, 1.42 + r * 0.5, 0.05], [r * 0.3, 1.6 + r * 0.6, 0.05], [r * 0.52, 1.7 + r * 0.9, 0.1], [r * 0.3, 1.78 + r * 1.1, 0.06], [0, 1.8 + r * 1.1]], brass)} translate <${x},0,${z}> }`;
  const s = 0.26 - (c.index - 6) * 0.05;
  return group([block([-s, 0, -s], [s, 0.02, s], 0), `object { ${block([-s, 0, 0], [s * 0.1, 0.02, s], 0)} rotate 50*z translate <${s * 0.9},0,0> }`], { material: c.pattern === '3' ? 'Aluminium(0)' : 'Platinum(0)', rotate: [0, 20 * c.index, 0], at: [x, 1.14, z] });
}

/** A bone capsule opened, the riders on its lower half. */
export const riderCapsule = (c) =>
  group([
    lying(cut(turned([[0, 0], [0.5, 0, 0.12], [0.5, 2.6, 0.05], [0, 2.6]]), [cylinder([0, 0.3, 0], [0, 2.7, 0], 0.38)], c.pattern === '3' ? 'Bone(0)' : 'Bone(0)'), 0.5, { at: [-2.6, 0] }),
    lying(cut(turned([[0, 0], [0.55, 0, 0.12], [0.55, 1.0, 0.05], [0, 1.0]]), [cylinder([0, 0.3, 0], [0, 1.2, 0], 0.42)], 'Bone(0)'), 0.55, { at: [1.5, 0.2], turn: 25 }),
  ]);
export function rider(c) {
  const m = c.model === 'copper-rider' ? 'Copper(0.2)' : c.pattern === '3' ? 'Aluminium(0)' : 'Gilt(0)';
  const r = c.model === 'copper-rider' ? 0.05 : 0.04;
  const ring = Array.from({ length: 9 }, (_, i) => [0.1 * Math.cos((i / 8) * 2 * Math.PI), r, 0.3 + 0.1 * Math.sin((i / 8) * 2 * Math.PI)]);
  const solid = wire([...smooth([[-0.2, r, -0.35], [-0.16, r, -0.1], [-0.05, r, 0.15], [0, r, 0.2]], 5), ...ring, ...smooth([[0.02, r, 0.2], [0.08, r, 0.12], [0.17, r, -0.1], [0.21, r, -0.35]], 5)], r, m);
  return `object { ${solid} rotate ${(c.index * 77) % 360}*y }`;
}
