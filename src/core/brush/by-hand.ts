import type { Bead } from '../beads/bead.js';
import { withInstead } from '../beads/instead.js';
import { mistakenWarnings } from '../beads/mistaken.js';
import { pastStockWarnings } from '../beads/recolour.js';
import { warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { panelFacts } from '../pattern/report.js';
import type { Pattern } from '../pattern/pattern.js';
import type { HandLaid } from '../pattern/wished.js';
import { withHandLaid } from './hand-laid.js';

/** What a maker does to the beads after they were chosen. */
export interface ByHand {
  /** Beads laid wherever others were chosen, both by their ids; out of `palette`, or in the pattern. */
  readonly instead?: Readonly<Record<string, string>> | undefined;
  /** Beads that are laid, found here by their ids. */
  readonly palette: readonly Bead[];
  /** Beads laid one by one, over all that was chosen. */
  readonly laid?: HandLaid | undefined;
}

/** What `byHand` renews in a report, whatever else stands there. */
export interface Told {
  /** Stitches that carry a bead, over all panels. */
  beads: number;
  /** Beads that at least one stitch carries. */
  colours: number;
  /** The same of each panel, and the colour changes along its thread. */
  panels: { beads: number; colourChanges: number }[];
  /** What the maker should know about the result. */
  warnings: Warning[];
}

/**
 * A chosen pattern as the maker's hand has it: first the beads laid instead of others, then those
 * laid one by one. The pattern's wish keeps both, so that a chart made from it is the same again.
 * `choice` and the differences of the report stay those of the choice.
 *
 * @throws RondureError `no-letter-free`
 */
export function byHand<R extends Told>(
  made: { pattern: Pattern; report: R },
  { instead = {}, palette, laid }: ByHand,
): { pattern: Pattern; report: R } {
  const swapped = withInstead(made.pattern, instead, palette);
  const kept = withWish(swapped, instead);
  const { pattern, lost } = laid ? withHandLaid(kept, laid) : { pattern: kept, lost: 0 };
  if (pattern === made.pattern && lost === 0) return made;
  const facts = panelFacts(pattern);
  const panels = made.report.panels.map((one, n) => ({ ...one, ...facts[n] }));
  const chosen = made.report.warnings.filter(({ code }) => !alikeCodes.has(code));
  const warnings = [
    ...chosen,
    ...mistakenWarnings(pattern.beads),
    ...pastStockWarnings(made.pattern, pattern),
    ...(lost > 0 ? [warning('laid-beads-lost', { lost })] : []),
  ];
  const { length: colours } = pattern.beads;
  return { pattern, report: { ...made.report, beads: facts[0].beads, colours, panels, warnings } };
}

const alikeCodes: ReadonlySet<string> = new Set([
  'beads-look-alike',
  'beads-look-alike-to-some',
  'beads-alike-in-grey',
]);

function withWish(pattern: Pattern, instead: Readonly<Record<string, string>>): Pattern {
  const { wish } = pattern;
  if (!wish || Object.keys(instead).length === 0) return pattern;
  return { ...pattern, wish: { ...wish, instead } };
}
