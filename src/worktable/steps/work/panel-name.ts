import type { PanelAt, Work } from '../../../core/work/progress.js';
import { figure, words } from '../../words.js';
import { work } from './work-store.js';

/** Every panel that is made: those of the pattern, once for each piece. */
export const panelsOf = ({ pattern, copies }: Work): PanelAt[] =>
  Array.from({ length: copies }, (_, n) =>
    pattern.panels.map((_panel, panel): PanelAt => ({ panel, copy: n + 1 })),
  ).flat();

/** The name of a panel, and the how-manieth it is where there are several. */
export function panelName({ panel, copy }: PanelAt, alone = false): string {
  const say = words.value.work;
  const now = work.value!;
  const { name } = now.pattern.panels[panel];
  const known = (say.sides as Record<string, string>)[name] ?? name;
  const only = now.pattern.panels.length === 1 ? say.panel : known;
  return now.copies > 1 && !alone
    ? say.panelOf({ name: only, n: figure(copy), of: figure(now.copies) })
    : only;
}
