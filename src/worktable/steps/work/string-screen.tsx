import { useEffect, useMemo, useRef } from 'preact/hooks';
import { focusOn } from '../../actions/focus.js';
import { stepAt, strungBefore, threadStands } from '../../../core/work/stringing-steps.js';
import type { StringPlan, StringStep } from '../../../core/work/stringing-steps.js';
import { ActionButton } from '../../parts/action-button.js';
import { figure, words } from '../../words.js';
import { BeadRows } from './bead-rows.js';
import type { RowBead } from './bead-rows.js';
import { speakUp } from './voice.js';
import { chooseLength, plans, putStrung, stringLength, strung, workPattern } from './work-store.js';

/** The next beads are on the thread. */
export function strungOn(): void {
  const plan = plans.peek()[stringLength.peek()];
  const step = plan && stepAt(plan, strung.peek());
  if (step) putStrung(step.to);
}

/** Back to the beads before. */
export function strungBack(): void {
  const plan = plans.peek()[stringLength.peek()];
  if (plan) putStrung(strungBefore(plan, strung.peek()));
}

/** Stringing: one run at a time, in letters that fill the screen. */
export function StringScreen() {
  const say = words.value.work;
  const plan = plans.value[stringLength.value];
  const now = strung.value;
  const step = plan && stepAt(plan, now);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(
    () => (button.current ? button.current.focus() : focusOn('.at-work .tap.done')),
    [stringLength.value, step === undefined],
  );
  useEffect(() => {
    if (plan) speakUp(`${stringLength.peek()}:${now}`, spokenStep(plan, now));
  }, [step, now]);
  if (!plan) return null;
  if (!step) return <LengthDone />;
  const next = stepAt(plan, step.to);
  return (
    <>
      <button
        type="button"
        class="tap stringing"
        data-run={`${step.to - now} ${step.letter}`}
        ref={button}
        onClick={strungOn}
      >
        <span class="sum">
          {say.stringRound({
            r: figure(step.round),
            done: figure(now),
            all: figure(plan.beads.length),
          })}
        </span>
        <span class="run" aria-live="polite">
          <b>{figure(step.to - now)}</b> <b class="letter">{step.letter}</b>
        </span>
        <span class="name">{beadNamed(step.letter)?.name}</span>
        <Run step={step} now={now} />
        <span class="then">{next ? say.then(runText(next)) : say.thenDone}</span>
        <span class="hint">{say.tapStrung}</span>
      </button>
      <Stands />
    </>
  );
}

const beadNamed = (letter: string) =>
  workPattern.value?.beads.find((bead) => bead.letter === letter);

const runText = ({ from, to, letter }: StringStep) => `${figure(to - from)} ${letter}`;

function spokenStep(plan: StringPlan, now: number): string {
  const step = stepAt(plan, now);
  if (!step) return lengthDone(plan);
  const name = beadNamed(step.letter)?.name ?? '';
  return `${step.to - now} ${step.letter}. ${name}`;
}

const lengthDone = ({ lengths, beads }: StringPlan) =>
  words.value.work.lengthDone({
    n: figure(stringLength.value + 1),
    of: figure(lengths),
    beads: figure(beads.length),
  });

/** The beads of the run: those on the thread already are pale. */
function Run({ step, now }: { step: StringStep; now: number }) {
  const bead = beadNamed(step.letter);
  const { runFrom, runTo, to } = step;
  const beads = useMemo(
    () =>
      Array.from({ length: runTo - runFrom }, (_, n): RowBead => ({
        bead,
        pale: runFrom + n < now || runFrom + n >= to,
      })),
    [bead, runFrom, runTo, to, now],
  );
  return (
    <span class="beads">
      <BeadRows beads={beads} most={beads.length < 4 ? 132 : 96} wide={560} />
    </span>
  );
}

/** Where the thread stands, so that ruler and scale can check it. */
function Stands() {
  const say = words.value.work;
  const plan = plans.value[stringLength.value];
  const pattern = workPattern.value;
  if (!plan || !pattern) return null;
  const { beads, mm, grams } = threadStands(pattern, plan, strung.value);
  return (
    <p class="stands">
      {say.stands({
        beads: figure(beads),
        metres: (mm / 1000).toLocaleString(document.documentElement.lang, {
          minimumFractionDigits: 2,
          maximumFractionDigits: 2,
        }),
        grams: grams === undefined ? undefined : figure(grams),
      })}
      <progress max={plan.beads.length} value={beads} aria-hidden="true" />
    </p>
  );
}

/** All beads of a length are on the thread. */
function LengthDone() {
  const say = words.value.work;
  const at = stringLength.value;
  const plan = plans.value[at];
  const open = at + 1 < plans.value.length;
  return (
    <div class="tap done" data-done="length" tabIndex={-1}>
      <h2>{lengthDone(plan)}</h2>
      <p>{say.lengthDoneHow}</p>
      <Stands />
      <div class="row">
        <ActionButton id="crochet" look="main" />
        {open && (
          <button
            type="button"
            class="button"
            data-next-length
            onClick={() => chooseLength(at + 1)}
          >
            <span>{say.stringLength({ n: figure(at + 2), of: figure(plan.lengths) })}</span>
          </button>
        )}
      </div>
    </div>
  );
}
