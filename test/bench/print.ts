/**
 * Measures the printing of a long booklet in a process of its own: time to write it and memory in use.
 */
import { join, resolve } from 'node:path';
import { fontsIn, layOut, writePdf } from '../../core/print/index.ts';
import { sample as sampleBooklet, samplePicture } from '../print/sample.ts';

const root = resolve(process.argv[2] ?? '.');

/** Repeats the sample's parts until it fills at least `pages` pages, then writes it. */
async function measurePrint(): Promise<void> {
  const sample = sampleBooklet();
  const picture = samplePicture();
  const resources = {
    fonts: fontsIn(join(root, 'resources/fonts')),
    picture: () => picture,
  };
  const options = { paper: 'a4', edition: 'standard' } as const;
  let booklet = sample;
  let pages = layOut(booklet, options, resources).pages.length;
  for (let times = 2; pages < 24; times++) {
    booklet = { ...sample, parts: Array.from({ length: times }, () => sample.parts).flat() };
    pages = layOut(booklet, options, resources).pages.length;
  }
  const times: number[] = [];
  for (let i = 0; i < 5; i++) {
    const start = performance.now();
    await writePdf(booklet, options, resources);
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const resident = Math.round(process.memoryUsage().rss / 1024 / 1024);
  process.stdout.write(
    `PDF of ${pages} pages: ${(times[2]! / 1000).toFixed(2)} s (median of 5), ${resident} MB resident\n`,
  );
}

await measurePrint();
