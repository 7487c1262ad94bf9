import type { HandName } from '../../core/pages/hand/facts.js';
import { frameParagraph } from '../../core/pages/lists/rounds.js';
import { frameSpread, sewingParagraphs, sewingTable } from '../../core/pages/lists/sewing.js';
import type { Flow } from '../flow.js';
import { addBeside, addRows } from '../flow-blocks.js';
import { drawTable, tableMm, textCell } from '../table.js';
import { neededFor, whereOf } from '../facts.js';
import type { BookletFacts } from '../facts.js';
import { handBlocks } from './hands.js';
import type { Template } from './lining.js';

/** Drawings that stand beside the words, and those that follow in rows. */
const besideWords: readonly HandName[] = ['seam-stitch', 'frame-edge'];
const inRows: readonly HandName[] = ['seam', 'frame', 'braid'];
const last: readonly HandName[] = ['lining'];

/** Seam, frame and lining, and the lining template at true size. */
export function addMakingUp(flow: Flow, facts: BookletFacts, templates: readonly Template[]): void {
  const { pattern, words } = facts;
  const say = words.booklet.making;
  const { making: heading } = words.booklet.parts;
  const { panels, frame } = pattern;
  flow.part({ heading, where: whereOf(facts, heading), mark: 'making', besideMm: 38 });
  const held = frame ? panels.map((panel) => frameParagraph(pattern, frame, panel, words)) : [];
  const { panelLining } = neededFor(facts).list;
  // The sheets of the lining show the last steps where they have room.
  const shown = templates.some(({ drawn }) => drawn);
  const cut = templates.length === 0 ? say.noTemplate : say.liningText;
  const tell = () => {
    flow.titled(say.panels, [panels.length === 2 ? say.two : say.one, say.ends]);
    flow.mark('seam');
    if (panels.length === 1) flow.titled(say.seam, [say.oneSeam({ framed: frame !== undefined })]);
    else {
      flow.titled(say.seam, sewingParagraphs(pattern, words, { booklet: true }));
      addPairs(flow, facts);
    }
    flow.mark('frame');
    flow.titled(say.frame, [...new Set(held), say.frameText, frameSpread(pattern, words)]);
    flow.mark('line');
    const instead = words.shopping.crochetInstead({ mm: panelLining.mm });
    flow.titled(say.lining, [...(shown ? [`${say.liningShown} ${instead}`] : [cut, instead])]);
    flow.titled(say.washing, [say.washingText]);
  };
  const sewnIn = shown ? [] : last;
  if (!flow.hangs) {
    tell();
    addRows(flow, handBlocks(flow, facts, [...besideWords, ...inRows, ...sewnIn]));
    return;
  }
  const left = addBeside(flow, handBlocks(flow, facts, besideWords), tell);
  const [large, lined] = [inRows, sewnIn].map((names) => handBlocks(flow, facts, names));
  addRows(flow, [...large, ...left, ...lined]);
}

/** Which stitches meet, at the places that are pinned. */
function addPairs(flow: Flow, facts: BookletFacts): void {
  const { pattern, words } = facts;
  const { look } = flow;
  const [head, ...pairs] = sewingTable(pattern, words);
  const left = flow.textLeft;
  const wide = flow.textWide;
  const columns = head.map((text, n) => ({
    head: text,
    widthMm: n === 0 ? wide / 2 : wide / 4,
  }));
  const rows = pairs.map((row) => row.map((text, n) => textCell(text, look.body, columns[n])));
  flow.titled(words.booklet.making.pairs, [], { keepMm: tableMm(flow, columns, rows) + 2 });
  drawTable(flow, columns, rows, { left, rowHeads: true, whole: true });
}
