import type { BlankName } from '../../core/pages/blank-outputs.js';
import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import type { FontFiles } from '../../core/pages/surface/font.js';
import type { EasternFont } from '../../core/pages/surface/page-fonts.js';
import type { SwatchGuide } from '../../core/pages/swatch/guide-facts.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { LanguageChoice } from '../../words/index.js';
import type { Failure } from '../engine/failure.js';
import type { PagesWish } from '../store/piece.js';

/** What the guide to a swatch tells, but for words and letters. */
export type GuideFacts = Omit<SwatchGuide, 'words' | 'fonts'>;

/** What is to be made, and of what. */
export type PagesOf =
  | {
      readonly what: 'booklet' | 'zip' | 'lists' | 'pictures' | BlankName;
      readonly pattern: Pattern;
    }
  | {
      readonly what: 'class';
      readonly pattern: Pattern;
      /** More patterns after it, and the names. */
      readonly also: { readonly patterns: readonly Pattern[]; readonly names: readonly string[] };
    }
  | { readonly what: 'swatch-guide'; readonly guide: GuideFacts };

/** How pages are wished, with everything said. */
export type PagesAsk = PagesOf & PagesManner;

interface PagesManner {
  readonly languages: LanguageChoice;
  readonly paper: PrintPaper;
  readonly wish: PagesWish;
  readonly fonts: FontFiles;
  /** The face of a booklet's running text. */
  readonly text: FontFiles;
  readonly eastern: Readonly<Partial<Record<EasternFont, FontFiles>>>;
}

export type PagesAnswer =
  | { readonly bytes: Uint8Array | string }
  /** One page of the booklet as a picture; more follow until `page` is `pages`. */
  | { readonly png: Uint8Array; readonly page: number; readonly pages: number }
  /** Texts by the names of their files. */
  | { readonly lists: Readonly<Record<string, string>> }
  | { readonly failed: Failure };
