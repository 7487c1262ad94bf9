import { warningSentence } from '../../core/errors.js';
import type { Warning } from '../../core/errors.js';
import type { SizeRange } from '../../core/panel/across.js';
import type { FramePlan } from '../../core/purse/frame/plan.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import { wrapped } from '../../core/pages/lists/lines.js';
import type { Words } from '../../words/index.js';

/** What `frame` found. */
export interface FrameResult {
  readonly frame: Frame;
  readonly plan: FramePlan;
  /** Between what the width as worn lies: before a swatch both outlines are possible. */
  readonly worn: SizeRange;
  readonly warnings: readonly Warning[];
  /** Whether the number of rounds is ours, not the maker's. */
  readonly recommended: boolean;
  readonly file: string | undefined;
  /** Whether the stitch is that of a swatch. */
  readonly swatch: boolean;
}

/** The plan as one object; lengths to 0.01 mm. */
export function frameJson(result: FrameResult, words: Words): string {
  const { frame, plan, recommended, file } = result;
  const object = {
    schema: 'rondure-frame-plan',
    version: 1,
    file: file ?? null,
    frame,
    recommended,
    plan: { ...plan, holes: plan.holes ?? null },
    wornRangeMm: [result.worn.leastMm, result.worn.mostMm],
    warnings: result.warnings.map((one) => ({ ...one, message: warningSentence(words, one) })),
  };
  const shorter = (_key: string, value: unknown) =>
    typeof value === 'number' ? Math.round(value * 100) / 100 : value;
  return JSON.stringify(object, shorter, 2) + '\n';
}

/** How many times as wide as the frame the panel is: 1.17, or 1.12–1.17. */
function ratioText({ worn, frame }: FrameResult): string {
  const ends = [worn.leastMm, worn.mostMm].map((mm) => (mm / frame.widthMm).toFixed(2));
  return [...new Set(ends)].join('–');
}

/** The plan for a person. */
export function framePlanText(result: FrameResult, words: Words): string {
  const said = words.frame;
  const { frame, plan, recommended, file } = result;
  const { rows } = said;
  const mm = (value: number) => String(Math.round(value * 10) / 10);
  const [rim] = plan.framed;
  const bare = plan.framed.filter((one) => one.bare);
  const bareStitches = bare.reduce((sum, { stitches }) => sum + stitches, 0);
  const percent = Math.abs(plan.gatherPercent).toFixed(1);
  const lines: [string, string][] = [
    [rows.rail, said.rail({ mm: plan.railMm.toFixed(1) })],
    [
      rows.panel,
      said.panel({
        rounds: plan.rounds,
        worn: result.worn,
        ratio: ratioText(result),
        recommended,
      }),
    ],
    [
      rows.rim,
      said.rim({
        stitches: plan.stitches,
        mm: plan.stretchMm.toFixed(1),
        percent: Math.round((100 * plan.stretchMm) / plan.rimMm),
      }),
    ],
    [rows.stitches, said.stitches(rim)],
    [
      rows.bare,
      bare.length === 0
        ? said.bareNone
        : said.bare({ rounds: bare.length, stitches: bareStitches }),
    ],
    ...bare.slice(1).map((one): [string, string] => ['', said.stitches(one)]),
    [
      rows.fit,
      said.fit({ percent, gather: percent === '0.0' ? undefined : plan.gatherPercent > 0 }),
    ],
    ...(plan.holes
      ? [
          [
            rows.holes,
            said.holes({
              ...plan.holes,
              spacingMm: mm(plan.holes.spacingMm),
              mean: (plan.stitches / plan.holes.spaces).toFixed(2),
            }),
          ] as [string, string],
        ]
      : []),
    ...plan.hinges.map((one, n): [string, string] => [
      n === 0 ? rows.hinges : '',
      said.hinge({ ...one, round: plan.rounds }),
    ]),
    [rows.seam, said.seam({ ...plan.seam, round: plan.rounds, mm: plan.seam.lengthMm.toFixed(1) })],
  ];
  const wide = Math.max(...lines.map(([name]) => name.length));
  const title = said.title({ ...frame, widthMm: mm(frame.widthMm), heightMm: mm(frame.heightMm) });
  const text = [title];
  for (const [name, what] of lines) {
    const [first, ...rest] = wrapped(what, 74 - wide).split('\n');
    text.push(`  ${name.padEnd(wide)}  ${first}`);
    for (const more of rest) text.push(`${' '.repeat(wide + 6)}${more}`);
  }
  for (const one of result.warnings) {
    text.push('', wrapped(`${words.cli.summary.warning} ${warningSentence(words, one)}`));
  }
  text.push('', wrapped(said.notes.estimate(result)), '', wrapped(said.notes[frame.fixing]));
  if (file !== undefined) text.push('', said.saved(file));
  return `${text.join('\n')}\n`;
}
