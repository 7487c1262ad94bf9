import type { PagePart } from '../surface/page-part.js';
import type { Area } from '../surface/print-sheet.js';
import { drawText, mmPerPoint, textWidth, wrapped } from '../surface/text.js';
import type { TextStyle } from '../surface/text.js';
import type { SwatchGuide } from './guide-facts.js';

/** What stays together on a sheet, and its parts once its top is known. */
export interface Block {
  readonly heightMm: number;
  partsAt(top: number): PagePart[];
}

/** How the guide's sentences are set. */
export interface GuideType {
  readonly title: TextStyle;
  readonly bold: TextStyle;
  readonly plain: TextStyle;
  readonly small: TextStyle;
  /** From line to line, millimetres. */
  readonly lineMm: number;
  readonly area: Area;
}

const leading = 1.34;
const indentMm = 9;

export function guideType({ fonts }: SwatchGuide, area: Area, points: number): GuideType {
  const at = (size: number, face = fonts.regular): TextStyle => ({
    face,
    sizeMm: size * mmPerPoint,
  });
  return {
    title: at(22, fonts.bold),
    bold: at(points, fonts.bold),
    plain: at(points),
    small: at(12),
    lineMm: leading * points * mmPerPoint,
    area,
  };
}

/** The heading of a sheet. */
export function titleBlock(text: string, type: GuideType): Block {
  const lines = wrapped(text, type.title, type.area.right - type.area.left);
  const step = 9;
  return {
    heightMm: lines.length * step + 2,
    partsAt: (top) => [
      {
        as: 'title',
        draw(surface) {
          lines.forEach((line, n) =>
            drawText(surface, line, type.title, type.area.left, top + n * step + 8),
          );
        },
      },
    ],
  };
}

/** A heading below it, or a paragraph, and the room after it. */
export function textBlock(
  as: 'head' | 'text' | 'step',
  text: string,
  type: GuideType,
  { style = as === 'head' ? type.bold : type.plain, left = type.area.left, afterMm = 2 } = {},
): Block {
  const lines = wrapped(text, style, type.area.right - left);
  const lineMm = leading * style.sizeMm;
  return {
    heightMm: lines.length * lineMm + afterMm,
    partsAt: (top) => [
      {
        as,
        draw(surface) {
          lines.forEach((line, n) =>
            drawText(surface, line, style, left, top + (n + 0.8) * lineMm),
          );
        },
      },
    ],
  };
}

/** A step of a numbered list: number and head in bold, then what to do. */
export function stepBlock(n: number, head: string, text: string, type: GuideType): Block {
  const { bold, plain, lineMm, area } = type;
  const left = area.left + indentMm;
  const after = textWidth(`${head}  `, bold);
  const lines = wrapped(text, plain, area.right - left, after);
  return {
    heightMm: lines.length * lineMm + 1.6,
    partsAt: (top) => [
      {
        as: 'step',
        draw(surface) {
          const first = top + 0.8 * lineMm;
          drawText(surface, `${n}.`, bold, area.left, first);
          drawText(surface, head, bold, left, first);
          lines.forEach((line, k) =>
            drawText(surface, line, plain, k === 0 ? left + after : left, first + k * lineMm),
          );
        },
      },
    ],
  };
}

/** An item of a list, set in. */
export const itemBlock = (text: string, type: GuideType): Block =>
  textBlock('step', text, type, { left: type.area.left + indentMm, afterMm: 0 });

/** Room between two blocks. */
export const space = (heightMm: number): Block => ({ heightMm, partsAt: () => [] });

/** Blocks that must not be parted. */
export function together(...blocks: Block[]): Block {
  return {
    heightMm: blocks.reduce((sum, { heightMm }) => sum + heightMm, 0),
    partsAt(top) {
      let y = top;
      return blocks.flatMap(({ heightMm, partsAt }) => {
        const parts = partsAt(y);
        y += heightMm;
        return parts;
      });
    },
  };
}
