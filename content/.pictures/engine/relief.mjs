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
  const out = Buffer.alloc(nx * nz * 2);
  for (let j = 0; j < nz; j += 1)
    for (let i = 0; i < nx; i += 1) {
      const x = (i / (nx - 1) - 0.5) * w;
      const z = (0.5 - j / (nz - 1)) * d;
      let y = 0.006 * wave(x, z);
      const edge = Math.min(w / 2 - Math.abs(x), d / 2 - Math.abs(z));
      y -= 0.06 * Math.exp(-edge / 0.12);
      for (const { shapes, depth } of recesses) {
        const near = Math.min(...shapes.map((shape) => distance(shape, x, z)));
        if (near < 0.16) y = Math.min(y, -depth * fall(near) + 0.012 * wave(x * 2.3, z * 2.1));
        else if (near < 0.6) y -= 0.02 * (1 - (near - 0.16) / 0.44) ** 2;
      }
      out.writeUInt16BE(Math.round(Math.min(65535, Math.max(0, (1 + y / (deepest + 0.1)) * 64000))), (j * nx + i) * 2);
    }
  writeFileSync(file, Buffer.concat([Buffer.from(`P5\n${nx} ${nz}\n65535\n`), out]));
  return file;
}

/** The lined board as a solid: its upper face at y = 0. */
export function reliefSolid(file, [w, d], deepest, material) {
  const tall = ((deepest + 0.1) * 65535) / 64000;
  return `height_field { pgm "${file}" smooth translate ${v(-0.5, 0, -0.5)} scale ${v(w, tall, d)} translate ${v(0, -(deepest + 0.1), 0)} ${material} }`;
}
