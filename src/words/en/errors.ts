/**
 * One clear sentence for each error code: what, where, and what to do. The parameter is the
 * error's facts. Keys are stable: programs read them.
 */
export const errors = {
  'shape-impossible': (f: { field: string; got: unknown; expected: string }) =>
    `The panel cannot have ${f.field} ${String(f.got)}: use ${f.expected}.`,
  'polygon-needs-end-increase': () =>
    'A polygon outline needs the increase in the first or the last stitch of each wedge: use --increase first or last, or --outline circle.',
  'pattern-not-json': (f: { where: string; detail: string }) =>
    `${f.where} is not readable as JSON (${f.detail}): open it in the program that wrote it, or make it again from the picture.`,
  'pattern-not-ours': (f: { where: string }) =>
    `${f.where} is not a Rondure pattern: its "format" should be "rondure-pattern".`,
  'pattern-too-new': (f: { where: string; version: number; known: number }) =>
    `${f.where} was written by a newer Rondure (pattern version ${f.version}, this one reads up to ${f.known}): update Rondure.`,
  'pattern-invalid': (f: { where: string; path: string; problem: string; more: number }) =>
    `${f.where} is not a valid pattern: ${f.path ? `${f.path}: ` : ''}${f.problem}${f.more > 0 ? ` (and ${f.more} more)` : ''}. Correct it or make the pattern again from the picture.`,
};
