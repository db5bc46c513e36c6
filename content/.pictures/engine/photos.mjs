import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { cameraAt } from './camera.mjs';

/** A picture's entry in the item: its words, and where its parts fall, from the same camera. */
export function photoOf(shot, scene, o, { point, captions }) {
  const { project } = cameraAt(scene.camera);
  const names = (shot.point ?? point[shot.file] ?? [...scene.points.keys()]).filter((id) => scene.points.has(id) && o.units.get(id)?.some(o.there));
  const callouts = names
    .map((part) => ({ part, at: project(scene.points.get(part)).map((x) => Math.round(x * 1000) / 1000) }))
    .filter(({ at }) => at.every((x) => x > 0.01 && x < 0.99));
  return { file: `${shot.file}.jpg`, alt: shot.alt, caption: `Rendered picture of an invented object: ${shot.caption ?? captions[shot.file]}`, callouts };
}

const entry = (photo) =>
  [
    `  - file: ${photo.file}`,
    `    alt: ${JSON.stringify(photo.alt)}`,
    `    caption: ${JSON.stringify(photo.caption)}`,
    ...(photo.callouts.length ? ['    callouts:', ...photo.callouts.map(({ part, at }) => `      - { part: ${part}, at: [${at.join(', ')}] }`)] : []),
  ].join('\n');

/** Puts the pictures that exist into the item's front matter, in place of those that it had. */
export function writePhotos(file, photos) {
  const here = photos.filter((p) => existsSync(join(dirname(file), p.file)));
  const lines = readFileSync(file, 'utf8').split('\n');
  const end = lines.indexOf('---', 1);
  const start = lines.findIndex((l, i) => i < end && l.startsWith('photos:'));
  const after = start < 0 ? end : lines.findIndex((l, i) => i > start && !/^\s/.test(l));
  const block = here.length ? ['photos:', ...here.map(entry)] : [];
  lines.splice(start < 0 ? end : start, start < 0 ? 0 : after - start, ...block);
  const text = lines.join('\n');
  if (text !== readFileSync(file, 'utf8')) writeFileSync(file, text);
}
