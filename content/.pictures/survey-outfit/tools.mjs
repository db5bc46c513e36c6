import { block, cone, cut, cylinder, group, lying, ribbon, slab, smooth, smoothFlat, sphere, torus, turned, wire, words } from '../engine/shapes.mjs';

const body = (c) => (c.pattern === '3' ? `Nickel(${c.wear})` : `GermanSilver(${c.wear})`);

/** A row of fine ridges round a collar on the y axis. */
const milled = (r, y0, y1, material, count = 36) =>
  group(
    Array.from({ length: count }, (_, i) => {
      const a = (i / count) * 2 * Math.PI;
      return cylinder([r * Math.cos(a), y0, r * Math.sin(a)], [r * Math.cos(a), y1, r * Math.sin(a)], (r * 2.2) / count);
    }),
    { material },
  );

/** Origin at the middle of the long tube; mouth end at -x, side arm towards -z. */
export function blowpipe(c) {
  const m = body(c);
  const conical = c.features.chamber !== 'cylindrical';
  const tube = turned(
    [[0.28, 0], [0.5, 0, 0.06], [0.5, 1.0, 0.07], [0.43, 1.12, 0.03], [0.42, 1.3], [0.38, 8.6], [0.5, 8.68, 0.05], [0.54, 8.8, 0.05], [0.54, 10.0, 0.05], [0.5, 10.12, 0.05], [0.36, 10.2], [0.31, 17.6], [0.44, 17.7, 0.05], [0.44, 18.1, 0.05], [0.34, 18.2], [0.34, 18.5]],
    m,
  );
  const chamber = conical
    ? turned([[0.38, 18.2], [0.42, 18.4, 0.05], [1.08, 21.1, 0.12], [1.12, 21.35, 0.08], [1.08, 21.6, 0.1], [0.6, 21.75, 0.1], [0, 21.8]], m)
    : turned([[0.4, 18.2], [0.62, 18.35, 0.06], [0.98, 18.5, 0.12], [0.98, 19.75, 0.03], [1.06, 19.8, 0.04], [1.06, 20.05, 0.04], [0.98, 20.1, 0.03], [0.98, 21.3, 0.12], [0.5, 21.45, 0.1], [0, 21.5]], m);
  const y = 1.06;
  const x = conical ? 10.1 : 9.6;
  return group([
    lying(tube, y, { at: [-10.5, 0] }),
    lying(chamber, y, { at: [-10.5, 0] }),
    !conical && lying(milled(1.05, 19.82, 20.03, m, 60), y, { at: [-10.5, 0] }),
    cone([x, y, -0.7], 0.42, [x, y, -1.15], 0.36, m),
    cone([x, y, -1.1], 0.33, [x, y, -4.5], 0.24, m),
    torus(0.3, 0.07, { at: [x, y, -1.18], rotate: [90, 0, 0], material: m }),
    cylinder([x, y, -4.3], [x, y, -4.75], 0.31, m),
    c.set && words(c.set, 0.36, { font: 'bold', material: 'Ink(0)', depth: 0.02, at: [-10.5 + 9.4, y + 0.535, 0] }),
    c.jetFitted && `object { ${jet({ ...c, model: c.jetFitted === 'platinum' ? undefined : c.jetFitted }, true)} rotate 180*z rotate 90*x translate <${x},${y},-4.6> }`,
  ]);
}

/** A jet on the y axis, mouth up; lying along x unless upright. */
export function jet(c, upright = false) {
  const brass = c.model === 'brass-jet';
  const collar = `Brass(${brass ? 0.7 : c.wear})`;
  const tip = brass ? 'Brass(0.95)' : c.pattern === '3' ? `Brass(${c.wear})` : `Platinum(${c.wear})`;
  const solid = group([
    cut(turned([[0, 0], [0.4, 0, 0.04], [0.4, 0.75, 0.05], [0.34, 0.8], [0, 0.8]]), [cylinder([0, -0.1, 0], [0, 0.3, 0], 0.24)], collar),
    c.pattern === '2' && !brass && milled(0.4, 0.06, 0.7, collar),
    brass && torus(0.38, 0.035, { at: [0, 0.2, 0], material: collar }),
    cut(turned([[0, 0.75], [0.31, 0.76], [0.29, 0.95], [0.13, 2.0, 0.03], [0, 2.02]]), [cylinder([0, 1.7, 0], [0, 2.1, 0], 0.05)], tip),
  ]);
  return upright ? solid : lying(solid, 0.4, { at: [-1, 0] });
}

