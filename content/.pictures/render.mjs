// node content/.pictures/render.mjs [--draft 0.5] [--out DIR] [--words | --pictures] [--missing] [item …] [picture …] [item/picture …]
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { photoOf, writePhotos } from './engine/photos.mjs';
import { unpackFont } from './engine/fonts.mjs';
import { readItems, readVariants, readYaml } from './engine/records.mjs';
import { render } from './engine/render.mjs';
import * as gauging from './gauging-outfit/outfit.mjs';
import * as testing from './line-testing-set/outfit.mjs';
import * as survey from './survey-outfit/outfit.mjs';
import * as surveyScenes from './survey-outfit/scenes.mjs';

const families = new Map([
  ['survey-outfit', { outfitOf: survey.outfitOf, scenes: surveyScenes }],
  ['gauging-outfit', gauging],
  ['line-testing-set', testing],
]);

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '../..');
const { values, positionals } = parseArgs({ allowPositionals: true, options: { draft: { type: 'string' }, out: { type: 'string' }, words: { type: 'boolean' }, pictures: { type: 'boolean' }, missing: { type: 'boolean' } } });
const work = join(tmpdir(), 'fittedcase-pictures');
mkdirSync(work, { recursive: true });

const fonts = { FontSerif: 'alegreya-latin-500-normal', FontBold: 'alegreya-latin-700-normal', FontSans: '../../ibm-plex-sans-condensed/files/ibm-plex-sans-condensed-latin-500-normal' };
for (const [name, file] of Object.entries(fonts)) {
  const ttf = join(work, `${name}.ttf`);
  unpackFont(join(root, 'node_modules/@fontsource/alegreya/files', `${file}.woff`), ttf);
  fonts[name] = ttf;
}

const wanted = (id, file) => positionals.length === 0 || positionals.some((p) => p === id || p === `${id}/${file}` || p === file);
const camel = (name) => name.replace(/-(.)/g, (_, c) => c.toUpperCase());

/** The pictures to be made, and what is written into their items. */
function* jobsOf(family, { outfitOf, scenes }) {
  const variants = readVariants(join(root, 'schemas/reference', family));
  const layout = readYaml(join(here, family, 'layout.yaml'));
  const shots = readYaml(join(here, family, 'shots.yaml'));
  for (const item of readItems(join(root, 'content/items'))) {
    const plan = shots.items[item.id];
    if (!plan || !variants.has(item.variant) || !plan.shots.some((shot) => wanted(item.id, shot.file))) continue;
    const o = outfitOf(item, variants, plan);
    const sceneOf = (shot) => scenes[camel(shot.scene ?? shot.file)](layout, o, work, plan, shot);
    const photos = writes ? plan.shots.map((shot) => photoOf(shot, sceneOf(shot), o, shots)) : [];
    if (writes) writePhotos(item.file, photos);
    for (const [rank, shot] of plan.shots.entries()) {
      const out = values.out ? join(values.out, `${item.id}-${shot.file}.jpg`) : join(root, 'content/items', item.id, `${shot.file}.jpg`);
      if (!wanted(item.id, shot.file) || (values.missing && existsSync(out))) continue;
      yield { rank, item, shot, photos, out, scene: () => sceneOf(shot), exposure: shots.exposure };
    }
  }
}

const writes = !values.out && !values.draft && !values.pictures;
const jobs = [...families].flatMap(([family, models]) => [...jobsOf(family, models)]).sort((a, b) => a.rank - b.rank);
for (const { rank, item, shot, photos, out, scene, exposure } of values.words ? [] : jobs) {
  // Another run may have made it meanwhile.
  if (values.missing && existsSync(out)) continue;
  mkdirSync(dirname(out), { recursive: true });
  const name = `${item.id}-${shot.file}`;
  const width = (rank === 0 ? 1600 : 900) * (values.draft ? Number(values.draft) : 1);
  const seconds = await render({ scene: scene(), name, work, fonts, common: join(here, 'common'), out, width, draft: Boolean(values.draft), exposure });
  if (writes) writePhotos(item.file, photos);
  console.log(`${item.id}/${shot.file}: ${seconds.toFixed(0)} s`);
}
