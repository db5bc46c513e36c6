import { v } from './shapes.mjs';

/** The profile as runs of points that are smooth within and meet at sharp edges. */
function runsOf(profile) {
  const toward = (a, b, d) => {
    const t = Math.min(d / (Math.hypot(b[0] - a[0], b[1] - a[1]) || 1), 0.48);
    return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
  };
  const runs = [[profile[0]]];
  for (let i = 1; i < profile.length; i += 1) {
    const [point, last, next] = [profile[i], runs.at(-1).at(-1), profile[i + 1]];
    if (!next || !point[2]) {
      runs.at(-1).push(point);
      if (next) runs.push([point]);
      continue;
    }
    const [a, b] = [toward(point, profile[i - 1].length ? last : point, point[2]), toward(point, next, point[2])];
    for (let s = 0; s <= 7; s += 1) {
      const t = s / 7;
      runs.at(-1).push([0, 1].map((k) => (1 - t) ** 2 * a[k] + 2 * t * (1 - t) * point[k] + t * t * b[k]));
    }
  }
  return runs;
}

/** Woods have their grain along x; a turned piece has it along its axis. */
const WOOD = /^(Oak|OakPale|Mahogany|AshWood|Boxwood|Teak|Deal)\(/;

const superellipse = (a, p) => (Math.abs(Math.cos(a)) ** p + Math.abs(Math.sin(a)) ** p) ** (-1 / p);

/**
 * A solid of revolution about y from [radius, height, fillet] points, as a smooth mesh.
 * `square` says how far the section at a height is a rounded square (0 a circle, 1 a square of that half-width).
 */
export function turned(profile, material = '', square) {
  const around = Math.max(...profile.map(([r]) => r)) > 0.8 ? 72 : 40;
  const [points, normals, faces] = [[], [], []];
  const put = (r, y, a) => {
    const k = square ? 1 + square(y) * (superellipse(a, 9) - 1) : 1;
    return [r * k * Math.cos(a), y, r * k * Math.sin(a)];
  };
  for (const run of runsOf(profile)) {
    const start = points.length;
    const slopes = run.map((_, i) => {
      const [p, q] = [run[Math.max(i - 1, 0)], run[Math.min(i + 1, run.length - 1)]];
      return [q[0] - p[0], q[1] - p[1]];
    });
    run.forEach(([r, y], i) => {
      const [dr, dy] = slopes[i];
      const length = Math.hypot(dr, dy) || 1;
      for (let j = 0; j <= around; j += 1) {
        const a = (j / around) * 2 * Math.PI;
        points.push(put(Math.max(r, 0), y, a));
        let turn = a;
        if (square && r > 0) {
          const [p, q] = [put(r, y, a - 0.02), put(r, y, a + 0.02)];
          turn = Math.atan2(-(q[0] - p[0]), q[2] - p[2]);
        }
        normals.push([(dy / length) * Math.cos(turn), -dr / length, (dy / length) * Math.sin(turn)]);
      }
    });
    for (let i = 0; i + 1 < run.length; i += 1)
      for (let j = 0; j < around; j += 1) {
        const a = start + i * (around + 1) + j;
        const b = a + around + 1;
        if (run[i][0] > 1e-6) faces.push([a, a + 1, b]);
        if (run[i + 1][0] > 1e-6) faces.push([a + 1, b + 1, b]);
      }
  }
  const list = (rows) => `${rows.length}, ${rows.map((p) => v(...p)).join(',')}`;
  return `mesh2 { vertex_vectors { ${list(points)} } normal_vectors { ${list(normals)} } face_indices { ${faces.length}, ${faces.map((f) => `<${f}>`).join(',')} } inside_vector <0.03,0.05,1> ${WOOD.test(material) ? `rotate -90*z ${material} rotate 90*z` : material} }`;
}
