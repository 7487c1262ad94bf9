import { chartBeadMm, drawChart } from '../../core/pages/chart/chart.js';
import { sectorSheets } from '../../core/pages/chart/sector-sheets.js';
import { rememberedFor } from '../../core/remember.js';
import { workingSheet } from '../../core/pages/chart/working-chart.js';
import type { PanelSheet } from '../../core/pages/panel/sheet.js';
import type { ChartSheet, SheetPage } from '../../core/pages/chart/sheet-surround.js';
import { shiftedDown } from '../../core/pages/surface/shifted.js';
import { mmPerPoint } from '../../core/pages/surface/text.js';
import { wedgeSheets, wedgesAlike } from '../../core/pages/chart/wedge-sheets.js';
import type { Flow } from '../flow.js';
import type { Bookmark } from '../flow-page.js';
import { partName, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';

/** An enlarged chart is so much larger at least that the sheets are worth it. */
const worthwhile = 1.25;

/**
 * The whole chart on one page, above its foot, by the bead face and as the worker sees it; enlarged
 * after them where its beads are small.
 */
export function addChart(flow: Flow, facts: BookletFacts, sheet: PanelSheet): void {
  const { look } = flow;
  const { enlarged, wedgeChart, work } = facts.words.booklet;
  const { panel } = sheet;
  const heightMm = look.heightMm - footMm(flow);
  const named = (part: string): Bookmark => ({ name: partName(facts, part, panel) });
  addWholeChart(flow, facts, sheet);
  const seen = workingSheet(sheet);
  flow.page(
    whereOf(facts, work.working.part, panel),
    (surface) => drawChart(shiftedDown(surface, heightMm, 2), seen),
    { bookmark: named(work.working.part), alt: work.alt.working, mark: `working-${panel}` },
  );
  const page: SheetPage = {
    widthMm: look.widthMm,
    heightMm: look.heightMm,
    bottomMm: heightMm,
    leastBeadMm: look.leastBeadMm,
    textPoints: look.small.sizeMm / mmPerPoint,
  };
  if (wedgesAlike(sheet)) {
    const heading = partName(facts, wedgeChart.part, panel);
    addSheets(flow, facts, wedgeChart.part, panel, wedgeSheets(sheet, page, heading));
    return;
  }
  if (isEnlarged(flow, sheet)) {
    const heading = partName(facts, enlarged.part, panel);
    const leastBeadMm = Math.max(look.leastBeadMm, worthwhile * wholeBeadMm(flow, sheet));
    const sheets = sectorSheets(sheet, { ...page, leastBeadMm }, heading);
    addSheets(flow, facts, enlarged.part, panel, sheets);
  }
}

/** The whole chart on a page of its own, by the bead face. */
export function addWholeChart(flow: Flow, facts: BookletFacts, sheet: PanelSheet): void {
  const { parts, alt } = facts.words.booklet;
  const { panel } = sheet;
  const heightMm = flow.look.heightMm - footMm(flow);
  flow.page(
    whereOf(facts, parts.chart, panel),
    (surface) => drawChart(shiftedDown(surface, heightMm, 2), sheet),
    {
      bookmark: { name: partName(facts, parts.chart, panel) },
      alt: alt.chart,
      mark: `chart-${panel}`,
    },
  );
}

const wholeBeadMm = (flow: Flow, sheet: PanelSheet): number =>
  beadMmOn(sheet, flow.look.widthMm, flow.look.heightMm - footMm(flow));

/** Contents and charts ask for it, the contents again whenever pages are tried in another way. */
const beadMmOn = rememberedFor(chartBeadMm);

/** Whether the beads of a whole chart are so small that it comes enlarged too. */
export function isEnlarged(flow: Flow, sheet: PanelSheet): boolean {
  return !wedgesAlike(sheet) && wholeBeadMm(flow, sheet) < flow.look.leastBeadMm;
}

/** Room that the foot of a page takes. */
const footMm = ({ look }: Flow): number => look.heightMm - look.bottom - 8;

function addSheets(
  flow: Flow,
  facts: BookletFacts,
  part: string,
  panel: number,
  sheets: readonly Omit<ChartSheet, 'tile'>[],
): void {
  sheets.forEach((one, n) => {
    flow.page(
      whereOf(facts, part, panel),
      (surface) => {
        one.draw(surface);
        surface.clipped(one.window, () => one.drawInWindow(surface));
      },
      {
        ...(n === 0 && { bookmark: { name: partName(facts, part, panel) } }),
        ...(n === 0 && { mark: `enlarged-${panel}` }),
        alt: `${one.title}. ${facts.words.booklet.alt.chart}`,
      },
    );
  });
}
