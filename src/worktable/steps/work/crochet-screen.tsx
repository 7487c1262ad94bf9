import { useEffect, useMemo, useRef } from 'preact/hooks';
import { focusOn } from '../../actions/focus.js';
import { stitchCount, stitchesBefore, stitchesInRound } from '../../../core/panel/shape.js';
import { bareMark, undecidedMark } from '../../../core/pattern/marks.js';
import { cuesAt, lengthIndexAt, workedBefore, workStep } from '../../../core/work/round-at-hand.js';
import type { WorkPart, WorkStep } from '../../../core/work/round-at-hand.js';
import { putAt } from '../../../core/work/progress.js';
import { placeOf } from '../../../core/thread/find/find-place.js';
import { ActionButton } from '../../parts/action-button.js';
import { figure, words } from '../../words.js';
import { BeadRows } from './bead-rows.js';
import { speakUp } from './voice.js';
import { WorkCanvas } from './work-canvas.js';
import { NextPanel } from './next-panel.js';
import { NoteList } from './notes.js';
import {
  jumpedFrom,
  marks,
  markProgress,
  plans,
  progress,
  putWorked,
  threads,
  work,
  workable,
} from './work-store.js';

/** The stitches of the step are worked. */
export function workedOn(): void {
  const step = presentStep();
  if (step) putWorked(step.to);
}

/** Back to the stitches before. */
export function workedBack(): void {
  const now = work.peek();
  const { worked = 0 } = progress.peek() ?? {};
  if (!now) return;
  putWorked(workedBefore(now.pattern.shape, workable.peek(), worked, now.pace));
}

/** What is worked next; undefined when the panel is done. Reads signals. */
export function presentStep(): WorkStep | undefined {
  const now = work.value;
  if (!now) return undefined;
  return workStep(now.pattern.shape, workable.value, progress.value?.worked ?? 0, now.pace);
}

/** Crocheting: the round at hand as it lies in the hand, and what comes next. */
export function CrochetScreen() {
  const say = words.value.work;
  const now = work.value!;
  const { shape } = now.pattern;
  const { worked } = progress.value!;
  const lengths = plans.value.map(({ length }) => length);
  const step = presentStep();
  const cues = cuesAt(shape, marks.value, lengths, worked);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(
    () => (button.current ? button.current.focus() : focusOn('.at-work .tap.done')),
    [step === undefined],
  );
  const slips = step ? slipLines(step) : [];
  const lines = [...cueLines(cues), ...slips];
  useEffect(
    () => speakUp(`worked ${worked}`, [...lines, step ? stepSaid(step) : ''].join(' ')),
    [worked],
  );
  const round = step?.round ?? shape.rounds;
  const missing = unstrung(worked);
  return (
    <>
      <div class="work-in-hand">
        <p class="counter">
          <b>{say.roundOf({ r: figure(round), of: figure(shape.rounds) })}</b>
          <span>
            {step
              ? say.inRound({
                  wedge: figure(step.wedge),
                  stitch: figure(worked - stitchesBefore(shape, round) + 1),
                  of: figure(stitchesInRound(shape, round)),
                })
              : say.allWorked(figure(stitchCount(shape)))}
          </span>
        </p>
        <WorkCanvas step={step} round={round} />
      </div>
      <div class="hands">
        <Jumped />
        {missing && <NotStrung {...missing} />}
        {lines.map((line) => (
          <p key={line} class={`cue${cues.join || slips.includes(line) ? ' stop' : ''}`}>
            {line}
          </p>
        ))}
        {step ? (
          <button
            type="button"
            class="tap crocheting"
            ref={button}
            data-stitches={workable.value.slice(step.from, step.to)}
            data-extra={extrasIn(step)}
            onClick={workedOn}
          >
            <span class={`parts${step.parts.length > 2 ? ' many' : ''}`} aria-live="polite">
              {step.parts.map((part) => (
                <Part key={part.from} part={part} />
              ))}
            </span>
            <span class="hint">{say.tapWorked}</span>
          </button>
        ) : (
          <div class="tap done" data-done="panel" tabIndex={-1}>
            <h2>{say.panelDone}</h2>
            <p>{shape.construction === 'spiral' ? say.endSpiral : say.endJoined}</p>
            <NextPanel />
            <NoteList />
          </div>
        )}
        {step && <Coming to={step.to} />}
        <div class="row pace" role="group" aria-label={say.pace}>
          <ActionButton id="pace-stitch" look="quiet" />
          <ActionButton id="pace-run" look="quiet" />
          <ActionButton id="pace-wedge" look="quiet" />
          <ActionButton id="whole-work" look="quiet" />
          {!missing && <ActionButton id="string" look="quiet" />}
        </div>
      </div>
    </>
  );
}

/** Beads of the length at hand that are not on the thread yet, as far as this page knows. */
function unstrung(worked: number): { length: number; beads: number; all: number } | undefined {
  if (worked >= stitchCount(work.value!.pattern.shape)) return undefined;
  const length = lengthIndexAt(
    plans.value.map((plan) => plan.length),
    worked,
  );
  const all = plans.value[length].beads.length;
  const beads = all - (progress.value!.strung[length] ?? 0);
  return beads > 0 ? { length, beads, all } : undefined;
}

