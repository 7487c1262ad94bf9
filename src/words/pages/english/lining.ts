import { numbersIn } from '../numbers.js';
import type { SizeRange } from '../numbers.js';
import type { English } from './spelling.js';

/** What stands on the cutting template of a lining. */
export const lining = ({ language, centre }: English) => {
  const { fixed, short, sizeMm } = numbersIn(language);
  /** 95 as 95.0: sizes to cut by are said to a tenth. */
  const tenth = (mm: number) => fixed(mm, 1);
  const percent = (share: number) => `${short(100 * share, 1)} %`;
  return {
    title: (f: { title: string; panel?: string | undefined }) =>
      f.panel === undefined ? `Lining: ${f.title}` : `Lining: ${f.title}, ${f.panel}`,
    size: (f: { seamMm: number; cutMm: number; allowanceMm: number; easeMm: number }) =>
      `At the widest place: cut line ${tenth(f.cutMm)} mm, seam line ${tenth(f.seamMm)} mm (allowance ${short(f.allowanceMm, 1)} mm all round, ${f.easeMm === 0 ? 'no\u00a0ease' : `${short(f.easeMm, 1)} mm narrower than the panel`}).`,
    measured: (f: { measuredMm: number; model: SizeRange }) =>
      `Made for a panel of ${tenth(f.measuredMm)} mm, as you measured it (by the model ${sizeMm(f.model, 1)} mm).`,
    estimate: (f: { model: SizeRange }) =>
      `ESTIMATE: ${sizeMm(f.model, 1)} mm is the panel’s size by the model, not by a ruler. Measure the finished panel at its widest place, over bead edges, and cut by so much more or less.`,
    cutTwo:
      'Cut 2 (one for each panel): this side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.',
    cutOne:
      'Cut 1 for this panel; the other panel has a sheet of its own. This side up on the wrong side of the cloth, the arrow along the grain. Solid line: cut. Dashed line: sew.',
    sew: (f: { gapMm: number }) =>
      f.gapMm > 0
        ? `Right sides together, sew from one hinge mark around the bottom to the other, and leave ${short(f.gapMm, 1)} mm open between the bars for turning.`
        : 'Right sides together, sew from one hinge mark around the bottom to the other.',
    put: 'Do not turn it: put it into the purse as it is, wrong side against the panels, so that its right side shows inside.',
    fold: (f: { allowanceMm: number }) =>
      `Fold the open edge above the hinge marks ${short(f.allowanceMm, 1)} mm to the wrong side, along the dashed line, and sew the fold to the rim along the frame, below the holes or inside the channel’s edge.`,
    close:
      'With a gap, lining and panels are first sewn together along the frame, right sides facing; turn the purse through the gap, fold its edges in and close it by hand with small stitches.',
    hinges: (f: { share: number; from: 'asked' | 'usual' | 'frame'; marked: boolean }) =>
      ({
        asked: `Hinge marks (dots): ${percent(f.share)} of the rim lies in the frame, as you said.`,
        frame: `Hinge marks (dots): ${Math.round(100 * f.share)} % of the rim lies in the frame, by the pattern’s frame.`,
        usual: `Hinge marks (dots): an estimate, ${percent(f.share)} of the rim in the frame${f.marked ? ' (common practice, no source)' : ''}: mark where your frame ends.`,
      })[f.from],
    spiral:
      'The spiral’s step at the rim is left out: the outline is the closed ring halfway up the step.',
    print:
      'Print at 100 %, scaling off. Measure both squares: when one is wrong by more than 0.5 mm, do not cut.',
    caution:
      'Take care: count pins and needles before and after, and keep them, scissors and beads away from small children. Seal frayed edges with a flame only on synthetic cloth, never near glue; air the room when you glue. Where you live or sell, local rules come first.',
    sheets: (f: { rows: number; columns: number }) =>
      f.rows * f.columns === 1
        ? 'The piece is on the next sheet.'
        : `The piece is on the next ${f.rows * f.columns} sheets, ${f.rows} high and ${f.columns} wide. They overlap: cut one of two neighbours along the dotted line, lay it on the other so that crosses lie on crosses, and tape them together.`,
    sheet: (f: { row: number; column: number; rows: number; columns: number }) =>
      f.rows * f.columns === 1
        ? 'The piece'
        : `Row ${f.row} of ${f.rows}, column ${f.column} of ${f.columns}`,
    marks: {
      pieces: (f: { pieces: 1 | 2 }) => `cut ${f.pieces}`,
      cut: (f: { mm: number }) => `cut line ${tenth(f.mm)} mm`,
      seam: (f: { mm: number }) => `seam line ${tenth(f.mm)} mm`,
      estimate: 'estimate',
      grain: 'grain',
      top: `${centre} top`,
      hinge: 'hinge',
      gap: (f: { mm: number }) => `leave ${short(f.mm, 1)} mm open`,
    },
    check: {
      mm: '50 mm',
      inch: '2 in',
      cm: 'cm',
      in: 'in',
    },
  };
};
