import type { Bead } from '../../core/beads/bead.js';
import type { PrintPaper } from '../../core/pages/surface/print-sheet.js';
import type { Language } from '../../words/pages/languages.js';
import type { Swatch } from '../../core/swatch/swatch.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { ShapeWish } from '../../core/panel/shape.js';
import type { Picture } from '../../core/picture/picture.js';
import type { BrushPull } from '../../core/picture/importance/painted-mask.js';
import type { Frame } from '../../core/purse/frame/measures.js';
import type { PlaceWish } from '../../core/picture/sampling/place.js';
import type { Work } from '../../core/work/progress.js';

/** The picture on the table. Its pixels are never changed, only replaced. */
export interface PiecePicture {
  readonly name: string;
  readonly picture: Picture;
  /** The file as it was opened, so that the piece can be saved whole. */
  readonly file?: Blob | undefined;
}

/** The maker's beads. */
export interface PiecePalette {
  readonly name: string;
  readonly beads: readonly Bead[];
  readonly diameterMm: number;
}

/**
 * What is wished of the panel, as plain data without pixels and without palette indices: beads
 * are named by their ids, which stand in other palettes, too.
 */
export interface PieceWish {
  readonly shape: Omit<ShapeWish, 'rounds' | 'beadDiameterMm'> & { readonly rounds?: number };
  readonly acrossMm?: number | undefined;
  readonly startDegrees?: number | undefined;
  readonly place: PlaceWish;
  readonly art: 'auto' | 'photo' | 'drawing';
  readonly paper: boolean;
  readonly darkCover: number;
  readonly detail: number;
  /** How much neighbours that differ in the picture are kept different, 0 to 1. */
  readonly edges: number;
  /** How much a picture of little contrast is stretched onto what the beads can show, 0 to 1. */
  readonly lift: number;
  /** Whether a plain ground is cut away. */
  readonly cutOut: boolean;
  /** `auto`, `#rrggbb`, `bare`, or `{ id }` of a bead. */
  readonly background: string | { readonly id: string };
  readonly colours: number;
  readonly keep: readonly string[];
  readonly leaveOut: readonly string[];
  /** Beads laid instead of those that were chosen, both by their ids: swapped, or merged. */
  readonly instead: Readonly<Record<string, string>>;
  readonly useStock: boolean;
  readonly tidy: number;
  /** The purse frame that bares the rim of the panels. */
  readonly frame?: Frame | undefined;
  /** The second panel: the same picture, one of its own (`Piece.backPicture`), or one bead by its id. */
  readonly back?: 'same' | 'own' | { readonly id: string } | undefined;
  /** How its picture lies, where it lies otherwise. */
  readonly backPlace?: PlaceWish | undefined;
  /** Instead of `tidy` where it is given. */
  readonly dither?: number | undefined;
}

/** A photograph for the cover. */
export interface CoverPhoto {
  readonly name: string;
  /** JPEG in base64, so that it is kept and saved with all else. */
  readonly jpeg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** How the pages of a piece are wished; what is absent is as on the command line. */
export interface PagesWish {
  readonly language?: Language | undefined;
  readonly second?: Language | undefined;
  readonly paper?: PrintPaper | undefined;
  readonly grey?: boolean | undefined;
  readonly large?: boolean | undefined;
  /** The hand it is for, where that is not the piece's own. */
  readonly otherHand?: 'right' | 'left' | undefined;
  readonly photo?: CoverPhoto | undefined;
  readonly author?: string | undefined;
  readonly licence?: string | undefined;
  readonly date?: string | undefined;
  /** Where corrections go to, and how long the work takes, in the maker's words. */
  readonly contact?: string | undefined;
  readonly time?: string | undefined;
  /** How many purses the shopping list is for. */
  readonly pieces?: number | undefined;
}

/**
 * One piece of work: all that is kept, undone and saved of it. Plain data that is replaced, never
 * changed; a step that needs more adds a part here.
 */
export interface Piece {
  readonly title: string;
  /** Whether it is our sample, until the maker lays something of their own. */
  readonly sample: boolean;
  readonly picture?: PiecePicture | undefined;
  /** What the maker brushed over since it must not be lost, on the picture. */
  readonly minded?: readonly BrushPull[] | undefined;
  /** The picture of the back, where it has one of its own. */
  readonly backPicture?: PiecePicture | undefined;
  /** A chart that was opened without the picture that it was made from. */
  readonly opened?: Pattern | undefined;
  readonly palette: PiecePalette;
  /** The maker's own stitch, as it was measured. */
  readonly swatch?: Swatch | undefined;
  readonly pages?: PagesWish | undefined;
  readonly wish: PieceWish;
  /** Beads laid by hand: id of the bead, or `.` for bare, by `panel:stitch`. */
  readonly laid: Readonly<Record<string, string>>;
  /** The beads that were laid by hand, in the order in which they were first taken up: they stay with another palette, too. */
  readonly laidBeads?: readonly Bead[] | undefined;
  /** The wedges on which they were laid: with others they have no place, and wait. */
  readonly laidWedges?: number | undefined;
  /** How far stringing and crocheting have come; changed by `pieces.mark`, which no undo touches. */
  readonly work?: Work | undefined;
}
