/** Before a swatch every page says a size as a range between both outlines, after it one number. */
import { describe, expect, it } from 'vitest';
import { acrossRange } from '../src/core/panel/across.js';
import { acrossMm } from '../src/core/panel/edge.js';
import { drawHeading } from '../src/core/pages/panel/heading.js';
import { cellKinds } from '../src/core/pages/panel/sheet.js';
import { liningNotes } from '../src/core/pages/lining/lining-notes.js';
import { planLining } from '../src/core/purse/lining/plan.js';
import { fontsForPages } from '../src/node/font/fonts.js';
import { languages, wordsIn } from '../src/words/index.js';
import { numbersIn } from '../src/words/pages/numbers.js';
import { PageRecorder } from './support/page-recorder.js';
import { panelSheet } from './support/panel-sheet.js';
import { smallSwatch } from './support/swatch.js';
import { inProcess } from './support/run.js';

const sheet = panelSheet({ wedges: 7, rounds: 20 }, 4);
const { pattern } = sheet;
const measured = { ...pattern, swatch: smallSwatch() };
const one = acrossMm(pattern.shape);

describe.each(languages)('in %s', (language) => {
  const { fixed } = numbersIn(language);

  it('chart head, cover, swatch paragraph and lining say 95–100 mm, and 99.7 after a swatch', async () => {
    const { words } = await wordsIn([language]);
    const fonts = await fontsForPages(language, []);
    const headed = (of: typeof pattern) => {
      const surface = new PageRecorder(210, 297);
      const here = { ...sheet, pattern: of, words, fonts };
      const place = { left: 10, top: 10, widthMm: 190 };
      drawHeading(surface, here, cellKinds(here), 'x', place);
      return surface.texts.map(({ text }) => text).join('\n');
    };
    const { size, before } = words.booklet;
    const covered = (of: typeof pattern) => size({ across: acrossRange(of) });
    const swatch = (of: typeof pattern) => {
      const across = (rounds: number) => acrossRange({ ...of, shape: { ...of.shape, rounds } });
      const facts = {
        wedges: 7,
        beads: 385,
        widthMm: 2.164,
        heightMm: 2.247,
        five: across(5),
        ten: across(10),
      };
      return before.swatchText(facts);
    };
    const lined = (of: typeof pattern) =>
      words.lining.estimate({ model: planLining(of).modelAcross });
    expect(headed(pattern)).toContain('95–100');
    expect(covered(pattern)).toContain('95–100');
    expect(covered(pattern)).toContain(`${fixed(3.7, 1)}–${fixed(3.9, 1)}`);
    expect(swatch(pattern)).toContain('26–27');
    expect(swatch(pattern)).toContain('49–51');
    expect(lined(pattern)).toContain('95–100');
    expect(headed(measured)).toContain(fixed(one, 1));
    expect(lined(measured)).toContain(fixed(one, 1));
    expect(covered(measured)).toMatch(/\b100\b/);
    for (const text of [headed, covered, swatch, lined].map((say) => say(measured)))
      expect(text).not.toContain('–');
  });
});

it('the template of a lining and the command line say the range too', async () => {
  const { words } = await wordsIn(['en-GB']);
  const fonts = await fontsForPages('en-GB', []);
  const notes = (of: typeof pattern, measuredMm?: number) => {
    const lining = planLining(of, measuredMm === undefined ? {} : { measuredMm });
    return liningNotes({ lining, title: 'x', words, fonts }).facts[0];
  };
  expect(notes(pattern)).toMatch(/^ESTIMATE: 95–100 mm is/);
  expect(notes(measured)).toMatch(/^ESTIMATE: 99\.7 mm is/);
  expect(notes(pattern, 97)).toContain('97.0 mm, as you measured it (by the model 95–100 mm)');

  const chart = ['chart', 'fixtures/lighthouse.svg', '--dry-run', '-o', 'nowhere'];
  const said = await inProcess(...chart);
  expect(said.out).toMatch(/across +about 95–100 mm; a swatch tells it exactly/);
  const json = JSON.parse((await inProcess(...chart, '--json')).out);
  expect(json.acrossRangeMm.map(Math.round)).toEqual([95, 100]);

  const frame = ['frame', '--width', '85', '--height', '45', '--rounds', '20'];
  expect((await inProcess(...frame)).out).toMatch(
    /95–10\d mm wide as it hangs, 1\.1\d–1\.1\d times/,
  );
});
