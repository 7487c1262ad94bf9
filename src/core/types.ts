/** The types that functions of the core take and give, by name; `index.ts` exports them all. */
export type { Place as PlaceFacts, Repair as RepairFacts } from '../words/en/place.js';
export type { Pair, Panels } from '../words/pages/english/sewing.js';
export type { FaceWord, HandWord } from '../words/pages/english/chart.js';
export type { FrameKind, StitchSpan } from '../words/pages/english/frame.js';
export type { PageWords } from '../words/pages/index.js';
export type { Language } from '../words/pages/languages.js';
export type { ProofLevel } from './choice/choose.js';
export type { Mask } from './importance/mask.js';
export type { Threaded } from './thread/need.js';
export type { Strung } from './texts/stringing.js';
export type { GeometryOptions } from './geometry/panel.js';
export type { Ring } from './geometry/rings.js';
export type { ChoiceInput, ChoiceResult } from './choice/choose.js';
export type { BeadWish } from './decide-beads.js';
export type { CellMark, GreyFill } from './draw/grey-fills.js';
export type {
  Face,
  FontChoice,
  FontFiles,
  Fonts,
  FurtherFont,
  Glyph,
  LineBreaks,
} from './draw/font.js';
export type { SampleCard } from './draw/sample-card.js';
export type { LiningSheet } from './draw/lining-piece.js';
export type { PrintPaper } from './draw/print-sheet.js';
export type { OutlineSpot, SoftOutline } from './lining/soft-outline.js';
export type { PanelSheet } from './draw/sheet.js';
export type { WorkedInput } from './draw/worked.js';
export type { ErrorFacts } from './errors.js';
export type { FrameMeasures } from './frame/measures.js';
export type { FramePlan, FrameRound, HingeMark, HolePlan } from './frame/plan.js';
export type { StitchRun } from './frame/stretch.js';
export type { EdgeGeometry } from './geometry/edge.js';
export type { NearPair } from './palette/alike.js';
export type { JarGrid } from './palette/photo/grid.js';
export type { Jar } from './palette/photo/read-jars.js';
export type { Palette, PaletteSurvey } from './palette/read-palette.js';
export type { RowProblem } from './palette/rows.js';
export type { BeadSize } from './palette/sizes.js';
export type { PaletteFormat } from './palette/table.js';
export type { Problem, ProblemCode } from './pattern/check.js';
export type { BackWish, MadePanel } from './make.js';
export type { PanelFacts, PatternReport } from './pattern/report.js';
export type { Choice, Frame, PatternPicture } from './pattern/schema.js';
export type { DoubtReason } from './reading/judge.js';
export type { ArtDecision, ArtFacts } from './sampling/art.js';
export type { PlaceWish } from './sampling/place.js';
export type { SampleInput, StitchColours } from './sampling/sample.js';
export type { ShapeWish } from './shape.js';
export type { MaterialRow, MaterialsWish } from './texts/materials.js';
export type { LiningCloth, ShoppingThread, ShoppingTotals } from './texts/shopping.js';
export type { Thread } from './pattern/schema.js';
export type { Sewing } from './thread/sewing.js';
export type { SwatchGuide } from './draw/swatch-guide.js';
export type { Point } from './reading/homography.js';
export type { PhotoPoint, PhotoResult, PhotoWish } from './swatch/photo.js';
export type { Estimate, SwatchMeasured, SwatchWorked } from './swatch/schema.js';
export type { SwatchWish } from './swatch/solve.js';
export type { EstimateEnds, GuideFacts, SwatchLies } from '../words/en/swatch.js';
export type { ListHead } from './texts/read-head.js';
export type { ListedRound } from './texts/read-rounds.js';
export type { Millimetres } from './units.js';

declare global {
  /**
   * The types of zod name `URL`, which ES2023 alone does not have. Empty, so that it adds nothing
   * where the DOM's or Node's own types are loaded.
   */
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type
  interface URL {}
}
