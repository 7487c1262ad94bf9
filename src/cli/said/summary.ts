import { colourWordOf } from '../../core/colour/colour-words.js';
import { framePlans } from '../../core/purse/frame/plan.js';
import { acrossRange } from '../../core/panel/across.js';
import type { MadePanel, PanelReport } from '../../core/make.js';
import type { RecolourReport } from '../../core/beads/recolour.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { StockReport } from '../../core/beads/stock/report.js';
import { panelThread } from '../../core/thread/need.js';
import { warningSentence } from '../../core/errors.js';
import type { Words } from '../../words/index.js';

type FromPicture =
  | 'meanDifference'
  | 'worstDifference'
  | 'proofSteps'
  | 'mostColours'
  | 'art'
  | 'artDecided'
  | 'stock';
/** A report; what compares with a picture is missing where no picture was read. */
export type SummaryReport = Omit<PanelReport, FromPicture> &
  Partial<Pick<PanelReport, FromPicture>> & { recoloured?: RecolourReport };

/** What the summary tells; `--json` prints it as one object. */
export interface FolderResult {
  pattern: Pattern;
  report: SummaryReport;
  colourChanges: number;
  wishMm: number | undefined;
  folder: string | undefined;
  files: string[];
}

/** Version of the object printed by `--json`. */
export const summarySchema = 1;

/** The `--json` summary: stable keys, numbers with fixed rounding. */
export function summaryJson(result: FolderResult, words: Words): string {
  const { pattern, report } = result;
  const finished = finishOf(result);
  const across = acrossRange(pattern);
  const object = {
    schema: 'rondure-summary',
    version: summarySchema,
    title: pattern.title,
    folder: result.folder ?? null,
    files: result.files,
    wedges: pattern.shape.wedges,
    rounds: report.rounds,
    stitches: report.stitches,
    beads: report.beads,
    colours: report.colours,
    acrossMm: rounded(report.acrossMm, 2),
    acrossRangeMm: [across.leastMm, across.mostMm].map((one) => rounded(one, 2)),
    acrossWishMm: result.wishMm ?? null,
    threadMm: rounded(threadMmOf(pattern), 0),
    outline: pattern.shape.outline,
    startDegrees: pattern.panels[0].startDegrees,
    difference: differenceJson(report),
    choice: report.mostColours === undefined ? null : (pattern.choice ?? null),
    colourChanges: result.colourChanges,
    panels: report.panels.map((panel, index) => ({
      name: panel.name,
      stitches: panel.stitches,
      beads: panel.beads,
      startDegrees: pattern.panels[index].startDegrees,
      difference: differenceJson(panel),
      colourChanges: panel.colourChanges,
      art: panel.art ?? null,
      artDecided: panel.artDecided ?? null,
      laid: panel.laid ?? null,
      kept: keptJson(panel),
      ground: panel.ground ?? null,
      cutOff: panel.cutOff
        ? {
            beyondRim: rounded(panel.cutOff.beyondRim, 4),
            underFrame: rounded(panel.cutOff.underFrame, 4),
          }
        : null,
    })),
    tidy: finished?.tidy ?? null,
    dither: finished?.dither ?? null,
    art: report.art ?? null,
    artDecided: report.artDecided ?? null,
    laid: report.panels[0].laid ?? null,
    kept: keptJson(report.panels[0]),
    ground: report.panels[0].ground ?? null,
    ...(report.recoloured && {
      recoloured: {
        stitches: report.recoloured.stitches,
        meanChange: rounded(report.recoloured.meanChange, 4),
      },
    }),
    ...(report.stock && { stock: stockJson(report.stock) }),
    warnings: report.warnings.map((one) => ({ ...one, message: warningSentence(words, one) })),
  };
  return JSON.stringify(object, null, 2) + '\n';
}

