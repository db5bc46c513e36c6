// node content/.pictures/walk-through.mjs [--out DIR] item …
// A film of an item's pictures: in each, from one part that is pointed out to the next. It needs no more than the pictures.
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
const near = 0.36;
/** In milliseconds: how long a view is held, how long the way to the next takes, and one step of it. */
const hold = 3500;
const way = 1000;
const step = 125;
/** Of the pictures after the first, no more parts than this are gone up to. */
const furtherParts = 2;

const between = (a, b, share) => a + (b - a) * share;
const eased = (share) => share * share * (3 - 2 * share);

/** What is seen, in shares of the picture's width; kept inside the picture. */
function frameAt([x, y], wide, ratio) {
  const high = (wide * size.height) / size.width / ratio;
  const kept = (at, extent) => Math.min(Math.max(at - extent / 2, 0), 1 - extent);
  return { left: kept(x, wide), top: kept(y, high), wide, high };
}

/** The views of the film, in order: all of a picture, then the parts in it that no earlier picture has shown. */
async function viewsOf(item) {
  const views = [];
  const shown = new Set();
  for (const [i, photo] of item.photos.entries()) {
    const bytes = readFileSync(join(items, item.id, photo.file));
    const { width, height } = await sharp(bytes).metadata();
    const ratio = height / width;
    const whole = frameAt([0.5, 0.5], Math.min(1, ratio * (size.width / size.height)), ratio);
    const fresh = (photo.callouts ?? []).filter(({ part }) => !shown.has(part)).slice(0, i === 0 ? undefined : furtherParts);
    for (const { part } of fresh) shown.add(part);
    const seen = ({ left, top, wide, high }) =>
      sharp(bytes)
        .extract({ left: Math.round(left * width), top: Math.round(top * height), width: Math.floor(wide * width), height: Math.floor(high * height) })
        .resize(size.width, size.height, { fit: 'fill' });
    views.push({ photo, seen, frame: whole }, ...fresh.map(({ part, at }) => ({ photo, seen, part, frame: frameAt(at, near, ratio) })));
  }
  return [...views, views[0]];
}

/** Between two views: a way over one picture, or one picture fading into the next. */
async function onTheWay(from, to, share) {
  if (from.photo === to.photo) {
    return to.seen(Object.fromEntries(Object.entries(from.frame).map(([key, value]) => [key, between(value, to.frame[key], share)])));
  }
  const above = await to.seen(to.frame).ensureAlpha(share).png().toBuffer();
  return sharp(await from.seen(from.frame).composite([{ input: above }]).removeAlpha().png().toBuffer());
}

async function walkThrough(item) {
  const views = await viewsOf(item);
  const frames = [];
  const moments = [];
  let at = 0;
  for (const [i, view] of views.entries()) {
    if (i > 0) {
      for (let t = step; t < way; t += step) frames.push({ at: at + t, picture: await onTheWay(views[i - 1], view, eased(t / way)), quality: 28 });
      at += way;
    }
    frames.push({ at, picture: view.seen(view.frame), quality: 68 });
    if (view.part) moments.push({ part: view.part, seconds: Math.round(at / 1000) });
    at += hold;
  }
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
    '  caption: "Rendered pictures of an invented object, and in each one part after another. There is no sound."',
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
