import { warningSentence } from '../../core/errors.js';
import type { Warning } from '../../core/errors.js';
import type { Estimate, Swatch } from '../../core/swatch/swatch.js';
import { wrapped } from '../../core/pages/lists/lines.js';
import type { Words } from '../../words/index.js';

/** What a swatch tells, in aligned rows, what to mind last. */
export function swatchSummary(
  swatch: Swatch,
  told: readonly string[],
  file: string | undefined,
  words: Words,
): string {
  const said = words.swatch;
  const { worked, lies, flatWedges } = swatch;
  const say = (one: Estimate | undefined, as: (one: Estimate) => string) =>
    one ? as(one) : said.unknown;
  const rows: [string, string][] = [
    [said.rows.worked, said.worked(worked)],
    [said.rows.height, say(swatch.roundHeightMm, said.mm)],
    [said.rows.width, say(swatch.stitchWidthMm, said.mm)],
    [said.rows.lean, say(swatch.lean, said.lean)],
  ];
  if (flatWedges) {
    const wedges = Math.min(12, Math.max(3, Math.round(flatWedges.value)));
    rows.push([said.rows.flat, said.flat({ ...flatWedges, wedges, outline: worked.outline })]);
  }
  if (swatch.perStitchMm) rows.push([said.rows.thread, said.perStitch(swatch.perStitchMm)]);
  if (swatch.beadLengthMm) rows.push([said.rows.bead, said.mm(swatch.beadLengthMm)]);
  const wide = Math.max(...rows.map(([name]) => name.length));
  const lines = [
    said.title({ file }),
    ...rows.map(([name, text]) => `  ${name.padEnd(wide)}  ${text}`),
    '',
    wrapped(
      said.note({ spiralLean: worked.construction === 'spiral' && swatch.lean !== undefined }),
    ),
  ];
  if (lies !== 'flat') lines.push('', wrapped(said.cure[lies](worked)));
  for (const one of told) lines.push('', wrapped(`${words.cli.summary.warning} ${one}`));
  return lines.join('\n') + '\n';
}

/** The same for a program: the swatch itself, and what to mind. */
export function swatchJson(
  swatch: Swatch,
  warnings: readonly Warning[],
  file: string | undefined,
  words: Words,
): string {
  const object = {
    schema: 'rondure-swatch-summary',
    version: 1,
    file: file ?? null,
    ...swatch,
    warnings: warnings.map((one) => ({ ...one, message: warningSentence(words, one) })),
  };
  return JSON.stringify(object, null, 2) + '\n';
}
