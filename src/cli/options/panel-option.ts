import { RondureError } from '../../core/errors.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { panelLengths } from '../../core/thread/lengths.js';

/**
 * The panel that `--panel` names, 0-based.
 * @throws RondureError `panel-unknown`
 */
export function panelNamed({ panels }: Pick<Pattern, 'panels'>, text: string): number {
  const byName = panels.findIndex(({ name }) => name.toLowerCase() === text.toLowerCase());
  if (byName >= 0) return byName;
  const number = /^\d$/.test(text) ? Number(text) - 1 : -1;
  if (number >= 0 && number < panels.length) return number;
  const names = panels.map(({ name }, index) => `${index + 1} (${name})`);
  throw new RondureError('panel-unknown', { got: text, panels: names });
}

/** @throws RondureError `length-unknown` when none of these panels has such a length */
export function requireLength(pattern: Pattern, panels: Iterable<number>, length: number): void {
  const lengths = Math.max(...Array.from(panels, (panel) => panelLengths(pattern, panel).length));
  if (length > lengths) throw new RondureError('length-unknown', { got: length, lengths });
}
