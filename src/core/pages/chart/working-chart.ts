import { workingLay } from '../../panel/working-face.js';
import type { PanelSheet } from '../panel/sheet.js';

/** The sheet of a panel with everything as its worker sees it. */
export function workingSheet(sheet: PanelSheet): PanelSheet {
  const { shape } = sheet.geometry;
  const { geometry, footprints } = workingLay(shape);
  return { ...sheet, geometry, footprints, seen: { mirrored: shape.beadsFace === 'away' } };
}
