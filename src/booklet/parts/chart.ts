import { chartBeadMm, drawChart } from '../../core/draw/chart.js';
import { chartSheets } from '../../core/draw/chart-sheets.js';
import type { PanelSheet } from '../../core/draw/sheet.js';
import type { ChartSheet, SheetPage } from '../../core/draw/sheet-surround.js';
import { shiftedDown } from '../../core/draw/shifted.js';
import { mmPerPoint } from '../../core/draw/text.js';
import { wedgeSheets, wedgesAlike } from '../../core/draw/wedge-sheets.js';
import type { Flow } from '../flow.js';
import { partName, whereOf } from './facts.js';
import type { BookletFacts } from './facts.js';

/** An enlarged chart is so much larger at least that the sheets are worth it. */
const worthwhile = 1.3;

/** The whole chart on one page, above its foot; enlarged after it where its beads are small. */
export function addChart(flow: Flow, facts: BookletFacts, sheet: PanelSheet): void {
  const { look } = flow;
  const { parts, enlarged, wedgeChart } = facts.words.booklet;
  const { panel } = sheet;
  const heightMm = look.heightMm - footMm(flow);
  flow.page(
    whereOf(facts, parts.chart, panel),
    (surface) => drawChart(shiftedDown(surface, heightMm, 2), sheet),
    partName(facts, parts.chart, panel),
    facts.words.booklet.alt.chart,
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
  }
  const wholeMm = chartBeadMm(sheet, look.widthMm, heightMm);
  if (wholeMm < look.leastBeadMm) {
    const heading = partName(facts, enlarged.part, panel);
    const leastBeadMm = Math.max(look.leastBeadMm, worthwhile * wholeMm);
    const sheets = chartSheets(sheet, { ...page, leastBeadMm }, heading);
    addSheets(flow, facts, enlarged.part, panel, sheets);
  }
}

/** Room that the foot of a page takes. */
const footMm = ({ look }: Flow): number => look.heightMm - look.bottom - 8;

function addSheets(
  flow: Flow,
  facts: BookletFacts,
  part: string,
  panel: number,
  sheets: readonly ChartSheet[],
): void {
  sheets.forEach((one, n) => {
    flow.page(
      whereOf(facts, part, panel),
      (surface) => {
        one.draw(surface);
        surface.clipped(one.window, () => one.drawInWindow(surface));
      },
      n === 0 ? partName(facts, part, panel) : undefined,
      `${one.title}. ${facts.words.booklet.alt.chart}`,
    );
  });
}
