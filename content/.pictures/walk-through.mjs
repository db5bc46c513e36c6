// node content/.pictures/walk-through.mjs [--out DIR] item …
// A film of an item's first picture, from one part that is pointed out to the next. It needs no more than the picture.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { readItems } from './engine/records.mjs';
import { film } from './engine/webm.mjs';

const sharp = createRequire(import.meta.url)('sharp');
const { values, positionals } = parseArgs({ allowPositionals: true, options: { out: { type: 'string' } } });
const items = join(dirname(fileURLToPath(import.meta.url)), '../items');

const size = { width: 960, height: 540 };
/** How much of the picture's width is seen of a part. */
const near = 0.34;
/** In milliseconds: how long a part is shown, how long the way to the next takes, and one step of it. */
const hold = 4000;
const way = 1000;
const step = 125;

const between = (a, b, share) => a + (b - a) * share;
const eased = (share) => share * share * (3 - 2 * share);

/** What is seen, in shares of the picture's width; kept inside the picture. */
function frameAt([x, y], wide, ratio) {
  const high = (wide * size.height) / size.width / ratio;
  const kept = (at, extent) => Math.min(Math.max(at - extent / 2, 0), 1 - extent);
  return { left: kept(x, wide), top: kept(y, high), wide, high };
}

async function walkThrough(item) {
  const [photo] = item.photos;
  const bytes = readFileSync(join(items, item.id, photo.file));
  const { width, height } = await sharp(bytes).metadata();
  const ratio = height / width;
  const whole = frameAt([0.5, 0.5], Math.min(1, ratio * (size.width / size.height)), ratio);
  const stops = [{ frame: whole }, ...photo.callouts.map(({ part, at }) => ({ part, frame: frameAt(at, near, ratio) })), { frame: whole }];
  const seen = ({ left, top, wide, high }) =>
    sharp(bytes)
      .extract({ left: Math.round(left * width), top: Math.round(top * height), width: Math.round(wide * width), height: Math.round(high * height) })
      .resize(size.width, size.height, { fit: 'fill' });
  const frames = [];
  const moments = [];
  let at = 0;
  stops.forEach((stop, i) => {
    if (i > 0) {
      const from = stops[i - 1].frame;
      for (let t = step; t < way; t += step) {
        const share = eased(t / way);
        const mixed = Object.fromEntries(Object.entries(from).map(([key, value]) => [key, between(value, stop.frame[key], share)]));
        frames.push({ at: at + t, picture: seen(mixed), quality: 30 });
      }
      at += way;
    }
    frames.push({ at, picture: seen(stop.frame), quality: 68 });
    if (stop.part) moments.push({ part: stop.part, seconds: Math.round(at / 1000) });
    at += hold;
  });
  return { bytes: await film({ ...size, duration: at, frames }), moments };
}

const clock = (seconds) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;

/** Puts the film into the item's front matter, in place of the one that it had. */
function writeVideo(file, moments) {
  const lines = readFileSync(file, 'utf8').split('\n');
  const end = lines.indexOf('---', 1);
  const start = lines.findIndex((l, i) => i < end && l.startsWith('video:'));
  const after = start < 0 ? end : lines.findIndex((l, i) => i > start && !/^\s/.test(l));
  const block = [
    'video:',
    '  src: walk-through.webm',
    '  caption: "Rendered picture of an invented object: one part after another. There is no sound."',
    '  moments:',
    ...moments.map(({ part, seconds }) => `    - { part: ${part}, at: "${clock(seconds)}" }`),
  ];
  lines.splice(start < 0 ? end : start, start < 0 ? 0 : after - start, ...block);
  writeFileSync(file, lines.join('\n'));
}

for (const item of readItems(items)) {
  if (!positionals.includes(item.id)) continue;
  const { bytes, moments } = await walkThrough(item);
  const folder = values.out ?? join(items, item.id);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'walk-through.webm'), bytes);
  if (!values.out) writeVideo(item.file, moments);
  console.log(`${item.id}: ${moments.length} parts, ${(bytes.length / 1e6).toFixed(1)} MB`);
}
