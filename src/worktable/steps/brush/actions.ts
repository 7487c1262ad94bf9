import type { Action, ActionId } from '../../actions/action.js';
import type { IconName } from '../../parts/icon.js';
import { brush, handle } from '../../store/brush.js';
import type { BrushTool } from '../../store/brush.js';
import { chart, piece, pieces, shownPanel } from '../../store/store.js';
import { words } from '../../words.js';
import { takeUpNext } from './beads.js';
import { go, goWith, putDown, useBrush } from './cursor.js';
import type { Way } from './cursor.js';

const there = () => shownPanel.value !== undefined;

const tool = (id: ActionId, icon: IconName, key: string, of: BrushTool): Action => ({
  id,
  icon,
  keys: [key],
  possible: there,
  on: () => brush.value.tool === of,
  do: () => handle({ tool: of, lineFrom: -1, ...(of !== 'move' && { part: [] }) }),
});

const step = (id: ActionId, icon: IconName, key: string, way: Way): Action => ({
  id,
  icon,
  keys: [key],
  possible: there,
  do: () => go(way),
});

const along = (id: ActionId, icon: IconName, key: string, way: Way): Action => ({
  id,
  icon,
  keys: [`Shift+${key}`],
  possible: there,
  do: () => goWith(way),
});

/** What can be done with the brush. */
export const brushActions: readonly Action[] = [
  tool('brush-bead', 'one-bead', 'b', 'bead'),
  tool('brush-line', 'bead-line', 'l', 'line'),
  tool('brush-ring', 'bead-ring', 'r', 'ring'),
  tool('brush-wedge', 'one-wedge', 'k', 'wedge'),
  tool('brush-patch', 'patch', 'p', 'patch'),
  tool('brush-replace', 'replace', 'i', 'replace'),
  tool('brush-move', 'move-part', 'g', 'move'),
  tool('brush-pick', 'needle', 'u', 'pick'),
  tool('brush-away', 'lift-off', 'j', 'away'),
  {
    id: 'every-wedge',
    icon: 'repeat',
    keys: ['a'],
    on: () => brush.value.everyWedge,
    do: () => handle({ everyWedge: !brush.peek().everyWedge }),
  },
  {
    id: 'leave-copy',
    icon: 'two-parts',
    possible: () => brush.value.tool === 'move',
    on: () => brush.value.copies,
    do: () => handle({ copies: !brush.peek().copies }),
  },
  {
    id: 'show-laid',
    icon: 'eye',
    keys: ['h'],
    on: () => brush.value.shown,
    do: () => handle({ shown: !brush.peek().shown }),
  },
  {
    id: 'lift-all',
    icon: 'undo',
    possible: () => Object.keys(piece.value.laid).length > 0,
    do: () => pieces.change(words.peek().brush.steps.all, (now) => ({ ...now, laid: {} })),
  },
  {
    id: 'bead-next',
    icon: 'to-right',
    keys: ['.'],
    possible: () => chart.value !== undefined,
    do: () => takeUpNext(1),
  },
  {
    id: 'bead-before',
    icon: 'to-left',
    keys: [','],
    possible: () => chart.value !== undefined,
    do: () => takeUpNext(-1),
  },
  step('cell-on', 'to-right', 'ArrowRight', 'on'),
  step('cell-back', 'to-left', 'ArrowLeft', 'back'),
  step('cell-out', 'up', 'ArrowUp', 'out'),
  step('cell-in', 'down', 'ArrowDown', 'in'),
  { id: 'cell-lay', icon: 'one-bead', keys: [' ', 'Enter'], possible: there, do: useBrush },
  along('lay-on', 'to-right', 'ArrowRight', 'on'),
  along('lay-back', 'to-left', 'ArrowLeft', 'back'),
  along('lay-out', 'up', 'ArrowUp', 'out'),
  along('lay-in', 'down', 'ArrowDown', 'in'),
  {
    id: 'put-down',
    icon: 'close',
    keys: ['Escape'],
    possible: () => brush.value.part.length > 0 || brush.value.lineFrom >= 0,
    do: putDown,
  },
];