/** The summary for a person: what was made, in aligned rows, warnings last. */
export function summaryText(result: FolderResult, words: Words): string {
  const said = words.cli.summary;
  const { report, pattern } = result;
  const rows: [string, string][] = [
    [
      said.rows.panel,
      said.panel({
        wedges: pattern.shape.wedges,
        rounds: report.rounds,
        stitches: grouped(report.stitches),
        panels: report.panels.length,
      }),
    ],
    [said.rows.beads, perPanel(report, words, ({ beads }) => grouped(beads))],
    [
      said.rows.across,
      said.across({
        across: acrossRange(pattern),
        wishMm: result.wishMm === undefined ? undefined : String(rounded(result.wishMm, 1)),
      }),
    ],
    [said.rows.colours, String(report.colours)],
    ...pictureRows(report, words),
    ...recolourRows(report, words),
    ...frameRows(pattern, words),
    ...choiceRows(result, words),
    ...stockRows(report, words),
    [
      said.rows.thread,
      perPanel(report, words, ({ colourChanges: changes }) =>
        said.thread({ changes: grouped(changes), one: changes === 1 }),
      ),
    ],
    ...finishRows(finishOf(result), words),
    [said.rows.metres, said.metres(threadFacts(pattern))],
  ];
  const wide = Math.max(...rows.map(([name]) => name.length));
  const title = said.title({
    title: pattern.title,
    folder: result.folder ?? '',
    dry: result.folder === undefined,
  });
  const lines = [title, ...rows.map(([name, text]) => `  ${name.padEnd(wide)}  ${text}`)];
  for (const one of report.warnings) {
    lines.push('', `${said.warning} ${warningSentence(words, one)}`);
  }
  return lines.join('\n') + '\n';
}

function differenceJson({ meanDifference: mean, worstDifference: worst }: Partial<MadePanel>) {
  if (mean === undefined || worst === undefined) return null;
  return { formula: 'CIEDE2000', mean: rounded(mean, 4), worst: rounded(worst, 4) };
}

function keptJson({ kept }: Pick<MadePanel, 'kept'>) {
  if (!kept) return null;
  const { mergedAreas, lost: _lost, ...counts } = kept;
  const areas = mergedAreas.map(({ lab, into, stitches, hour }) => ({
    lab: lab.map((one) => rounded(one, 1)),
    into: into.map((one) => rounded(one, 1)),
    stitches: stitches.length,
    hour,
  }));
  return {
    ...counts,
    edges: kept.edges === undefined ? null : rounded(kept.edges, 4),
    mergedAreas: areas,
  };
}

/** What is told of each panel, with its name where there are two. */
function perPanel(
  { panels }: SummaryReport,
  words: Words,
  say: (panel: MadePanel) => string,
): string {
  if (panels.length === 1) return say(panels[0]);
  return panels
    .map((panel) => words.cli.summary.ofPanel({ panel: panel.name, text: say(panel) }))
    .join(', ');
}

/** How far the beads are from the pictures, and what was taken for granted of them; a row each. */
function pictureRows({ panels }: SummaryReport, words: Words): [string, string][] {
  const said = words.cli.summary;
  const rows: [string, string][] = [];
  const add = (row: string, panel: MadePanel, text: string) => {
    const told = panels.length > 1 ? said.ofPanel({ panel: panel.name, text }) : text;
    rows.push([rows.at(-1)?.[0] === row ? '' : row, told]);
  };
  for (const panel of panels) {
    const { meanDifference: mean, worstDifference: worst } = panel;
    if (mean === undefined || worst === undefined) continue;
    const facts = { mean: mean.toFixed(1), worst: worst.toFixed(1) };
    add(said.rows.difference, panel, said.difference(facts));
  }
  for (const panel of panels) {
    // A panel of one colour keeps nothing and loses nothing that its stitches could show.
    if (panel.kept?.edges === undefined) continue;
    const { edges, features, featuresKept: kept, mergedAreas } = panel.kept;
    // Rounded down: "100 %" means all.
    const percent = String(Math.floor(100 * edges));
    const merged = mergedAreas.map(({ lab, into, hour }) => {
      const [own, other] = [lab, into].map((one) => words.beadLooks.colour(colourWordOf(one)));
      return { own, other, hour };
    });
    add(said.rows.kept, panel, said.kept({ edges: percent, features, kept, merged }));
  }
  for (const panel of panels) {
    const { art, artDecided: decided } = panel;
    if (art === undefined || decided === undefined) continue;
    add(said.rows.art, panel, said.art({ art, decided }));
  }
  for (const panel of panels) {
    if (panel.laid) add(said.rows.place, panel, said.place({ laid: panel.laid }));
  }
  for (const panel of panels) {
    if (panel.cutOff) {
      const { beyondRim, underFrame } = panel.cutOff;
      const [rim, frame] = [beyondRim, underFrame].map((one) => Math.round(100 * one));
      if (rim + frame > 0) add(said.rows.cutOff, panel, said.cutOff({ rim, frame }));
    }
    if (panel.ground) add(said.rows.ground, panel, said.ground(panel.ground));
  }
  return rows;
}

