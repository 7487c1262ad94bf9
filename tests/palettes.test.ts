import { readFileSync, readdirSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';

const folder = new URL('../palettes/', import.meta.url);
const difference = differenceCiede2000();

/** The 24 patches of the ColorChecker, 8-bit sRGB as published by GretagMacbeth (X-Rite). */
const colorChecker = `
  115,82,68 194,150,130 98,122,157 87,108,67 133,128,177 103,189,170
  214,126,44 80,91,166 193,90,99 94,60,108 157,188,64 224,163,46
  56,61,150 70,148,73 175,54,60 231,199,31 187,86,149 8,133,161
  243,243,242 200,200,200 160,160,160 122,122,121 85,85,85 52,52,52`
  .trim()
  .split(/\s+/)
  .map((patch) => `rgb(${patch})`);

function beadsOf(file: string) {
  const [header, ...rows] = readFileSync(new URL(file, folder), 'utf8').trimEnd().split('\n');
  expect(header).toBe('id,name,hex,finish,sample');
  return rows.map((row) => {
    const [id, name, hex, finish, sample, ...rest] = row.split(',');
    // Our own sample colours, which no shop sells under these numbers.
    expect(sample).toBe('yes');
    expect(rest, row).toEqual([]);
    return { id, name, hex, finish };
  });
}

const files = readdirSync(folder).filter((file) => file.endsWith('.csv'));
const sizes: Record<string, [number, number]> = {
  'harbour.csv': [24, 30],
  'drawers.csv': [115, 125],
  'pebbles.csv': [20, 28],
};

it('there are the three palettes that the README names', () => {
  expect(files.sort()).toEqual(Object.keys(sizes).sort());
  const readme = readFileSync(new URL('README.md', folder), 'utf8');
  for (const file of files) {
    expect(readme).toContain(`| \`${file}\` | ${beadsOf(file).length} |`);
  }
});

describe.each(files)('%s', (file) => {
  const beads = beadsOf(file);

  it('has as many beads as it should, each with its own id and name', () => {
    const [least, most] = sizes[file];
    expect(beads.length).toBeGreaterThanOrEqual(least);
    expect(beads.length).toBeLessThanOrEqual(most);
    expect(new Set(beads.map((bead) => bead.id)).size).toBe(beads.length);
    expect(new Set(beads.map((bead) => bead.name)).size).toBe(beads.length);
    for (const bead of beads) {
      expect(bead.id).toMatch(/^[a-z]{2}-\d\d$/);
      expect(bead.hex).toMatch(/^#[0-9a-f]{6}$/);
      expect(bead.name).toMatch(/^[a-z][a-z' ]+$/);
      expect(bead.finish).toMatch(/^(opaque|matte|silver-lined|pearl|lustre|metallic)$/);
    }
  });

  it('holds no two beads nearer than CIEDE2000 2', () => {
    beads.forEach((a, i) => {
      for (const b of beads.slice(0, i)) {
        expect(difference(a.hex, b.hex), `${a.id} ${b.id}`).toBeGreaterThanOrEqual(2);
      }
    });
  });
});

// Measured at the last edit: drawers 4.4 in the mean and 8.3 at worst, harbour 7.4 in the mean.
it.each([
  ['drawers.csv', 4.6, 9],
  ['harbour.csv', 8, 14],
])('%s comes near the patches of the ColorChecker', (file, mean, worst) => {
  const beads = beadsOf(file);
  const nearest = colorChecker.map((patch) =>
    Math.min(...beads.map((bead) => difference(patch, bead.hex))),
  );
  expect(nearest.reduce((a, b) => a + b) / nearest.length).toBeLessThan(mean);
  expect(Math.max(...nearest)).toBeLessThan(worst);
});

it('the greys stay grey: most of pebbles.csv has little chroma', () => {
  const greys = beadsOf('pebbles.csv').filter((bead) => bead.id.startsWith('gr-'));
  for (const { hex, id } of greys) {
    const [r, g, b] = [1, 3, 5].map((p) => parseInt(hex.slice(p, p + 2), 16));
    expect(Math.max(r, g, b) - Math.min(r, g, b), id).toBeLessThanOrEqual(20);
  }
});
