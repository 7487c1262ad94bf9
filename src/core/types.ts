/** The types that functions of the core take and give, by name; `index.ts` exports them all. */
export type { Place as PlaceFacts, Repair as RepairFacts } from '../words/en/place.js';
export type { Pair, Panels } from '../words/pages/english/sewing.js';
export type { FaceWord, HandWord } from '../words/pages/english/chart.js';
export type { FrameKind, StitchSpan } from '../words/pages/english/frame.js';
export type { PageWords } from '../words/pages/index.js';
export type { Language } from '../words/pages/languages.js';
export type {
  BeadLook,
  ColourFamily,
  ColourTone,
  ColourWord,
  FinishKind,
} from '../words/pages/looks.js';
export type { ProofLevel } from './beads/choice/choose.js';
export type { Mask } from './picture/importance/mask.js';
export type { Threaded } from './thread/need.js';
export type { Strung } from './thread/strung-rounds.js';
export type { GeometryOptions } from './panel/geometry.js';
export type { Ring } from './panel/rings.js';
export type { ChoiceInput, ChoiceResult } from './beads/choice/choose.js';
export type { BeadWish } from './beads/decide-beads.js';
export type { CellMark, GreyFill } from './pages/panel/grey-fills.js';
export type {
  Face,
  FontChoice,
  FontFiles,
  Fonts,
  FurtherFont,
  Glyph,
  LineBreaks,
} from './pages/surface/font.js';
export type { SampleCard } from './pages/chart/sample-card.js';
export type { LiningSheet } from './pages/lining/lining-piece.js';
export type { PrintPaper } from './pages/surface/print-sheet.js';
export type { OutlineSpot, SoftOutline } from './purse/lining/soft-outline.js';
export type { PanelSheet } from './pages/panel/sheet.js';
export type { WorkedInput } from './pages/worked/worked.js';
export type { ErrorFacts } from './errors.js';
export type { FramePlan, FrameRound, HingeMark, HolePlan } from './purse/frame/plan.js';
export type { StitchRun } from './purse/frame/stretch.js';
export type { SizedPanel, SizedWish, SizeRange } from './panel/across.js';
export type { EdgeGeometry } from './panel/edge.js';
export type { NearPair } from './beads/palette/alike.js';
export type { JarGrid } from './beads/palette/photo/grid.js';
export type { Jar } from './beads/palette/photo/read-jars.js';
export type { Palette, PaletteSurvey } from './beads/palette/read-palette.js';
export type { RowProblem } from './beads/palette/rows.js';
export type { BeadSize } from './beads/palette/sizes.js';
export type { PaletteFormat } from './beads/palette/table-rows.js';
export type { Problem, ProblemCode } from './pattern/read/check.js';
export type { BackWish, MadePanel } from './make.js';
export type { PanelFacts, PatternReport } from './pattern/report.js';
export type { Choice, EdgesKept, Tidied } from './beads/how-chosen.js';
export type { Frame, FrameMeasures } from './purse/frame/measures.js';
export type { PatternPicture, Thread } from './pattern/pattern.js';
export type { LaidStitches, Painted, WishedPlace, WishedShape } from './pattern/wished.js';
export type { AllRings } from './panel/footprints.js';
export type { Told } from './brush/by-hand.js';
export type { DoubtReason } from './blank/judge.js';
export type { CutOff } from './picture/cut-off.js';
export type { ArtDecision, ArtFacts } from './picture/sampling/art.js';
export type { SvgRoot } from './picture/header/svg-root.js';
export type { SvgSize } from './picture/svg/size.js';
export type { HowKept, MergedArea } from './beads/how-kept.js';
export type { PlaceWish } from './picture/sampling/place.js';
export type { Stage, Steps } from './steps.js';
export type { SampleInput, StitchColours } from './picture/sampling/sample.js';
export type { LostLines } from './picture/sampling/thin.js';
export type { ShapeWish } from './panel/shape.js';
export type { MaterialRow, MaterialsWish } from './pages/lists/materials.js';
export type {
  LiningCloth,
  PanelLining,
  ShoppingThread,
  ShoppingTotals,
  Spools,
} from './pages/lists/shopping.js';
export type { SwapScope } from './beads/recolour.js';
export type { Sewing } from './thread/sewing.js';
export type { SwatchGuide } from './pages/swatch/guide-facts.js';
export type { Point } from './homography.js';
export type { PhotoPoint, PhotoResult, PhotoWish } from './swatch/photo.js';
export type { Estimate, SwatchMeasured, SwatchPhoto, SwatchWorked } from './swatch/swatch.js';
export type { SwatchWish } from './swatch/solve.js';
export type { EstimateEnds, Outline, SwatchLies } from '../words/en/swatch.js';
export type { GuideFacts } from '../words/pages/english/swatch.js';
export type { Subject } from './picture/subject.js';
export type { HandSaid } from '../words/pages/english/hands.js';
export type { ListHead } from './pages/lists/read-head.js';
export type { ListedRound } from './pages/lists/read-rounds.js';
export type { Millimetres } from './units.js';

declare global {
  /**
   * The types of zod name `URL`, which ES2023 alone does not have. Empty, so that it adds nothing
   * where the DOM's or Node's own types are loaded.
   */
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type
  interface URL {}
}