const trumpetWood = (c) => {
  if (c.model === 'boxwood-trumpet') return 'Boxwood(0.6)';
  if (c.model === 'ebonite-trumpet' || c.features.mouthpiece === 'ebonite' || c.pattern === '3') return 'Ebonite(0.4)';
  if (c.features.mouthpiece === 'boxwood' || c.pattern === '2') return `Boxwood(${c.wear})`;
  return `Ivory(${c.wear})`;
};

/** Spigot towards +x, bell towards -x. */
export function mouthpiece(c) {
  const m = trumpetWood(c);
  const outer = turned([[0, 0], [1.5, 0, 0.1], [1.5, 0.14, 0.1], [1.0, 0.75, 0.4], [0.62, 1.7, 0.6], [0.5, 2.9, 0.3], [0.58, 3.0, 0.05], [0.58, 3.2, 0.05], [0.5, 3.3, 0.05], [0, 3.3]]);
  const bore = turned([[0, -0.1], [1.4, -0.1], [1.36, 0.03, 0.05], [0.8, 0.7, 0.4], [0.3, 1.7, 0.4], [0.14, 2.6], [0, 2.6]]);
  const spigot = `Brass(${c.wear})`;
  return `object { ${group([
    cut(outer, [bore], m),
    cylinder([0, 3.2, 0], [0, 4.1, 0], 0.36, /Ivory/.test(m) ? m : spigot),
    ...[3.45, 3.6, 3.75, 3.9].map((y) => torus(0.36, 0.035, { at: [0, y, 0], material: /Ivory/.test(m) ? m : spigot })),
    c.model === 'boxwood-trumpet' && cylinder([0, 3.3, 0], [0, 3.75, 0], 0.43, 'PaperOf(rgb <0.55,0.5,0.4>, 0.6)'),
  ])} rotate -90*z translate <-2,0,0> rotate -12*z translate <0,1.06,0> }`;
}

export function forceps(c) {
  const m = c.pattern === '1' || c.pattern === '1u' ? `Steel(${c.wear * 0.6})` : `Nickel(${c.wear})`;
  const half = (s) =>
    smoothFlat([[-6.4, 0.05 * s], [-5.6, 0.3 * s], [-4.2, 0.42 * s], [-2.9, 0.12 * s], [-2.3, -0.12 * s], [-0.5, -0.62 * s], [1.6, -0.58 * s], [3.6, -0.3 * s], [4.8, -0.13 * s]]);
  const tip = (s) => smoothFlat([[4.4, -0.2 * s], [5.4, -0.1 * s], [6.5, -0.035 * s]]);
  const rivets = c.part.note?.includes('One rivet') ? [[4.55, -0.25]] : [[4.5, -0.27], [4.85, -0.21], [4.5, 0.27], [4.85, 0.21]];
  return group([
    ribbon(half(1), (t) => 0.2 + 0.06 * Math.sin(Math.PI * t), 0.8, m),
    ribbon(half(-1), (t) => 0.2 + 0.06 * Math.sin(Math.PI * t), 0.8, m),
    ribbon(tip(1), (t) => 0.16 - 0.1 * t, 0.34, 'Platinum(0)', 0.23),
    ribbon(tip(-1), (t) => 0.16 - 0.1 * t, 0.34, 'Platinum(0)', 0.23),
    cylinder([-6.4, 0.1, 0], [-6.4, 0.74, 0], 0.17, m),
    cylinder([-2.62, 0.2, 0], [-2.62, 0.86, 0], 0.13, m),
    ...rivets.map(([x, z]) => sphere([x, 0.72, z * 0.7], 0.05, 'Platinum(0)')),
  ]);
}

export function wireHolder(c) {
  const m = c.pattern === '3' ? `Aluminium(${c.wear})` : c.state === 'unverified' && c.part.note?.includes('brass') ? 'Brass(0.55)' : `Nickel(${c.wear})`;
  return lying(
    group([
      turned([[0, 0], [0.34, 0, 0.08], [0.34, 1.2, 0.04], [0.38, 1.25, 0.04], [0.38, 1.5, 0.04], [0.33, 1.55], [0.33, 8.2, 0.03], [0.4, 8.25, 0.03], [0.4, 9.6, 0.04], [0.26, 9.9, 0.06], [0.13, 10.7, 0.04], [0, 10.75]], m),
      milled(0.395, 8.35, 9.5, m, 30),
    ]),
    0.4,
    { at: [-5.4, 0] },
  );
}

