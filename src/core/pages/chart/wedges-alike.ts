import type { PanelSheet } from '../panel/sheet.js';

/** Whether every wedge of every round of a panel is worked alike. */
export function wedgesAlike({ geometry, pattern, panel }: PanelSheet): boolean {
  const { wedges } = geometry.shape;
  return pattern.panels[panel].rounds.every(
    (marks) => marks.slice(0, marks.length / wedges).repeat(wedges) === marks,
  );
}