/** The next bead is not on the thread; whoever strung by a printed list says so. */
function NotStrung({ length, beads, all }: { length: number; beads: number; all: number }) {
  const say = words.value.work;
  return (
    <div class="cue stop not-strung">
      <p>{say.notStrung(figure(beads))}</p>
      <div class="row">
        <ActionButton id="string" />
        <button
          type="button"
          class="button"
          data-strung-by-list
          onClick={() => markProgress({ strung: putAt(progress.peek()!.strung, length, all) })}
        >
          <span>{say.strungByList}</span>
        </button>
      </div>
    </div>
  );
}

/** How a stitch is called: the letter of its bead, or a word. */
function nameOf(mark: string): string {
  const { bare, open } = words.value.work;
  return mark === bareMark ? bare : mark === undecidedMark ? open : mark;
}

/** Equal stitches, or the two of an increase. */
function Part({ part: { marks: told, pair } }: { part: WorkPart }) {
  const say = words.value.work;
  if (!pair)
    return (
      <span class="part">
        <b>{figure(told.length)}</b> <b class="letter">{nameOf(told[0])}</b>
      </span>
    );
  return (
    <span class="part pair">
      <b class="letter">
        {nameOf(told[0])} {nameOf(told[1])}
      </b>
      <small>{say.bothInOne}</small>
    </span>
  );
}

/** What is said of the place before the work goes on. */
function cueLines(cues: ReturnType<typeof cuesAt>): string[] {
  const say = words.value.work;
  const now = work.value!;
  const { construction, wedges } = now.pattern.shape;
  const { roundDone, join, begins, done } = cues;
  const lines: string[] = [];
  if (begins) lines.push(say.begin(figure(wedges)));
  if (roundDone) {
    const { round, stitches, beads, beadsInAll } = roundDone;
    lines.push(
      say.roundDone({
        r: figure(round),
        stitches: figure(stitches),
        beads: figure(beads),
        all: figure(beadsInAll),
      }),
    );
    if (!done) lines.push(construction === 'spiral' ? say.moveMarker : say.closeRound);
  }
  if (join !== undefined) lines.push(say.joinHere(figure(join)));
  return lines;
}

/** Beads that have to come off the thread while a step is worked. */
function extrasIn({ from, to }: WorkStep): string {
  return progress
    .value!.notes.filter(({ stitch }) => stitch >= from && stitch < to)
    .map(({ extra = '' }) => extra)
    .join('');
}

/** What is known to be wrong on the thread in this step, and what is noted at its stitches. */
function slipLines({ from, to }: WorkStep): string[] {
  const say = words.value.mending;
  return progress
    .value!.notes.filter(({ stitch }) => stitch >= from && stitch < to)
    .flatMap(({ extra, sewOn, text }) => [
      ...(extra ? [say.here.extra([...extra].join(' '))] : []),
      ...(sewOn ? [say.here.sewOn(sewOn)] : []),
      ...(text ? [text] : []),
    ]);
}

/** After a jump: where the work stood before, and the way back. */
function Jumped() {
  const from = jumpedFrom.value;
  const now = work.value!;
  if (from === undefined) return null;
  const { round, stitch } = placeOf(
    now.pattern,
    Math.min(from, stitchCount(now.pattern.shape) - 1),
  );
  return (
    <p class="cue">
      {words.value.mending.jumped({ round: figure(round), stitch: figure(stitch) })}{' '}
      <ActionButton id="jump-back" look="quiet" />
    </p>
  );
}

function stepSaid({ parts }: WorkStep): string {
  const { bothInOne } = words.value.work;
  return parts
    .map(({ marks: told, pair }) =>
      pair
        ? `${nameOf(told[0])} ${nameOf(told[1])}: ${bothInOne}`
        : `${told.length} ${nameOf(told[0])}`,
    )
    .join(', ');
}

/** The next beads off the thread, ten or all that the step takes: a slip is seen before it is worked. */
function Coming({ to }: { to: number }) {
  const say = words.value.work;
  const now = work.value!;
  const { worked } = progress.value!;
  const lengths = plans.value.map(({ length }) => length);
  const beads = useMemo(() => {
    const named = new Map(now.pattern.beads.map((bead) => [bead.letter, bead]));
    return (threads.value[lengthIndexAt(lengths, worked)] ?? [])
      .filter(({ stitch }) => stitch >= worked)
      .filter(({ stitch }, n) => n < 10 || stitch < to)
      .map(({ letter }, n) => ({ bead: named.get(letter), ringed: n === 0 }));
  }, [now.pattern, threads.value, worked, to]);
  if (beads.length === 0) return null;
  return (
    <figure class="coming" data-coming={beads.map(({ bead }) => bead?.letter).join('')}>
      <figcaption>{say.coming}</figcaption>
      <BeadRows beads={beads} most={56} lettered />
    </figure>
  );
}
