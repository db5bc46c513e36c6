import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cameraAt } from './camera.mjs';
import { develop } from './develop.mjs';
import { v } from './shapes.mjs';

/** Writes a scene as text, renders it on one thread, develops it to a JPEG; answers with the seconds that it took. */
export async function render({ scene, name, work, fonts, common, out, width: wide, draft, exposure }) {
  mkdirSync(work, { recursive: true });
  const [width, height] = [Math.round(wide), Math.round(wide * 0.75)];
  const camera = cameraAt(scene.camera);
  const [centre, span, ground = 0] = scene.room;
  const text = [
    `#version 3.7; #declare Draft = ${draft ? 1 : 0};`,
    ...Object.entries(fonts).map(([k, file]) => `#declare ${k} = "${file}";`),
    '#include "shapes.inc"', '#include "room.inc"', '#include "materials.inc"', '#include "words.inc"',
    camera.text,
    `Room(${v(...centre)}, ${span}, ${ground})`,
    ...scene.solids.filter(Boolean),
  ].join('\n');
  const [pov, png] = [join(work, `${name}.pov`), join(work, `${name}.png`)];
  writeFileSync(pov, text);
  const started = Date.now();
  try {
    execFileSync('nice', ['-n', '10', 'povray', `+I${pov}`, `+O${png}`, `+L${common}`, `+W${width}`, `+H${height}`, '+WT1', '+FN16', '-D', '+Q11', ...(draft ? ['+A0.3', '+AM1', '+R2'] : ['+A0.2', '+AM2', '+R1']), '-J', '+BS16'], { stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 1 << 28, cwd: work });
  } catch (error) {
    throw new Error(`${name}: ${String(error.stderr).split('\n').filter((l) => /rror|File|line/i.test(l)).slice(-6).concat(String(error.stderr).slice(-600)).join('\n') || String(error.stderr).slice(-1500)}`);
  }
  await develop(png, out, { exposure });
  return (Date.now() - started) / 1000;
}
