import { createRequire } from 'node:module';

const sharp = createRequire(import.meta.url)('sharp');

const linear = (s) => (s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4);
const encoded = (l) => (l <= 0.0031308 ? l * 12.92 : 1.055 * l ** (1 / 2.4) - 0.055);

/** Twice the light, with highlights rolled off above 0.7 instead of clipped. */
function curve(l, exposure) {
  const x = l * exposure;
  const knee = 0.62;
  return x <= knee ? x : knee + (1 - knee) * (1 - Math.exp(-(x - knee) / (1 - knee)));
}

/** Turns the renderer's 16-bit picture into the published JPEG. */
export async function develop(png, jpeg, { exposure = 2, quality = 84 } = {}) {
  const table = new Uint8Array(65536);
  for (let i = 0; i < 65536; i += 1) table[i] = Math.round(255 * encoded(Math.min(curve(linear(i / 65535), exposure), 1)));
  const { data, info } = await sharp(png).removeAlpha().toColourspace('rgb16').raw({ depth: 'ushort' }).toBuffer({ resolveWithObject: true });
  const wide = new Uint16Array(data.buffer, data.byteOffset, data.length / 2);
  const out = Buffer.alloc(wide.length);
  for (let i = 0; i < wide.length; i += 1) out[i] = table[wide[i]];
  await sharp(out, { raw: { width: info.width, height: info.height, channels: 3 } })
    .sharpen({ sigma: 0.6, m1: 0.4, m2: 0.8 })
    .jpeg({ quality, mozjpeg: true, chromaSubsampling: '4:4:4' })
    .toFile(jpeg);
}
