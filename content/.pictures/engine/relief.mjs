import { createHash } from 'node:crypto';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { v } from './shapes.mjs';

/** Signed distance to the edge of a recess, negative inside. */
function distance(shape, x, z) {
  const [kind, ...a] = shape;
  if (kind === 'circle') return Math.hypot(x - a[0], z - a[1]) - a[2];
  if (kind === 'capsule') {
    const [x0, z0, x1, z1, r0, r1 = r0] = a;
    const [dx, dz] = [x1 - x0, z1 - z0];
    const t = Math.min(1, Math.max(0, ((x - x0) * dx + (z - z0) * dz) / (dx * dx + dz * dz)));
    return Math.hypot(x - x0 - dx * t, z - z0 - dz * t) - (r0 + (r1 - r0) * t);
  }
  const [cx, cz, w, d, r = 0.3, turn = 0] = a;
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const px = Math.abs((x - cx) * c + (z - cz) * s) - w / 2 + r;
  const pz = Math.abs(-(x - cx) * s + (z - cz) * c) - d / 2 + r;
  return Math.hypot(Math.max(px, 0), Math.max(pz, 0)) + Math.min(Math.max(px, pz), 0) - r;
}

/** The box that holds shapes, widened by a margin: least and greatest x, least and greatest z. */
function boundsOf(shapes, margin) {
  const boxes = shapes.map(([kind, ...a]) => {
    if (kind === 'circle') return [a[0] - a[2], a[0] + a[2], a[1] - a[2], a[1] + a[2]];
    if (kind === 'capsule') {
      const r = Math.max(a[4], a[5] ?? a[4]);
      return [Math.min(a[0], a[2]) - r, Math.max(a[0], a[2]) + r, Math.min(a[1], a[3]) - r, Math.max(a[1], a[3]) + r];
    }
    const reach = a[5] ? Math.hypot(a[2], a[3]) / 2 : undefined;
    return [a[0] - (reach ?? a[2] / 2), a[0] + (reach ?? a[2] / 2), a[1] - (reach ?? a[3] / 2), a[1] + (reach ?? a[3] / 2)];
  });
  return [0, 1, 2, 3].map((k) => (k % 2 ? Math.max(...boxes.map((b) => b[k])) + margin : Math.min(...boxes.map((b) => b[k])) - margin));
}

/** How far the cloth has gone down at a distance from the edge: over the lip, down the wall, into the corner. */
function fall(d) {
  if (d >= 0.16) return 0;
  if (d <= -0.3) return 1;
  const t = (0.16 - d) / 0.46;
  return t * t * t * (t * (6 * t - 15) + 10);
}

const wave = (x, z) => Math.sin(x * 0.61 + 1.3 * Math.sin(z * 0.43)) * Math.sin(z * 0.73 + 0.9 * Math.sin(x * 0.37));

/** Draws a lined board with its recesses as a 16-bit height map (PGM), 50 points a centimetre; answers with its path. */
export function reliefMap(folder, [w, d], recesses, deepest) {
  const file = join(folder, `relief-${createHash('sha256').update(JSON.stringify([w, d, recesses, deepest])).digest('hex').slice(0, 16)}.pgm`);
  if (existsSync(file)) return file;
  const [nx, nz] = [Math.round(w * 50), Math.round(d * 50)];
  const heights = new Float32Array(nx * nz);
  const [xs, zs] = [Array.from({ length: nx }, (_, i) => (i / (nx - 1) - 0.5) * w), Array.from({ length: nz }, (_, j) => (0.5 - j / (nz - 1)) * d)];
  for (let j = 0; j < nz; j += 1)
    for (let i = 0; i < nx; i += 1) {
      const edge = Math.min(w / 2 - Math.abs(xs[i]), d / 2 - Math.abs(zs[j]));
      heights[j * nx + i] = 0.006 * wave(xs[i], zs[j]) - (edge < 1 ? 0.06 * Math.exp(-edge / 0.12) : 0);
    }
  for (const { shapes, depth } of recesses) {
    const [x0, x1, z0, z1] = boundsOf(shapes, 0.6);
    for (let j = 0; j < nz; j += 1) {
      if (zs[j] < z0 || zs[j] > z1) continue;
      for (let i = 0; i < nx; i += 1) {
        const x = xs[i];
        if (x < x0 || x > x1) continue;
        const near = Math.min(...shapes.map((shape) => distance(shape, x, zs[j])));
        const at = j * nx + i;
        if (near < 0.16) heights[at] = Math.min(heights[at], -depth * fall(near) + 0.012 * wave(x * 2.3, zs[j] * 2.1));
        else if (near < 0.6) heights[at] -= 0.02 * (1 - (near - 0.16) / 0.44) ** 2;
      }
    }
  }
  const out = Buffer.alloc(nx * nz * 2);
  heights.forEach((y, i) => out.writeUInt16BE(Math.round(Math.min(65535, Math.max(0, (1 + y / (deepest + 0.1)) * 64000))), i * 2));
  writeFileSync(file, Buffer.concat([Buffer.from(`P5\n${nx} ${nz}\n65535\n`), out]));
  return file;
}

/** The lined board as a solid: its upper face at y = 0. */
export function reliefSolid(file, [w, d], deepest, material) {
  const tall = ((deepest + 0.1) * 65535) / 64000;
  return `height_field { pgm "${file}" smooth translate ${v(-0.5, 0, -0.5)} scale ${v(w, tall, d)} translate ${v(0, -(deepest + 0.1), 0)} ${material} }`;
}