function frameRows(pattern: Pattern, words: Words): [string, string][] {
  if (!pattern.frame) return [];
  const [plan] = framePlans(pattern);
  const bare = plan.framed.reduce((sum, one) => sum + (one.bare ? one.stitches : 0), 0);
  const { stitches, rounds: round, bareRounds } = plan;
  const facts = { stitches, round, bareRounds, bare };
  return [[words.frame.summaryRow, words.frame.summary(facts)]];
}

function recolourRows({ recoloured }: SummaryReport, words: Words): [string, string][] {
  if (!recoloured) return [];
  const { stitches, meanChange } = recoloured;
  const facts = { stitches: grouped(stitches), one: stitches === 1, mean: meanChange.toFixed(1) };
  return [[words.recolour.row, words.recolour.done(facts)]];
}

/** How good the choice of beads is; nothing where this run chose none. */
function choiceRows({ pattern, report }: FolderResult, words: Words): [string, string][] {
  const { mostColours: most } = report;
  const { gap, proven = false } = pattern.choice ?? {};
  if (most === undefined || gap === undefined) return [];
  // Rounded up: "no more than" must stay true.
  const percent = (Math.ceil(1000 * gap) / 10).toFixed(1);
  const said = words.cli.summary;
  return [[said.rows.choice, said.choice({ most, proven, percent })]];
}

function stockJson(stock: StockReport) {
  const { beads, tooFew, meanDifference: mean, unlimitedMeanDifference } = stock;
  return {
    beads: beads.map((bead) => ({
      ...bead,
      inStock: bead.inStock ?? null,
      limit: bead.limit ?? null,
    })),
    tooFew,
    meanDifference: rounded(mean, 4),
    unlimitedMeanDifference: rounded(unlimitedMeanDifference, 4),
  };
}

/** Which jars run out, and what that costs. */
function stockRows({ stock }: SummaryReport, words: Words): [string, string][] {
  if (!stock) return [];
  const said = words.cli.summary;
  const runsOut = stock.beads.filter((bead) => bead.runsOut).map(({ name }) => name);
  const tooFew = stock.tooFew.map(({ name }) => name).filter((name) => !runsOut.includes(name));
  const mean = stock.meanDifference.toFixed(1);
  const unlimited = stock.unlimitedMeanDifference.toFixed(1);
  const cost = mean === unlimited ? '' : said.stockCost({ mean, unlimited });
  return [[said.rows.stock, said.stock({ runsOut, tooFew, cost })]];
}

/** What was done to the beads after they were chosen; only known to hold where they were chosen now. */
function finishOf({ pattern, report }: FolderResult): Pattern['choice'] {
  return report.meanDifference === undefined ? undefined : pattern.choice;
}

function finishRows(choice: Pattern['choice'], words: Words): [string, string][] {
  const said = words.cli.summary;
  if (choice?.dither) {
    return [[said.rows.dither, said.dither({ strength: String(choice.dither.strength) })]];
  }
  if (!choice?.tidy) return [];
  const { changesBefore, changesAfter, straysBefore, straysAfter, costPercent } = choice.tidy;
  const same = changesBefore === changesAfter && straysBefore === straysAfter;
  const text = same
    ? said.notTidied({ strays: grouped(straysAfter), one: straysAfter === 1 })
    : said.tidy({
        changes: [grouped(changesBefore), grouped(changesAfter)],
        strays: [grouped(straysBefore), grouped(straysAfter)],
        cost: costPercent.toFixed(1),
      });
  return [[said.rows.tidy, text]];
}

/** The thread of all panels that are charted, an estimate. */
function threadMmOf(pattern: Pattern): number {
  return pattern.panels.reduce((sum, _, panel) => sum + panelThread(pattern, panel).totalMm, 0);
}

function threadFacts(pattern: Pattern): { metres: string; panels: number } {
  const metres = grouped(Math.ceil(threadMmOf(pattern) / 1000 - 1e-9));
  return { metres, panels: pattern.panels.length };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

/** Thousands parted by a comma, the same under every locale. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
