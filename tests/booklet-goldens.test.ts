import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, test } from 'vitest';
import { drawPages, examples, makeExample } from '../tools/example-booklets.js';
import { tool } from './support/poppler.js';

// The pictures were drawn by Debian's poppler 22.12; `node tools/example-booklets.js` draws them
// anew. Another version smooths edges a little otherwise, so they are compared blurred.
const kept = new URL('../docs/booklets/', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'rondure-goldens-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Most that pages may differ: mean of all points, and share of points by a quarter and more. */
const mostMean = 1;
const mostShare = 0.002;

async function grey(file: string) {
  const { data, info } = await sharp(file)
    .flatten({ background: '#ffffff' })
    .greyscale()
    .blur(0.8)
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { data, size: `${info.width} x ${info.height}` };
}

async function difference(one: string, other: string) {
  const [a, b] = [await grey(one), await grey(other)];
  if (a.size !== b.size) return { mean: Infinity, share: 1 };
  let [sum, far] = [0, 0];
  for (let p = 0; p < a.data.length; p++) {
    const off = Math.abs(a.data[p] - b.data[p]);
    sum += off;
    if (off > 64) far++;
  }
  return { mean: sum / a.data.length, share: far / a.data.length };
}

/** How far down the lowest ink above the foot stands: a share of the height between head and foot. */
async function fillOf(file: string): Promise<number> {
  const { data, info } = await sharp(file)
    .flatten({ background: '#ffffff' })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  // ISO 216 A4: 297 mm high; running text stands between 14 and 281.
  const [top, bottom] = [14, 281].map((mm) => Math.round((mm / 297) * info.height));
  for (let row = bottom; row > top; row--) {
    const line = data.subarray(row * info.width, (row + 1) * info.width);
    if (line.some((grey) => grey < 128)) return (row - top) / (bottom - top);
  }
  return 0;
}

describe.each(examples)('the example $name', (example) => {
  const { name } = example;
  const pdf = makeExample(example, folder);
  const pages = drawPages(pdf, name, folder);

  test('its pages look like the pictures kept', async () => {
    const there = readdirSync(kept).filter(
      (file) => file.startsWith(`${name}-`) && file.endsWith('.png'),
    );
    expect(pages).toEqual(there.sort());
    for (const page of pages) {
      const { mean, share } = await difference(join(folder, page), join(kept, page));
      expect(mean, page).toBeLessThan(mostMean);
      expect(share, page).toBeLessThan(mostShare);
    }
  });

  test('pages that differ are told apart by that measure', async () => {
    for (const [n, page] of pages.slice(1).entries()) {
      const { mean, share } = await difference(join(folder, page), join(kept, pages[n]));
      expect(mean > mostMean || share > mostShare, page).toBe(true);
    }
  });

  test('no page is under half full unless the next part must begin on a page of its own', async () => {
    const partOf = (n: number) => {
      const text = tool('pdftotext', ['-layout', '-f', String(n), '-l', String(n), pdf, '-']);
      const foot = text.toString().trim().split('\n').at(-1)!;
      return foot
        .split('·')[1]
        .trim()
        .split(/\s{2,}/)[0];
    };
    const fills = await Promise.all(pages.map((page) => fillOf(join(folder, page))));
    expect(Math.max(...fills)).toBeLessThanOrEqual(1);
    fills.forEach((fill, n) => {
      if (fill >= 0.5) return;
      expect(n + 2, `page ${n + 1}: ${fill.toFixed(2)}`).toBeLessThanOrEqual(pages.length);
      expect(partOf(n + 2), `page ${n + 1}: ${fill.toFixed(2)}`).not.toBe(partOf(n + 1));
    });
  });

  test('the PDF kept says what this one says, is sound, and has its fonts in it', () => {
    const text = (file: string) => tool('pdftotext', ['-layout', file, '-']).toString();
    expect(text(join(kept, `${name}.pdf`))).toBe(text(pdf));
    expect(tool('qpdf', ['--check', pdf]).toString()).toMatch(
      /No syntax or stream encoding errors/,
    );
    const about = tool('pdfinfo', [pdf]).toString();
    expect(about).toMatch(/Tagged:\s+yes/);
    expect(about).toMatch(new RegExp(`Pages:\\s+${pages.length}`));
    // ISO 216 A4 in points of 1/72 inch.
    expect(about).toMatch(/Page size:\s+595\.276 x 841\.89 pts \(A4\)/);
    const fonts = tool('pdffonts', [pdf]).toString().trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThanOrEqual(2);
    // Columns emb, sub, uni of pdffonts.
    for (const line of fonts) expect(line).toMatch(/ yes yes yes /);
  });

  test('no word of one line stands over a word of another (pdftotext -bbox-layout)', () => {
    const boxes = tool('pdftotext', ['-bbox-layout', pdf, '-']).toString();
    const found = boxes.split('<page ').slice(1);
    expect(found).toHaveLength(pages.length);
    for (const [n, page] of found.entries()) {
      const numbers = (tag: string) =>
        /xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)"/
          .exec(tag)!
          .slice(1)
          .map(Number);
      const lines = [...page.matchAll(/<line [^>]*>([^]*?)<\/line>/g)].map(([tag, inner]) => ({
        box: numbers(tag),
        text: [...inner.matchAll(/>([^<]+)<\/word>/g)].map(([, word]) => word).join(' '),
      }));
      // On charts letters stand close, by design: booklet-charts.test.ts looks at them.
      const chart = lines.filter(({ text }) => /^[A-Z]$/.test(text)).length > 20;
      if (chart) continue;
      lines.forEach((one, k) => {
        for (const other of lines.slice(k + 1)) {
          const across = Math.min(one.box[2], other.box[2]) - Math.max(one.box[0], other.box[0]);
          const down = Math.min(one.box[3], other.box[3]) - Math.max(one.box[1], other.box[1]);
          // Boxes of lines reach from ascender to descender, a little over the next one's.
          const low = Math.min(one.box[3] - one.box[1], other.box[3] - other.box[1]);
          const over = across > 1 && down > 0.35 * low;
          expect(over, `page ${n + 1}: ${one.text} / ${other.text}`).toBe(false);
        }
      });
    }
  });
});

test('a panel of 20 rounds takes no more pages than it did', () => {
  const about = tool('pdfinfo', [join(folder, 'kingfisher.pdf')]).toString();
  expect(Number(/Pages:\s+(\d+)/.exec(about)![1])).toBeLessThanOrEqual(12);
});

test('the counts in the table of materials are those of the pattern', () => {
  for (const { name } of examples) {
    const pattern = JSON.parse(readFileSync(join(folder, name, 'pattern.json'), 'utf8')) as {
      beads: { letter: string; name: string }[];
      panels: { rounds: string[] }[];
    };
    // Materials begin on the second page or the third.
    const file = join(folder, `${name}.pdf`);
    const text = tool('pdftotext', ['-layout', '-f', '2', '-l', '3', file, '-']);
    const all = pattern.panels.flatMap(({ rounds }) => rounds).join('');
    for (const { letter, name: bead } of pattern.beads) {
      const count = all.split(letter).length - 1;
      const row = new RegExp(
        `^\\s*${letter}\\s+${bead}.*?\\s${count.toLocaleString('en')}\\s`,
        'm',
      );
      expect(text.toString(), `${name}: ${letter}`).toMatch(row);
    }
  }
});
