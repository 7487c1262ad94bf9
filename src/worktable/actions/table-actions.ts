import { chart, look, piece, pieces, shownPanel, tell, view } from '../store/store.js';
import { setTheme, theme } from '../look/theme.js';
import { words } from '../words.js';
import { nextEyes, ownEyes } from '../look/eyes.js';
import type { Action } from './action.js';

const turnBy = (degrees: number) => {
  const turned = view.peek().turnDegrees + degrees;
  look({ turnDegrees: ((turned % 360) + 360) % 360 });
};

const zoomBy = (factor: number) => {
  const zoom = Math.min(8, Math.max(1, view.peek().zoom * factor));
  look(zoom === 1 ? { zoom, panXmm: 0, panYmm: 0 } : { zoom });
};

/** What can be done whatever step is open. */
export const tableActions: readonly Action[] = [
  {
    id: 'undo',
    icon: 'undo',
    keys: ['Ctrl+z'],
    possible: () => pieces.canUndo.value,
    do() {
      const name = pieces.undo();
      if (name) tell(words.peek().table.undone(name));
    },
  },
  {
    id: 'redo',
    icon: 'redo',
    keys: ['Ctrl+Shift+z', 'Ctrl+y'],
    possible: () => pieces.canRedo.value,
    do() {
      const name = pieces.redo();
      if (name) tell(words.peek().table.redone(name));
    },
  },
  {
    id: 'look-beads',
    icon: 'beads',
    keys: ['v'],
    on: () => view.value.look === 'beads',
    do: () => look({ look: 'beads' }),
  },
  {
    id: 'look-cells',
    icon: 'letter',
    keys: ['c'],
    on: () => view.value.look === 'cells',
    do: () => look({ look: 'cells' }),
  },
  {
    id: 'wedges',
    icon: 'wedges',
    keys: ['w'],
    on: () => view.value.wedges,
    do: () => look({ wedges: !view.peek().wedges }),
  },
  {
    id: 'working-face',
    icon: 'other-face',
    keys: ['f'],
    possible: () => chart.value?.shape.beadsFace === 'away',
    on: () => view.value.workingFace,
    do: () => look({ workingFace: !view.peek().workingFace }),
  },
  {
    id: 'turn',
    icon: 'turn',
    keys: ['t'],
    possible: () => shownPanel.value !== undefined,
    do: () => turnBy(15),
  },
  {
    id: 'turn-back',
    icon: 'turn-back',
    keys: ['Shift+t', 'T'],
    possible: () => shownPanel.value !== undefined,
    do: () => turnBy(-15),
  },
  {
    id: 'nearer',
    icon: 'nearer',
    keys: ['+', '='],
    possible: () => view.value.zoom < 8,
    do: () => zoomBy(1.25),
  },
  {
    id: 'farther',
    icon: 'farther',
    keys: ['-'],
    possible: () => view.value.zoom > 1,
    do: () => zoomBy(0.8),
  },
  {
    id: 'whole',
    icon: 'whole',
    keys: ['0'],
    possible: () => view.value.zoom !== 1 || view.value.turnDegrees !== 0,
    do: () => look({ zoom: 1, panXmm: 0, panYmm: 0, turnDegrees: 0 }),
  },
  {
    id: 'overlay',
    icon: 'overlay',
    keys: ['o'],
    possible: () => piece.value.picture !== undefined,
    on: () => view.value.overlay > 0,
    do: () => look({ overlay: view.peek().overlay > 0 ? 0 : 0.6 }),
  },
  {
    id: 'eyes',
    icon: 'eye',
    keys: ['e'],
    on: () => view.value.eyes !== 'usual',
    do: nextEyes,
  },
  {
    id: 'own-eyes',
    icon: 'eye',
    possible: () => view.value.eyes !== 'usual',
    do: ownEyes,
  },
  {
    id: 'as-text',
    icon: 'pages',
    keys: ['x'],
    possible: () => shownPanel.value !== undefined,
    on: () => view.value.asText,
    do: () => look({ asText: !view.peek().asText }),
  },
  {
    id: 'thread-way',
    icon: 'other-way',
    keys: ['d'],
    possible: () => shownPanel.value !== undefined,
    do: () => look({ threadWay: view.peek().threadWay === 'strung' ? 'worked' : 'strung' }),
  },
  { id: 'light', icon: 'sun', possible: () => theme.value === 'dark', do: () => setTheme('light') },
  { id: 'dark', icon: 'moon', possible: () => theme.value === 'light', do: () => setTheme('dark') },
  {
    id: 'help',
    icon: 'keys',
    keys: ['?'],
    on: () => view.value.help,
    do: () => look({ help: !view.peek().help }),
  },
];
