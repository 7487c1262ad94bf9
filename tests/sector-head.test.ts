import { expect, test } from 'vitest';
import { mmPerPoint } from '../src/core/pages/surface/text.js';
import { languages } from '../src/words/index.js';
import { laidOut, purse } from './support/booklets.js';
import { PageRecorder } from './support/page-recorder.js';

test.each(languages)(
  'in %s nothing above an enlarged chart in large print covers the key, and all is large',
  async (language) => {
    const { look, flow, facts } = await laidOut(purse, [language], { large: true });
    const { work } = facts.words.booklet;
    const first = (flow.pageOf('enlarged-1') ?? 0) - 1;
    const last = (flow.pageOf('work-1') ?? 0) - 1;
    expect(last - first).toBeGreaterThan(1);
    for (const { drawn } of flow.pages.slice(first, last)) {
      const page = new PageRecorder(look.widthMm, look.heightMm);
      for (const { draw } of drawn) draw(page);
      // Letters on beads and round numbers are one or two characters.
      const words = page.texts.filter(({ text, box }) => text.trim().length > 2 && box[3] < 52);
      const note = words.filter(({ text }) => work.sector.how.includes(text));
      expect(note.length).toBeGreaterThan(0);
      // Large print is 14 points at least (RNIB, as cited by Hampshire County Council).
      for (const { sizeMm } of note) expect(sizeMm).toBeGreaterThan(13.9 * mmPerPoint);
      words.forEach((one, n) => {
        for (const other of words.slice(n + 1)) {
          const across = Math.min(one.box[2], other.box[2]) - Math.max(one.box[0], other.box[0]);
          const down = Math.min(one.box[3], other.box[3]) - Math.max(one.box[1], other.box[1]);
          expect(across > 0.2 && down > 0.2, `${one.text} / ${other.text}`).toBe(false);
        }
      });
    }
  },
);
