import { mkdir, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { background, encodingsAt, planSizes, type Size } from "../../shared/images/plan-image.ts";
import { renderImages } from "../../shared/images/render-images.ts";
import { slots } from "../../shared/images/slots.ts";

const original: Size = { width: 3600, height: 2400 };
const photographs = 3;
const rounds = 2;

/**
 * The pipeline against plain sharp loops that make the same files, at several concurrencies; the best of each over
 * the rounds, which take turns so that a busy machine is unfair to all alike.
 * A loop is plain in one of two ways: every output straight from the original, or, which is quicker and more to
 * write, every original decoded once.
 */
export async function benchmarkImages(print: (line: string) => void): Promise<void> {
  const folder = await mkdtemp(path.join(tmpdir(), "bench-images-"));
  const threads = sharp.concurrency();
  try {
    const root = path.join(folder, "root");
    await mkdir(root);
    const originals = Array.from({ length: photographs }, (_, n) => `${n}.jpg`);
    for (const [n, file] of originals.entries()) await writePhotograph(path.join(root, file), n + 1);
    print(`${photographs} photographs of ${original.width} × ${original.height}, best of ${rounds} rounds`);

    const out = (name: string) => path.join(folder, name);
    const pipeline = async () => {
      await rm(out("cache"), { recursive: true, force: true });
      const { encoded } = await renderImages({
        root,
        originals,
        cacheFolder: out("cache"),
        outFolder: out("site"),
      });
      if (encoded !== photographs) throw new Error("The pipeline did not encode every photograph.");
      return path.join(out("site"), "images");
    };
    const again = async () => {
      const { reused } = await renderImages({
        root,
        originals,
        cacheFolder: out("cache"),
        outFolder: out("site"),
      });
      if (reused !== photographs) throw new Error("The second run encoded something.");
      return path.join(out("site"), "images");
    };
    const loop = (work: typeof fromOriginal, concurrency: number, perPicture: number) => async () => {
      sharp.concurrency(perPicture);
      await mkdir(out("plain"), { recursive: true });
      const run = slots(concurrency);
      await Promise.all(originals.map((file) => work(path.join(root, file), out("plain"), run)));
      sharp.concurrency(threads);
      return out("plain");
    };
    const contestants = new Map<string, () => Promise<string>>([
      ["the pipeline", pipeline],
      ["the pipeline again", again],
    ]);
    for (const [concurrency, perPicture] of [
      [2, 1],
      [4, 1],
      [2, 2],
    ] as const) {
      const at = `${concurrency} at once, ${perPicture} thread${perPicture > 1 ? "s" : ""} each`;
      contestants.set(`plain loop, ${at}`, loop(fromOriginal, concurrency, perPicture));
      contestants.set(`plain loop that decodes once, ${at}`, loop(fromPixels, concurrency, perPicture));
    }

    const best = new Map<string, { time: number; processor: number }>();
    const files = planSizes(original).length * encodingsAt(0).length * photographs;
    for (let round = 0; round < rounds; round++) {
      for (const [name, contestant] of contestants) {
        const [start, before] = [performance.now(), process.cpuUsage()];
        const made = await contestant();
        const { user, system } = process.cpuUsage(before);
        const known = best.get(name) ?? { time: Infinity, processor: Infinity };
        best.set(name, {
          time: Math.min(known.time, (performance.now() - start) / 1e3),
          processor: Math.min(known.processor, (user + system) / 1e6),
        });
        const count = (await readdir(made)).length;
        if (count !== files) throw new Error(`${name} made ${count} files, not ${files}.`);
        await rm(made, { recursive: true });
      }
    }
    print("elapsed  processor");
    for (const [name, { time, processor }] of best) {
      print(`${time.toFixed(2).padStart(5)} s    ${processor.toFixed(2).padStart(5)} s  ${name}`);
    }
    const report = (which: RegExp, words: string) => {
      const ours = best.get("the pipeline");
      const theirs = [...best].filter(([name]) => which.test(name)).map(([, it]) => it);
      const ratio = (figure: "time" | "processor") =>
        ((ours?.[figure] ?? NaN) / Math.min(...theirs.map((it) => it[figure]))).toFixed(2);
      print(`ratio to ${words}: ${ratio("time")} elapsed, ${ratio("processor")} processor`);
    };
    report(/^plain loop,/, "the best plain loop from the originals");
    report(/decodes once/, "the best plain loop that decodes once");
  } finally {
    sharp.concurrency(threads);
    await rm(folder, { recursive: true, force: true });
  }
}

type Run = ReturnType<typeof slots>;

async function fromOriginal(file: string, out: string, run: Run): Promise<void> {
  const outputs = planSizes(original).flatMap((size) =>
    encodingsAt(size.width).map((encoding) => ({ size, encoding })),
  );
  await Promise.all(
    outputs.reverse().map(({ size, encoding }) =>
      run(() =>
        sharp(file)
          .autoOrient()
          .toColourspace("srgb")
          .flatten({ background })
          .resize(size.width, size.height)
          .toFormat(encoding.format, encoding.options)
          .toFile(target(file, out, size, encoding.extension)),
      ),
    ),
  );
}

async function fromPixels(file: string, out: string, run: Run): Promise<void> {
  const sizes = planSizes(original);
  const { width, height } = sizes.at(-1) ?? sizes[0];
  const pixels = await run(() =>
    sharp(file)
      .autoOrient()
      .toColourspace("srgb")
      .flatten({ background })
      .resize(width, height)
      .raw()
      .toBuffer(),
  );
  const outputs = sizes.flatMap((size) => encodingsAt(size.width).map((encoding) => ({ size, encoding })));
  await Promise.all(
    outputs.reverse().map(({ size, encoding }) =>
      run(() =>
        sharp(pixels, { raw: { width, height, channels: 3 } })
          .resize(size.width, size.height)
          .toFormat(encoding.format, encoding.options)
          .toFile(target(file, out, size, encoding.extension)),
      ),
    ),
  );
}

function target(file: string, out: string, { width }: Size, extension: string): string {
  return path.join(out, `${path.basename(file, ".jpg")}-${width}.${extension}`);
}

/** Noise in octaves, coarse and strong to fine and weak, as the detail of photographs is spread. */
async function writePhotograph(file: string, seed: number): Promise<void> {
  const { width, height } = original;
  let state = seed;
  const random = () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  const sum = new Int16Array(width * height * 3).fill(128);
  for (const [across, strength] of [
    [8, 100],
    [30, 70],
    [120, 50],
    [500, 35],
    [1500, 22],
    [4000, 8],
  ] as const) {
    const down = Math.round((across * height) / width);
    const coarse = Buffer.alloc(across * down * 3);
    for (let at = 0; at < coarse.length; at += 3) {
      const light = random();
      for (let c = 0; c < 3; c++) coarse[at + c] = 128 + strength * (light + 0.4 * random());
    }
    const layer = await sharp(coarse, { raw: { width: across, height: down, channels: 3 } })
      .resize(width, height, { fit: "fill", kernel: across < 200 ? "nearest" : "cubic" })
      .raw()
      .toBuffer();
    for (let at = 0; at < sum.length; at++) sum[at] = (sum[at] ?? 0) + (layer[at] ?? 0) - 128;
  }
  const pixels = Buffer.from(Uint8ClampedArray.from(sum));
  await sharp(pixels, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 92 })
    .toFile(file);
}
