import { block, cut, cylinder, group, n, sheet, slab, smooth, sphere, strap, turned, v, words } from './shapes.mjs';
import { reliefMap, reliefSolid } from './relief.mjs';

const WALL = 0.95;

/** The solids of a fitted case of the given size: half-width X, half-depth Z, body TALL, lid LID, lid leaning OPEN degrees up from flat. */
export function caseKit({ X, Z, TALL, LID, OPEN }) {
  const walls = (o, y0, y1) =>
    group([
      block([-X, y0, -Z], [X, y1, -Z + WALL], 0.07, o.boards(1)),
      block([-X, y0, Z - WALL], [X, y1, Z], 0.07, o.boards(2)),
      ...[-1, 1].map((s) => `object { ${block([-Z + WALL - 0.02, y0, -WALL / 2], [Z - WALL + 0.02, y1, WALL / 2], 0.07, o.boards(4 + s))} rotate 90*y translate ${n(s * (X - WALL / 2))}*x }`),
    ]);

  /** Metal round the upright edges, for the cases that have it. */
  const corners = (o, y0, y1) =>
    o.binding
      ? group([-1, 1].flatMap((s) => [-1, 1].flatMap((t) => [
          block([Math.min(s * X, s * (X - 3.2)), y0, Math.min(t * (Z + 0.09), t * (Z - 0.02))], [Math.max(s * (X + 0.09), s * (X - 3.2)), y1, Math.max(t * (Z + 0.09), t * (Z - 0.02))], 0.04, o.binding),
          block([Math.min(s * (X + 0.09), s * (X - 0.02)), y0, Math.min(t * (Z + 0.09), t * (Z - 3.2))], [Math.max(s * (X + 0.09), s * (X - 0.02)), y1, Math.max(t * (Z + 0.09), t * (Z - 3.2))], 0.04, o.binding),
          ...(t < 0 ? [0.25, 0.75].map((f) => group([cylinder([0, 0, 0], [0, 0.07, 0], 0.2, o.binding), block([-0.17, 0.05, -0.025], [0.17, 0.08, 0.025], 0, 'Ink(0)')], { rotate: [-90, 0, 20], at: [s * (X - 1.6), y0 + (y1 - y0) * f, -Z - 0.09] })) : []),
        ])))
      : '';

  const hinges = (o) => [-X * 0.62, X * 0.62].map((x) => group([cylinder([x - 1.6, TALL, Z + 0.15], [x + 1.6, TALL, Z + 0.15], 0.26), block([x - 1.6, TALL - 0.04, Z - WALL], [x + 1.6, TALL + 0.05, Z + 0.1], 0.02)], { material: o.brass }));

  const lock = (o) =>
    group([
      `object { ${cut(slab([[-1.3, -1.1], [1.3, -1.1], [1.3, 1.1], [-1.3, 1.1]], 0.08), [cylinder([0, -1, 0.15], [0, 1, 0.15], 0.24), block([-0.11, -1, -0.75], [0.11, 1, 0.15], 0)], o.brass)} rotate -90*x translate ${v(0, TALL - 2.2, -Z)} }`,
      block([-1.1, TALL - 0.03, -Z + 0.12], [1.1, TALL + 0.03, -Z + 0.8], 0.02, o.brass),
      block([-0.5, TALL - 0.1, -Z + 0.3], [0.5, TALL + 0.035, -Z + 0.62], 0, 'Ink(0)'),
    ]);

  const body = (o) =>
    group([
      walls(o, 0.3, TALL),
      block([-X + 0.1, 0, -Z + 0.1], [X - 0.1, 0.8, Z - 0.1], 0, o.boards(6)),
      corners(o, 0.3, TALL - 0.01),
      lock(o),
      cylinder([-X + 0.4, TALL, Z + 0.13], [X - 0.4, TALL, Z + 0.13], 0.2, 'Iron(0.5)'),
      ...hinges(o),
      o.setMark && words(o.setMark, 0.55, { font: 'bold', depth: 0.02, material: 'Cut(0)', at: [5.6, TALL, -Z + WALL / 2] }),
    ]);

  const lidPoint = ([x, h, w]) => {
    const a = (OPEN * Math.PI) / 180;
    const y = h - LID;
    return [x, TALL + y * Math.cos(a) + w * Math.sin(a), Z + 0.15 - y * Math.sin(a) + w * Math.cos(a)];
  };

  /** The lid as it lies open flat, its inside up. */
  const lidShell = (o, furnishings) =>
    group([
      group([walls(o, 0, LID), corners(o, 0, LID - 0.01)], { at: [0, 0, Z] }),
      block([-X, 0, 0], [X, 0.9, 2 * Z], 0.06, o.boards(7)),
      sheet(-X + WALL, WALL, X - WALL, 2 * Z - WALL, 70, 46, (x, z) => {
        const edge = Math.max(0, Math.min(X - WALL - Math.abs(x), z - WALL, 2 * Z - WALL - z));
        return 1.15 + 0.14 * Math.min(1, edge / 1.2) ** 0.5 + 0.02 * Math.sin(x * 0.9 + Math.sin(z)) * Math.sin(z * 0.8);
      }, o.lidLining ?? o.lining),
      block([-0.45, LID - 0.02, 2 * Z - 0.64], [0.45, LID + 0.75, 2 * Z - 0.32], 0.05, o.brass),
      ...furnishings,
    ]);

  const lid = (o, furnishings) => {
    const stays = [-1, 1].map((s) => {
      const [a, b] = [[s * (X - 1.25), TALL - 0.5, Z * 0.32], lidPoint([s * (X - 1.25), LID - 0.5, Z * 0.7])];
      return group([cylinder(a, b, 0.13), cylinder([a[0] - 0.3, a[1], a[2]], [a[0] + 0.45, a[1], a[2]], 0.24), cylinder([b[0] - 0.3, b[1], b[2]], [b[0] + 0.45, b[1], b[2]], 0.24)], { material: o.brass });
    });
    return group([`object { ${lidShell(o, furnishings)} translate ${v(0, -LID, 0)} rotate ${-OPEN}*x translate ${v(0, TALL, Z + 0.15)} }`, ...stays]);
  };

  /** The lid shut; `handle` is a strap on the lid, else there are drop handles at the ends. */
  const shutLid = (o, onTop = []) => {
    const top = TALL + LID;
    const handle = [
      strap([[-5.4, top + 0.2, 0], [-4.6, top + 1.0, 0], [-2.5, top + 1.9, 0], [0, top + 2.1, 0], [2.5, top + 1.9, 0], [4.6, top + 1.0, 0], [5.4, top + 0.2, 0]], 2.1, 0.5, 'Bridle(0.4)'),
      ...[-5.2, 5.2].map((x) => group([block([x - 1.1, top, -1.3], [x + 1.1, top + 0.14, 1.3], 0.06), cylinder([x, top + 0.5, -1.3], [x, top + 0.5, 1.3], 0.22), ...[-0.9, 0.9].map((z) => sphere([x + Math.sign(x) * 0.7, top + 0.14, z], 0.18))], { material: o.brass })),
    ];
    return group([`object { ${lidShell(o, [])} translate ${v(0, -LID, 0)} rotate 180*x translate ${v(0, TALL, Z)} }`, ...(o.handle ? handle : []), ...onTop.map((s) => group([s], { at: [0, top, 0] }))]);
  };

  return { X, Z, TALL, LID, body, lid, lidPoint, shutLid, walls };
}

