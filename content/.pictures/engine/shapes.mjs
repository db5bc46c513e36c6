// Solids as text for the renderer. Lengths in centimetres, y up, every texture the name of a material macro.

export const n = (x) => Number(x.toFixed(4)).toString();
export const v = (x, y, z) => `<${n(x)},${n(y)},${n(z)}>`;
const tex = (material) => (material ? ` ${material}` : '');

/** Groups solids; transforms are applied in the order given. */
export function group(parts, { material, rotate, at, scale } = {}) {
  const moves = [
    scale && `scale ${Array.isArray(scale) ? v(...scale) : n(scale)}`,
    rotate && `rotate ${v(...rotate)}`,
    at && `translate ${v(...at)}`,
  ];
  return `union { ${parts.filter(Boolean).join('\n')}${tex(material)} ${moves.filter(Boolean).join(' ')} }`;
}

export const cylinder = (a, b, r, material) => `cylinder { ${v(...a)}, ${v(...b)}, ${n(r)}${tex(material)} }`;
export const cone = (a, ra, b, rb, material) => `cone { ${v(...a)}, ${n(ra)}, ${v(...b)}, ${n(rb)}${tex(material)} }`;
export const sphere = (c, r, material) => `sphere { ${v(...c)}, ${n(r)}${tex(material)} }`;
export const torus = (R, r, { at = [0, 0, 0], rotate = [0, 0, 0], material } = {}) =>
  `torus { ${n(R)}, ${n(r)}${tex(material)} rotate ${v(...rotate)} translate ${v(...at)} }`;

/** A box with its edges broken by r. */
export function block([x0, y0, z0], [x1, y1, z1], r, material) {
  if (r <= 0) return `box { ${v(x0, y0, z0)}, ${v(x1, y1, z1)}${tex(material)} }`;
  return `object { Round_Box_Union(${v(x0, y0, z0)}, ${v(x1, y1, z1)}, ${n(r)})${tex(material)} }`;
}

export const cut = (solid, holes, material) =>
  holes.length ? `difference { ${solid}\n${holes.join('\n')}${tex(material)} }` : `object { ${solid}${tex(material)} }`;

export { turned } from './turned.mjs';

/** A bead drawn along points: wire, cord, stitched edge. */
export function wire(points, r, material) {
  const list = points.map((p) => `${v(...p)}, ${n(Array.isArray(r) ? r[0] : r)}`);
  return `sphere_sweep { linear_spline ${points.length}, ${list.join(', ')} tolerance 0.0001${tex(material)} }`;
}

/** Points of a smooth curve through the given ones (Catmull-Rom), for wires and straps. */
export function smooth(points, steps = 10) {
  const out = [];
  const p = (i) => points[Math.min(Math.max(i, 0), points.length - 1)];
  for (let i = 0; i < points.length - 1; i += 1)
    for (let s = 0; s < steps; s += 1) {
      const t = s / steps;
      out.push(
        [0, 1, 2].map((k) => {
          const [a, b, c, d] = [p(i - 1)[k], p(i)[k], p(i + 1)[k], p(i + 2)[k]];
          return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
        }),
      );
    }
  out.push(points.at(-1));
  return out;
}

/** A flat outline in x and z, given as [x, z] points, of thickness h standing on y = 0. */
export function slab(outline, h, material, y = 0) {
  const closed = [...outline, outline[0]].map(([x, z]) => `<${n(x)},${n(z)}>`);
  return `prism { linear_sweep linear_spline ${n(y)}, ${n(y + h)}, ${closed.length}, ${closed.join(',')}${tex(material)} }`;
}

/** Rounded rectangle as an outline for slab. */
export function roundedOutline(w, d, r, steps = 8) {
  const out = [];
  for (const [cx, cz, from] of [[w / 2 - r, d / 2 - r, 0], [-w / 2 + r, d / 2 - r, 90], [-w / 2 + r, -d / 2 + r, 180], [w / 2 - r, -d / 2 + r, 270]])
    for (let s = 0; s <= steps; s += 1) {
      const a = ((from + (s * 90) / steps) * Math.PI) / 180;
      out.push([cx + r * Math.cos(a), cz + r * Math.sin(a)]);
    }
  return out;
}

/** Words lying flat, read from the front, centred on x = 0 and z = 0, h tall, from y - depth to y + depth. */
export function words(text, h, { font = 'serif', depth = 0.02, material, at = [0, 0, 0], rotate = [0, 0, 0] } = {}) {
  const name = { serif: 'FontSerif', sans: 'FontSans', bold: 'FontBold' }[font];
  const safe = text.replaceAll('\\', '').replaceAll('"', '');
  return `object { Flat_Words(${name}, "${safe}", ${n(h)}, ${n(depth)})${tex(material)} rotate ${v(...rotate)} translate ${v(...at)} }`;
}

