import type { Entry } from './contents.js';
import { partName } from '../facts.js';
import type { BookletFacts } from '../facts.js';
import { stretchesOf, workMark } from './work.js';

/** The parts of a booklet, each with what `Flow.pageOf` knows it by. */
export function contentsOf(
  facts: BookletFacts,
  has: {
    readonly enlarged: (panel: number) => boolean;
    readonly wedge: (panel: number) => boolean;
    readonly lining: boolean;
  },
): Entry[] {
  const { pattern, words } = facts;
  const { parts, enlarged, wedgeChart, work } = words.booklet;
  return [
    { text: parts.materials, mark: 'materials' },
    { text: parts.cautions, mark: 'cautions' },
    { text: parts.before, mark: 'before' },
    ...pattern.panels.flatMap((_, panel) => [
      { text: partName(facts, parts.chart, panel), mark: `chart-${panel}` },
      { text: partName(facts, work.working.part, panel), mark: `working-${panel}` },
      ...(has.wedge(panel)
        ? [{ text: partName(facts, wedgeChart.part, panel), mark: `enlarged-${panel}` }]
        : []),
      ...(has.enlarged(panel)
        ? [{ text: partName(facts, enlarged.part, panel), mark: `enlarged-${panel}` }]
        : []),
      { text: partName(facts, work.part, panel), mark: `work-${panel}` },
    ]),
    { text: parts.making, mark: 'making' },
    { text: parts.last, mark: 'last' },
    ...(has.lining ? [{ text: parts.lining, mark: 'lining' }] : []),
  ];
}

/** What is done from first to last. */
export function stepsOf(facts: BookletFacts): Entry[] {
  const { pattern, words } = facts;
  const say = words.booklet.work.steps;
  const work = pattern.panels.flatMap((_, panel) =>
    stretchesOf(facts, panel).flatMap(({ length, first, last }, __, { length: lengths }) => {
      const { number } = length;
      return [
        {
          text: partName(facts, say.string({ length: number, lengths }), panel),
          mark: workMark('string', panel, number),
        },
        {
          text: partName(facts, say.rounds({ first, last }), panel),
          mark: workMark('rounds', panel, number),
        },
      ];
    }),
  );
  const again = pattern.panels.length === 1 ? [{ text: say.again, mark: 'work-0' }] : [];
  return [
    { text: say.gather, mark: 'materials' },
    { text: say.swatch, mark: 'swatch' },
    ...work,
    ...again,
    { text: say.seam, mark: 'seam' },
    { text: say.frame, mark: 'frame' },
    { text: say.lining, mark: 'line' },
  ];
}