/** A lined board in a wooden frame `deep` high, its face at y = 0. */
export function board(o, size, recesses, folder, deep = 3) {
  const [w, d] = size;
  const deepest = Math.max(...recesses.map((r) => r.depth));
  const file = reliefMap(folder, size, recesses, deepest);
  const [ex, ez] = [w / 2 + 0.55, d / 2 + 0.55];
  return group([
    reliefSolid(file, size, deepest, o.lining),
    ...[-1, 1].map((s) => block([-ex, -deep, s > 0 ? d / 2 - 0.02 : -ez], [ex, 0.25, s > 0 ? ez : -d / 2 + 0.02], 0.08, o.boards(8))),
    ...[-1, 1].map((s) => `object { ${block([-d / 2, -deep, -0.28], [d / 2, 0.25, 0.28], 0.08, o.boards(9))} rotate 90*y translate ${n(s * (w / 2 + 0.27))}*x }`),
  ]);
}

/** Papers of any family: a book with a paper label, a sheet, a card. */
export const book = ([w, d, t], cover, lines, { edges = 'Paper(0.6)', label } = {}) =>
  group([
    block([-w / 2 + 0.12, 0.05, -d / 2 + 0.12], [w / 2 - 0.15, t - 0.05, d / 2 - 0.12], 0.02, edges),
    block([-w / 2, 0, -d / 2], [w / 2, 0.1, d / 2], 0.03, cover),
    block([-w / 2, t - 0.1, -d / 2], [w / 2, t, d / 2], 0.03, cover),
    block([-w / 2 - 0.03, 0, -d / 2], [-w / 2 + 0.14, t, d / 2], 0.06, cover),
    label && slab([[-w * 0.36, d * 0.08], [w * 0.36, d * 0.08], [w * 0.36, d * 0.36], [-w * 0.36, d * 0.36]], 0.015, 'Paper(0.6)', t),
    ...lines.map(([text, h, z, font = 'serif', ink = 'Ink(0)']) => words(text, h, { font, material: ink, depth: 0.004, at: [0, t + 0.018, z] })),
  ]);
export const leaf = ([w, d], paper, lines) => group([slab([[-w / 2, -d / 2], [w / 2, -d / 2 + 0.05], [w / 2 - 0.04, d / 2], [-w / 2, d / 2 - 0.06]], 0.04, paper), ...lines.map(([text, h, z, font = 'serif']) => words(text, h, { font, material: 'Ink(0)', depth: 0.004, at: [0, 0.042, z] }))]);
