import { block, group, words, slab } from '../engine/shapes.mjs';

/** Directions for use, lying flat with its foot towards -z. */
export function handbook(c) {
  const second = c.model === 'directions-second-edition' || c.pattern === '2';
  const cover = c.pattern === '3' ? 'GreyBoards(0.3)' : `Oilcloth(${c.wear})`;
  const [w, d, t] = [9.4, 14.4, 0.8];
  return group([
    block([-w / 2 + 0.12, 0.05, -d / 2 + 0.12], [w / 2 - 0.15, t - 0.05, d / 2 - 0.12], 0.02, 'Paper(0.6)'),
    block([-w / 2, 0, -d / 2], [w / 2, 0.09, d / 2], 0.03, cover),
    block([-w / 2, t - 0.09, -d / 2], [w / 2, t, d / 2], 0.03, cover),
    block([-w / 2 - 0.02, 0, -d / 2], [-w / 2 + 0.12, t, d / 2], 0.05, cover),
    slab([[-3.3, 1.6], [3.3, 1.6], [3.3, 5.6], [-3.3, 5.6]], 0.02, 'Paper(0.7)', t),
    words('DIRECTIONS', 0.62, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, t + 0.022, 4.7] }),
    words('FOR THE USE OF THE', 0.28, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, t + 0.022, 4.0] }),
    words('SURVEY OUTFIT', 0.46, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, t + 0.022, 3.2] }),
    words(c.pattern === '3' ? '1921' : second ? '1905' : '1897', 0.34, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, t + 0.022, 2.2] }),
  ]);
}

export function issueCard(c) {
  return group([
    slab([[-4.1, -5.6], [4.1, -5.6], [4.1, 5.6], [-4.1, 5.6]], 0.06, 'Buff(0.5)'),
    words('MINERAL SURVEY OF VARRANY', 0.34, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, 0.062, 4.6] }),
    words('ISSUED TO  GRAUVEN', 0.42, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, 0.062, 3.5] }),
    c.mark && words(`SET ${c.mark}`, 0.6, { font: 'bold', material: 'Ink(0)', depth: 0.004, at: [0, 0.062, 2.3] }),
    words('SIGN AND RETURN', 0.36, { font: 'serif', material: 'Ink(0)', depth: 0.004, at: [0, 0.062, 1.1] }),
  ]);
}
