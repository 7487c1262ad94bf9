import type { Words } from '../../words/index.js';
import type { Pattern } from '../pattern/pattern.js';
import type { Picture } from '../picture/picture.js';
import type { PanelSheet } from './panel/sheet.js';
import type { Fonts } from './surface/font.js';
import type { Paper } from './surface/paper.js';
import type { CompareInput } from './worked/compare.js';

/** What a place makes pictures with; files that need what it lacks are left out there. */
export interface OutputTools {
  /** PNG bytes of pixels. */
  png(picture: Picture): Promise<Uint8Array>;
  /** PNG bytes of a chart on white, so many pixels wide. */
  chart?(given: {
    readonly sheet: PanelSheet;
    readonly paper: Paper;
    /** The same chart as a drawing. */
    readonly svg: () => string;
    readonly widthPx: number;
  }): Promise<Uint8Array>;
  /** PNG bytes of the comparison with a chart without lean. */
  compare?(input: CompareInput, fonts: Fonts, words: Words): Promise<Uint8Array>;
}

/** What a file of a pattern is made from. */
export interface OutputFacts {
  readonly pattern: Pattern;
  /** Index into pattern.panels; 0 for a file of the whole pattern. */
  readonly panel: number;
  readonly words: Words;
  readonly fonts: Fonts;
  readonly tools: OutputTools;
  /** The panel laid out; once, however many files ask. */
  sheet(): PanelSheet;
  /** Its chart without the pattern in it; once. */
  chart(): string;
  /** The text of pattern.json; once. */
  json(): string;
}
