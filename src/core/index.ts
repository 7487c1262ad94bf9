/**
 * Rondure's core: from pixels to a panel pattern, its texts and its drawings. Pure: it knows no
 * files and no DOM, and runs in Node and in a browser alike.
 *
 * @module rondure
 */
export type { Bead, BeadOfStitch } from './bead.js';
export { bare, undecided } from './bead.js';
export { blankPattern } from './blank.js';
export type { BlankWish } from './blank.js';
export { chooseBeads, nearestBead } from './choice/choose.js';
export { ciede2000, ciede2000Fast } from './colour/ciede2000.js';
export { hexToLab65 } from './colour/lab.js';
export { RondureError, errorSentence, warningSentence } from './errors.js';
export type { ErrorCode, Warning, WarningCode } from './errors.js';
export { frameText, parseFrame } from './frame/frame-file.js';
export { planFrame, roundsForFrame } from './frame/plan.js';
export { railLengthMm } from './frame/rail.js';
export { wornWidthMm } from './frame/worn.js';
export { acrossMm, finishedEdge, holeRadius, ringLine, roundsForAcross } from './geometry/edge.js';
export { panelFootprints } from './geometry/footprints.js';
export type { Footprints } from './geometry/footprints.js';
export { pairStart, parentOf } from './geometry/links.js';
export { backStartDegrees, meetingStitch, pairStartDegrees } from './geometry/meet.js';
export { panelGeometry } from './geometry/panel.js';
export type { PanelGeometry } from './geometry/panel.js';
export { defaultStartDegrees, doubledStitch, turnsInWedges } from './geometry/turn.js';
export { makePattern } from './make.js';
export type { PanelReport, PanelWish } from './make.js';
export { sampledWithoutTurn } from './leaned.js';
export { nearPairs, sameColours, sameNames } from './palette/alike.js';
export { decodePalette } from './palette/decode.js';
export { paletteCsv } from './palette/palette-csv.js';
export { readJars } from './palette/photo/read-jars.js';
export { readPalette, surveyPalette } from './palette/read-palette.js';
export { beadSizes, parseSize } from './palette/sizes.js';
export { recolour } from './recolour.js';
export type { RecolourReport, RecolourWish } from './recolour.js';
export { checkPattern, problemSentence } from './pattern/check.js';
export { findProblems } from './pattern/find-problems.js';
export type { Findings } from './pattern/find-problems.js';
export { patternFromRounds } from './pattern-from-rounds.js';
export type { RoundsWish } from './pattern-from-rounds.js';
export { parsePattern } from './pattern/parse.js';
export { letters, patternJsonSchema, patternSchema, patternVersion } from './pattern/schema.js';
export type { Panel, Pattern, PatternBead, Place, Shape } from './pattern/schema.js';
export { patternReport } from './pattern/report.js';
export { patternText } from './pattern/serialise.js';
export type { Picture } from './picture.js';
export { blankSvg } from './draw/blank.js';
export { liningSvg } from './draw/lining-svg.js';
export { planLining } from './lining/plan.js';
export type { Lining, LiningWish } from './lining/plan.js';
export { chartSvg, patternInSvg } from './draw/chart.js';
export { sampleCardSvgs } from './draw/sample-card.js';
export { loadFonts } from './draw/font.js';
export { wedgesSvg } from './draw/wedges.js';
export { renderWorked } from './draw/worked.js';
export { readBlank } from './reading/read-blank.js';
export type { Doubt, ReadGroup, ReadingReport, ReadingWish } from './reading/read-blank.js';
export { decideArt } from './sampling/art.js';
export { evenPaper } from './sampling/paper.js';
export { placePicture } from './sampling/place.js';
export { samplePanel } from './sampling/sample.js';
export {
  completeShape,
  directionOf,
  flatWedges,
  naturalOutline,
  shapeWarnings,
  stitchCount,
  stitchesBefore,
  stitchesInRound,
} from './shape.js';
export { stockLimits, withinStock } from './stock/limits.js';
export type { StockReport } from './stock/report.js';
export { colourChanges } from './texts/runs.js';
export { materials, materialsCsv } from './texts/materials.js';
export { shoppingList } from './texts/shopping.js';
export type { ShoppingList, ShoppingWish } from './texts/shopping.js';
export { shoppingCsv, shoppingText } from './texts/shopping-text.js';
export { readRoundList } from './texts/read-rounds.js';
export type { RoundList } from './texts/read-rounds.js';
export { roundsText } from './texts/rounds.js';
export { sewingText } from './texts/sewing.js';
export { findPlaces } from './place/find-place.js';
export type { FindWish, FoundPlace } from './place/find-place.js';
export { mendString } from './place/mend.js';
export type { Mending, MendWish, Repair } from './place/mend.js';
export { typedRuns } from './place/typed-runs.js';
export { solvePhoto } from './swatch/photo.js';
export { swatchJsonSchema } from './swatch/schema.js';
export type { Swatch } from './swatch/schema.js';
export { solveSwatch } from './swatch/solve.js';
export { parseSwatch, swatchText } from './swatch/swatch-file.js';
export { patternWithSwatch, swatchWarnings } from './swatch/use.js';
export { swatchGuideSvg } from './draw/swatch-guide-svg.js';
export { panelJoins, panelLengths } from './thread/lengths.js';
export type { Join, Length } from './thread/lengths.js';
export { threadFit, threadWarnings } from './thread/fit.js';
export type { ThreadFit } from './thread/fit.js';
export { lengthThread, panelThread } from './thread/need.js';
export type { ThreadNeed } from './thread/need.js';
export { threadPerStitch } from './thread/per-stitch.js';
export type { ThreadPerStitch } from './thread/per-stitch.js';
export { expandStringing, stringingCsv, stringingText } from './texts/stringing.js';
export { en } from '../words/index.js';
export type { Words } from '../words/index.js';
export type * from './types.js';
