import type { Action } from '../../actions/action.js';
import { look } from '../../store/store.js';
import { goneOver } from '../../../core/work/progress.js';
import { canListen, listening } from './ears.js';
import { beginPractice, canPractise } from './practice.js';
import { aloud, canSpeak, turnVoice } from './voice.js';
import { wholeWork } from './work-canvas.js';
import { atWork, changedChart, helping, jumpedFrom, jumpTo, markWork, work } from './work-store.js';

/** The screen beside the bead mat: it is loaded when hands first want it. */
const screen = () => import('./at-work.js');

/** Opens the screen for one of the two things that hands do. */
const open = (what: 'string' | 'crochet') => () => {
  look({ step: 'work' });
  helping.value = undefined;
  markWork((now) => ({ ...now, open: what }));
};

/** Opens one kind of help, or closes it. */
const help = (
  id: 'where-am-i' | 'check-strung' | 'something-wrong' | 'pin-note',
  what: 'find' | 'check' | 'wrong' | 'note',
  icon: Action['icon'],
): Action => ({
  id,
  icon,
  possible: () => atWork.value !== undefined,
  on: () => helping.value === what,
  do: () => (helping.value = helping.peek() === what ? undefined : what),
});

const pace = (id: 'pace-stitch' | 'pace-run' | 'pace-wedge', icon: Action['icon']): Action => {
  const own = id.slice(5) as 'stitch' | 'run' | 'wedge';
  const set = () => markWork((now) => ({ ...now, pace: own }));
  return { id, icon, on: () => work.value?.pace === own, do: set };
};

/** What can be done while hands work. */
export const workActions: readonly Action[] = [
  { id: 'string', icon: 'needle', possible: () => work.value !== undefined, do: open('string') },
  { id: 'crochet', icon: 'hook', possible: () => work.value !== undefined, do: open('crochet') },
  {
    id: 'close-help',
    icon: 'close',
    keys: ['Escape'],
    possible: () => helping.value !== undefined,
    do: () => (helping.value = undefined),
  },
  {
    id: 'to-table',
    icon: 'to-left',
    keys: ['Escape'],
    possible: () => atWork.value !== undefined,
    do: () => {
      // A page that was opened anew at the work knows of no step.
      look({ step: 'work' });
      markWork((now) => ({ ...now, open: undefined }));
    },
  },
  {
    id: 'work-next',
    icon: 'to-right',
    keys: ['ArrowRight', 'n'],
    possible: () => atWork.value !== undefined && helping.value === undefined,
    do: () => void screen().then(({ goOn }) => goOn()),
  },
  {
    id: 'work-back',
    icon: 'undo',
    keys: ['ArrowLeft', 'Backspace'],
    possible: () => atWork.value !== undefined && helping.value === undefined,
    do: () =>
      void screen().then(({ goBack }) => {
        goBack();
        // Space goes on again, not back once more.
        document.querySelector<HTMLElement>('.at-work button.tap')?.focus();
      }),
  },
  {
    id: 'read-aloud',
    icon: 'speak',
    possible: canSpeak,
    on: () => aloud.value,
    do: () => turnVoice(!aloud.peek()),
  },
  {
    id: 'listen',
    icon: 'ear',
    possible: canListen,
    on: () => listening.value,
    do: () => (listening.value = !listening.peek()),
  },
  pace('pace-stitch', 'pin'),
  pace('pace-run', 'beads'),
  pace('pace-wedge', 'wedges'),
  {
    id: 'whole-work',
    icon: 'whole',
    on: () => wholeWork.value,
    do: () => (wholeWork.value = !wholeWork.peek()),
  },
  help('where-am-i', 'find', 'nearer'),
  help('check-strung', 'check', 'eye'),
  help('something-wrong', 'wrong', 'out-of-line'),
  help('pin-note', 'note', 'pin'),
  {
    id: 'jump-back',
    icon: 'turn-back',
    possible: () => jumpedFrom.value !== undefined,
    do() {
      const from = jumpedFrom.peek();
      if (from !== undefined) jumpTo(from);
    },
  },
  { id: 'practice-piece', icon: 'plus', possible: canPractise, do: () => void beginPractice() },
  {
    id: 'count-time',
    icon: 'turn',
    on: () => work.value?.timed === true,
    do: () => markWork((now) => ({ ...now, timed: !now.timed })),
  },
  {
    id: 'take-changed',
    icon: 'wand',
    possible: () => changedChart.value !== undefined,
    do() {
      const pattern = changedChart.peek();
      if (pattern) markWork((now) => goneOver(now, pattern));
    },
  },
];