/** One wire with its loop; units are laid side by side by the layout. */
export function platinumWire(c) {
  const z = 0.06 * Math.sin(c.index * 2.1);
  const m = c.state === 'unverified' ? 'Nickel(0)' : 'Platinum(0)';
  const loop = Array.from({ length: 13 }, (_, i) => {
    const a = Math.PI + (i / 12) * 1.8 * Math.PI;
    return [2.75 + 0.16 * Math.cos(a), 0.09, z + 0.16 * Math.sin(a)];
  });
  return wire([...smooth([[-3, 0.08, 0.12 * Math.sin(c.index)], [-1, 0.1, z - 0.05], [1, 0.08, z + 0.04], [2.55, 0.09, z]], 8), ...loop], 0.032, m);
}
export const wirePaper = (c) =>
  group([
    slab([[-3.4, -0.85], [3.4, -0.82], [3.38, 0.85], [-3.36, 0.83]], 0.03, 'Paper(0.4)'),
    `object { ${slab([[-3.36, 0.3], [3.38, 0.3], [3.36, 0.86], [-3.34, 0.86]], 0.02, 'Paper(0.7)')} rotate -6*x translate 0.05*y }`,
    c.pattern === '2' && words('QUERNBY & LISK', 0.22, { material: 'Ink(0)', depth: 0.004, at: [0, 0.095, 0.55] }),
  ]);

export function magnet(c) {
  const plain = c.state === 'unverified';
  if (c.pattern === '3') {
    const arc = Array.from({ length: 19 }, (_, i) => [-0.6 + 1.15 * Math.cos(Math.PI / 2 + (i / 18) * Math.PI), 1.15 * Math.sin(Math.PI / 2 + (i / 18) * Math.PI)]);
    return group([
      ribbon([[2.2, 1.05], [0.6, 1.12], ...arc, [0.6, -1.12], [2.2, -1.05]], 0.62, 0.8, 'RedPaint(0)'),
      block([2.1, 0, 0.72], [3, 0.8, 1.34], 0.04, 'Steel(0.2)'),
      block([2.1, 0, -1.34], [3, 0.8, -0.72], 0.04, 'Steel(0.2)'),
      block([3.05, 0.05, -1.5], [3.5, 0.75, 1.5], 0.06, 'Iron(0.4)'),
    ]);
  }
  return group([
    slab([[-3.6, -0.22], [-3.1, -0.6], [3.1, -0.6], [3.6, -0.22], [3.6, 0.22], [3.1, 0.6], [-3.1, 0.6], [-3.6, 0.22]], 0.6, plain ? 'Steel(0.6)' : `Steel(${0.2 + c.wear * 0.5})`),
    !plain && block([-2, 0.02, -0.615], [2, 0.612, 0.615], 0.03, `Blued(${c.wear})`),
    c.index === 0 && block([-2.1, 0, -1.45], [2.1, 0.5, -0.85], 0.05, `Iron(${0.3 + c.wear * 0.5})`),
  ]);
}

export function key(c) {
  const m = `Steel(${0.3 + c.wear * 0.5})`;
  const bow =
    c.pattern === '2'
      ? [0, 120, 240].map((a) => torus(0.36, 0.1, { at: [-1.55 - 0.42 * Math.cos((a * Math.PI) / 180), 0.2, 0.42 * Math.sin((a * Math.PI) / 180)], material: m }))
      : c.pattern === '3'
        ? [cut(cylinder([-1.6, 0.1, 0], [-1.6, 0.26, 0], 0.75), [cylinder([-2, 0, 0], [-2, 0.4, 0], 0.16)], m)]
        : [torus(0.66, 0.13, { at: [-1.55, 0.2, 0], material: m })];
  return group([
    ...bow,
    cylinder([-0.95, 0.2, 0], [2.1, 0.2, 0], 0.16, m),
    torus(0.17, 0.07, { at: [-0.75, 0.2, 0], rotate: [0, 0, 90], material: m }),
    torus(0.17, 0.05, { at: [0.9, 0.2, 0], rotate: [0, 0, 90], material: m }),
    cut(block([1.25, 0.12, -0.8], [1.95, 0.28, 0], 0.02), [block([1.5, 0, -0.9], [1.62, 0.4, -0.45], 0)], m),
  ]);
}