/** A band of thickness t along [x, z] points, h tall, standing on edge: tweezers, springs, a bent bar. */
export function ribbon(points, t, h, material, y = 0) {
  const normalAt = (i) => {
    const [a, b] = [points[Math.max(i - 1, 0)], points[Math.min(i + 1, points.length - 1)]];
    const l = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    return [-(b[1] - a[1]) / l, (b[0] - a[0]) / l];
  };
  const width = (i) => (typeof t === 'function' ? t(i / (points.length - 1)) : t) / 2;
  const side = (s) => points.map(([x, z], i) => [x + s * width(i) * normalAt(i)[0], z + s * width(i) * normalAt(i)[1]]);
  return slab([...side(1), ...side(-1).reverse()], h, material, y);
}

/** Points on a smooth curve in x and z. */
export const smoothFlat = (points, steps = 8) => smooth(points.map(([x, z]) => [x, 0, z]), steps).map(([x, , z]) => [x, z]);

/** Lays a solid that was turned about y along x, with its axis at height y. */
export const lying = (solid, y, { at = [0, 0], turn = 0 } = {}) =>
  `object { ${solid} rotate -90*z rotate ${n(turn)}*y translate ${v(at[0], y, at[1])} }`;

/** A strap: a flat band w wide and t thick along points, its face turned up. */
export function strap(points, w, t, material) {
  const path = smooth(points, 6);
  const quads = [];
  const ring = (i) => {
    const [a, b] = [path[Math.max(i - 1, 0)], path[Math.min(i + 1, path.length - 1)]];
    const [dx, dz] = [b[0] - a[0], b[2] - a[2]];
    const l = Math.hypot(dx, dz) || 1;
    const [nx, nz] = [(-dz / l) * (w / 2), (dx / l) * (w / 2)];
    const [x, y, z] = path[i];
    const e = t * 0.45;
    const r = 1 - e / (w / 2);
    return [[nx, 0, nz], [nx, t - e, nz], [nx * r, t, nz * r], [-nx * r, t, -nz * r], [-nx, t - e, -nz], [-nx, 0, -nz]].map((o) => [x + o[0], y + o[1], z + o[2]]);
  };
  for (let i = 0; i < path.length; i += 1) quads.push(ring(i));
  const side = 6;
  const vertices = quads.flat();
  const faces = [];
  for (let i = 0; i + 1 < quads.length; i += 1)
    for (let k = 0; k < side; k += 1) {
      const [a, b, c, d] = [i * side + k, i * side + ((k + 1) % side), (i + 1) * side + k, (i + 1) * side + ((k + 1) % side)];
      faces.push([a, b, c], [b, d, c]);
    }
  for (const base of [0, (quads.length - 1) * side]) for (let k = 1; k + 1 < side; k += 1) faces.push([base, base + k, base + k + 1]);
  return `mesh2 { vertex_vectors { ${vertices.length}, ${vertices.map((p) => v(...p)).join(',')} } face_indices { ${faces.length}, ${faces.map((f) => `<${f}>`).join(',')} } ${material} }`;
}

/** A cloth or a sheet: heights given at a grid of [x, z], as a smooth surface. */
export function sheet(x0, z0, x1, z1, nx, nz, height, material) {
  const at = (i, j) => {
    const [x, z] = [x0 + ((x1 - x0) * i) / nx, z0 + ((z1 - z0) * j) / nz];
    const h = height(x, z);
    return Array.isArray(h) ? h : [x, h, z];
  };
  const points = [];
  const normals = [];
  for (let j = 0; j <= nz; j += 1)
    for (let i = 0; i <= nx; i += 1) {
      points.push(at(i, j));
      const [a, b, c, d] = [at(i - 1, j), at(i + 1, j), at(i, j - 1), at(i, j + 1)];
      const [u, w] = [b.map((q, k) => q - a[k]), d.map((q, k) => q - c[k])];
      normals.push([w[1] * u[2] - w[2] * u[1], w[2] * u[0] - w[0] * u[2], w[0] * u[1] - w[1] * u[0]]);
    }
  const faces = [];
  for (let j = 0; j < nz; j += 1)
    for (let i = 0; i < nx; i += 1) {
      const a = j * (nx + 1) + i;
      faces.push([a, a + 1, a + nx + 1], [a + 1, a + nx + 2, a + nx + 1]);
    }
  return `mesh2 { vertex_vectors { ${points.length}, ${points.map((p) => v(...p)).join(',')} } normal_vectors { ${normals.length}, ${normals.map((p) => v(...p)).join(',')} } face_indices { ${faces.length}, ${faces.map((f) => `<${f}>`).join(',')} } ${material} }`;
}
