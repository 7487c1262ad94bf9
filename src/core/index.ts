/**
 * Rondure's core: from pixels to a panel pattern, its texts and its drawings. Pure: it knows no
 * files and no DOM, and runs in Node and in a browser alike.
 *
 * @module rondure
 */
export type { Bead, BeadOfStitch } from './beads/bead.js';
export { bare, undecided } from './beads/bead.js';
export { blankPattern } from './blank/blank-pattern.js';
export type { BlankWish } from './blank/blank-pattern.js';
export { byHand } from './brush/by-hand.js';
export type { ByHand } from './brush/by-hand.js';
export { withHandLaid } from './brush/hand-laid.js';
export { Charting } from './charting.js';
export type { Followed, FollowedPanel } from './charting.js';
export { chooseBeads, nearestBead } from './beads/choice/choose.js';
export { ciede2000, ciede2000Fast } from './colour/ciede2000.js';
export { beadLookOf, colourWordOf } from './colour/colour-words.js';
export { hexToLab65 } from './colour/lab.js';
export { RondureError, errorSentence, warningSentence } from './errors.js';
export type { ErrorCode, Warning, WarningCode } from './errors.js';
export { frameText, parseFrame } from './purse/frame/frame-file.js';
export { planFrame, roundsForFrame } from './purse/frame/plan.js';
export { railLengthMm } from './purse/frame/rail.js';
export { wornWidthMm } from './purse/frame/worn.js';
export { acrossRange, roundsForAcross, sizedShape } from './panel/across.js';
export { acrossMm, finishedEdge, holeRadius, ringLine } from './panel/edge.js';
export { panelFootprints } from './panel/footprints.js';
export type { Footprints } from './panel/footprints.js';
export { pairStart, parentOf } from './panel/links.js';
export { backStartDegrees, meetingStitch, pairStartDegrees } from './panel/meet.js';
export { layPanel } from './panel/lay.js';
export type { Lay } from './panel/lay.js';
export { panelGeometry } from './panel/geometry.js';
export type { PanelGeometry } from './panel/geometry.js';
export { defaultStartDegrees, doubledStitch, turnsInWedges } from './panel/turn.js';
export { openPicture } from './picture/open-picture.js';
export type { OpenPicture } from './picture/open-picture.js';
export { makePattern } from './make.js';
export type { PanelReport, PanelWish } from './make.js';
export { sampledWithoutTurn } from './picture/leaned.js';
export { nearPairs, sameColours, sameNames } from './beads/palette/alike.js';
export { decodePalette } from './beads/palette/decode.js';
export { paletteCsv } from './beads/palette/palette-csv.js';
export { readJars } from './beads/palette/photo/read-jars.js';
export { readPalette, surveyPalette } from './beads/palette/read-palette.js';
export { beadSizes, parseSize } from './beads/palette/sizes.js';
export { recolour } from './beads/recolour.js';
export type { RecolourReport, RecolourWish } from './beads/recolour.js';
export { checkPattern, problemSentence } from './pattern/read/check.js';
export { findProblems } from './pattern/read/find-problems.js';
export type { Findings } from './pattern/read/find-problems.js';
export { patternFromRounds } from './pattern/read/from-rounds.js';
export type { RoundsWish } from './pattern/read/from-rounds.js';
export { parsePattern } from './pattern/read/parse.js';
export { letters } from './pattern/marks.js';
export { patternJsonSchema, patternSchema, patternVersion } from './pattern/schema.js';
export type { Panel, Pattern } from './pattern/pattern.js';
export type { PatternBead } from './beads/bead.js';
export type { Place } from './picture/sampling/place.js';
export type { Shape } from './panel/shape.js';
export { patternReport } from './pattern/report.js';
export { makerWish } from './pattern/maker-wish.js';
export { parseWish, wishText } from './pattern/read/wish-file.js';
export type { KeptWish } from './pattern/read/wish-file.js';
export type { HandLaid, MakerWish } from './pattern/wished.js';
export { patternText } from './pattern/serialise.js';
export { judgePictureHeader } from './picture/header/judge.js';
export type { PictureHeader } from './picture/header/judge.js';
export { sniff } from './picture/header/sniff.js';
export type { OtherFormat, PictureFormat } from './picture/header/sniff.js';
export { unpackGzip } from './picture/header/unpack.js';
export { byteLimit, pixelLimit, svgLimitMegabytes, svgLongerSidePx } from './picture/limits.js';
export type { Picture } from './picture/picture.js';
export { decodeXml } from './picture/header/decode-xml.js';
export { judgeSvg } from './picture/svg/judge.js';
export type { SvgVerdict } from './picture/svg/judge.js';
export { withRootSize } from './picture/header/svg-root.js';
export { blankSvg } from './pages/chart/blank.js';
export { liningSvg } from './pages/lining/lining-svg.js';
export { planLining } from './purse/lining/plan.js';
export type { Lining, LiningWish } from './purse/lining/plan.js';
export { chartSvg, patternInSvg } from './pages/chart/chart.js';
export { sampleCardSvgs } from './pages/chart/sample-card.js';
export { loadFonts } from './pages/surface/font.js';
export { wedgesSvg } from './pages/chart/wedges.js';
export { renderWorked } from './pages/worked/worked.js';
export { readBlank } from './blank/read-blank.js';
export type { Doubt, ReadGroup, ReadingReport, ReadingWish } from './blank/read-blank.js';
export { decideArt } from './picture/sampling/art.js';
export { evenPaper } from './picture/sampling/paper.js';
export { placePicture } from './picture/sampling/place.js';
export { sampleStitches } from './picture/sampling/sample-stitches.js';
export type { LaidPicture, SampleHow } from './picture/sampling/sample-stitches.js';
export { samplePanel } from './picture/sampling/sample.js';
export {
  completeShape,
  directionOf,
  flatWedges,
  naturalOutline,
  shapeWarnings,
  stitchCount,
  stitchesBefore,
  stitchesInRound,
} from './panel/shape.js';
export { stockLimits, withinStock } from './beads/stock/limits.js';
export type { StockReport } from './beads/stock/report.js';
export { colourChanges } from './pattern/stitches.js';
export { materials } from './pages/lists/materials.js';
export { materialsCsv } from './pages/lists/materials-csv.js';
export { shoppingList } from './pages/lists/shopping.js';
export type { ShoppingList, ShoppingWish } from './pages/lists/shopping.js';
export { shoppingCsv, shoppingText } from './pages/lists/shopping-text.js';
export { readRoundList } from './pages/lists/read-rounds.js';
export type { RoundList } from './pages/lists/read-rounds.js';
export { roundsText } from './pages/lists/rounds.js';
export { sewingText } from './pages/lists/sewing.js';
export { findPlaces } from './thread/find/find-place.js';
export type { FindWish, FoundPlace } from './thread/find/find-place.js';
export { mendString } from './thread/find/mend.js';
export type { Mending, MendWish, Repair } from './thread/find/mend.js';
export { typedRuns } from './thread/find/typed-runs.js';
export { solvePhoto } from './swatch/photo.js';
export { swatchJsonSchema } from './swatch/schema.js';
export type { Swatch } from './swatch/swatch.js';
export { solveSwatch } from './swatch/solve.js';
export { parseSwatch, swatchText } from './swatch/swatch-file.js';
export { patternWithSwatch, swatchWarnings } from './pattern/with-swatch.js';
export { swatchGuideSvg } from './pages/swatch/swatch-guide-svg.js';
export { panelJoins, panelLengths } from './thread/lengths.js';
export type { Join, Length } from './thread/lengths.js';
export { threadFit, threadWarnings } from './thread/fit.js';
export type { ThreadFit } from './thread/fit.js';
export { lengthThread, panelThread } from './thread/need.js';
export type { ThreadNeed } from './thread/need.js';
export { threadPerStitch } from './thread/per-stitch.js';
export type { ThreadPerStitch } from './thread/per-stitch.js';
export { expandStringing, stringingCsv, stringingText } from './pages/lists/stringing.js';
export { en } from '../words/index.js';
export type { Words } from '../words/index.js';
export type * from './types.js';
