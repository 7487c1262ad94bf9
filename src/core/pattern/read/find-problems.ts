import { RondureError } from '../../errors.js';
import { shapeLimits, stitchesInRound } from '../../panel/shape.js';
import type { Shape } from '../../panel/shape.js';
import { checkPattern } from './check.js';
import type { Problem } from './check.js';
import { isTooDeep } from '../../input-limits.js';
import { isRecord, issueFault, pathText } from '../../value-fault.js';
import { parseEnvelope } from './parse.js';
import { bareMark } from '../marks.js';
import { patternSchema } from '../schema.js';
import type { Pattern } from '../pattern.js';

/** What `findProblems` found. */
export interface Findings {
  /** Real breaks: no other file can be made from the pattern before they are mended. */
  readonly problems: Problem[];
  /** Untidy, but sound. */
  readonly notes: Problem[];
  /** The pattern, when it has no problem. */
  readonly pattern?: Pattern;
}

/**
 * Everything that is wrong in the text of a pattern file, not only the first thing: values that
 * cannot stand where they stand, then whatever `checkPattern` finds in the rest.
 *
 * @param where how to name the file in an error
 * @throws RondureError `pattern-not-json`, `pattern-not-ours`, `pattern-too-new`, where there is no
 *   pattern that could be checked
 */
export function findProblems(text: string, where: string): Findings {
  const given = parseEnvelope(text, where);
  if (isTooDeep(given)) {
    const facts = { path: '', problem: { kind: 'too-deep' } as const };
    return { problems: [{ code: 'value-wrong', facts }], notes: [] };
  }
  const result = patternSchema.safeParse(given);
  const found = checkPattern(result.success ? (result.data as Pattern) : readablePart(given));
  const notes = found.filter(({ code }) => code === 'letter-out-of-order');
  const problems = found.filter(({ code }) => code !== 'letter-out-of-order');
  if (result.success) {
    if (problems.length > 0) return { problems, notes };
    return { problems, notes, pattern: result.data as Pattern };
  }
  const unreadable = result.error.issues
    // Strange letters are told with round and stitch by `checkPattern`.
    .filter(({ code, path }) => !(code === 'invalid_format' && path[2] === 'rounds'))
    .map((issue): Problem => {
      const [list, panel, rounds, round] = issue.path;
      if (list === 'panels' && rounds === 'rounds' && typeof round === 'number') {
        const facts = { panel: panelName(given, panel as number), round: round + 1 };
        return { code: 'round-unreadable', facts };
      }
      const facts = { path: pathText(issue.path), problem: issueFault(issue, given) };
      return { code: 'value-wrong', facts };
    });
  return { problems: [...unreadable, ...problems], notes };
}

/** One error with all problems in it. */
export function brokenError(where: string, problems: readonly Problem[]) {
  return new RondureError('pattern-broken', { where, problems });
}

function panelName(given: Record<string, unknown>, panel: number): string {
  const found: unknown = (given.panels as unknown[])[panel];
  const name = isRecord(found) ? found.name : undefined;
  return typeof name === 'string' && name !== '' ? name.slice(0, 80) : `${panel + 1}`;
}

/** What of a broken pattern can still be checked, with nothing in the gaps that would be a problem. */
function readablePart(given: Record<string, unknown>): Pattern {
  const shape = isRecord(given.shape) ? given.shape : {};
  const within = (value: unknown, { least, most }: { least: number; most: number }) =>
    Number.isInteger(value) && (value as number) >= least && (value as number) <= most;
  const countable =
    within(shape.wedges, shapeLimits.wedges) && within(shape.rounds, shapeLimits.rounds);
  const beads = (Array.isArray(given.beads) ? (given.beads as unknown[]) : []).flatMap((bead) =>
    isRecord(bead) && typeof bead.letter === 'string'
      ? [{ letter: bead.letter, id: '-', name: '-', hex: '#000000' }]
      : [],
  );
  const complete = Array.isArray(given.beads) && beads.length === given.beads.length;
  const panels = Array.isArray(given.panels) ? given.panels.slice(0, 2) : [];
  const readable = panels.flatMap((panel: unknown, index) => {
    if (!countable || !complete || !isRecord(panel) || !Array.isArray(panel.rounds)) return [];
    const rounds = panel.rounds.map((marks: unknown, r) => {
      if (typeof marks === 'string') return marks;
      return bareMark.repeat(stitchesInRound(shape as Partial<Shape> as Shape, r + 1));
    });
    return [{ ...panel, name: panelName(given, index), rounds, startDegrees: 0 }];
  });
  return { ...given, shape, beads, panels: readable, thread: undefined } as unknown as Pattern;
}
