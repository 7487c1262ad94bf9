import { expect, test } from 'vitest';
import { languages } from '../src/words/index.js';
import { laidOut, onePanel, purse } from './support/booklets.js';
import { PageReach } from './support/page-reach.js';

// What is cut with dots cannot be read. Our own lists put a space beside theirs.
const cut = /[^\s(]…|…[^\s)]/u;

const names = ['night watch', 'duck egg', 'kingfisher blue', 'harbour rope', 'honey jar', 'eelgrass', 'gull white', 'cream jug']; // prettier-ignore
const beads = purse.beads.map((bead, n) => ({ ...bead, name: names[n], id: `op-0${n}` }));
const patterns = [
  { ...onePanel, beads },
  { ...purse, beads, thread: { lengthBeads: 600 } },
  {
    ...purse,
    beads,
    frame: {
      kind: 'half-round',
      widthMm: 70,
      heightMm: 30,
      fixing: 'sewn',
      ratio: 1.15,
      gatherPercent: 0,
    },
  },
] as const;

const cases = languages.flatMap((language) => [false, true].map((large) => ({ language, large })));

test.each(cases)(
  '$language, large: $large: nothing is cut with dots',
  async ({ language, large }) => {
    const found = new Set<string>();
    for (const pattern of patterns) {
      const { look, flow, foot } = await laidOut(pattern, [language], { large });
      flow.pages.forEach((page, n) => {
        const seen = new PageReach(look.widthMm, look.heightMm);
        for (const { draw } of page.drawn) draw(seen);
        foot(seen, page, n);
        for (const text of seen.texts) if (cut.test(text)) found.add(text);
      });
    }
    expect([...found]).toEqual([]);
  },
);
