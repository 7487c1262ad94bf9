import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import type { PanelWish } from '../src/core/make.js';
import type { Pattern } from '../src/core/pattern/pattern.js';
import { readPicture } from '../src/node/read/read-picture.js';
import type * as Footprints from '../src/core/panel/footprints.js';
import type * as Geometry from '../src/core/panel/geometry.js';

// How often a panel is laid out by all that a command does: each panel once as it is and once
// without turn for the comparison, the working face once for both panels, and the small ring that
// shows how the rounds run, which is drawn without cells. It was 9 times (footprints 3) for one
// panel, 24 and 6 for two with a frame.

const counts = vi.hoisted(() => ({ geometry: 0, footprints: 0 }));
vi.mock('../src/core/panel/geometry.js', async (original) => {
  const module = await original<typeof Geometry>();
  const panelGeometry: typeof module.panelGeometry = (...input) => {
    counts.geometry++;
    return module.panelGeometry(...input);
  };
  return { ...module, panelGeometry };
});
vi.mock('../src/core/panel/footprints.js', async (original) => {
  const module = await original<typeof Footprints>();
  const panelFootprints: typeof module.panelFootprints = (geometry) => {
    counts.footprints++;
    return module.panelFootprints(geometry);
  };
  return { ...module, panelFootprints };
});

const { makePattern } = await import('../src/core/make.js');
const { readPalette } = await import('../src/core/beads/palette/read-palette.js');
const { patternReport } = await import('../src/core/pattern/report.js');
const { patternFiles } = await import('../src/node/output/pattern-files.js');
const { makeBooklet, plainBooklet } = await import('../src/cli/run/make-booklet.js');
const { en } = await import('../src/words/index.js');

const bird = 'fixtures/kingfisher.svg';
const { beads } = readPalette(readFileSync('palettes/harbour.csv', 'utf8'), 'harbour', {});

async function counted(more: Partial<PanelWish>): Promise<typeof counts> {
  const picture = await readPicture(readFileSync(bird), bird);
  Object.assign(counts, { geometry: 0, footprints: 0 });
  const { pattern } = makePattern({
    picture,
    pictureName: 'kingfisher.svg',
    title: 'Kingfisher',
    beads,
    colours: 5,
    shape: { wedges: 7, rounds: 12, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'auto',
    background: '#ffffff',
    ...more,
  });
  await allOf(pattern);
  return { ...counts };
}

async function allOf(pattern: Pattern): Promise<void> {
  patternReport(pattern);
  await patternFiles(pattern, en);
  await makeBooklet(pattern, plainBooklet);
}

test('one panel is laid out once, and once without turn', async () => {
  expect(await counted({})).toEqual({ geometry: 4, footprints: 3 });
});

test('two panels with a frame are laid out once each, and once each without turn', async () => {
  const frame = {
    kind: 'half-round',
    widthMm: 40,
    heightMm: 20,
    fixing: 'sewn',
    ratio: 1.15,
    gatherPercent: 0,
  } as const;
  // Another shape than above, of which nothing is kept.
  const shape = { wedges: 7, rounds: 13, beadDiameterMm: 2.1 };
  const { geometry, footprints } = await counted({ shape, frame, back: 'same', startDegrees: 40 });
  expect({ geometry, footprints }).toEqual({ geometry: 6, footprints: 5 });
});
