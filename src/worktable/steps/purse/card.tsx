import { useRef } from 'preact/hooks';
import {
  cornerOf,
  hingesOf,
  usualChannelMm,
  usualHolesMm,
} from '../../../core/purse/frame/measures.js';
import type { Frame } from '../../../core/purse/frame/measures.js';
import { bareRoundsOf } from '../../../core/purse/frame/plan.js';
import { planLining } from '../../../core/purse/lining/plan.js';
import { ActionButton } from '../../parts/action-button.js';
import { Choice } from '../../parts/choice.js';
import { NumberField } from '../../parts/number-field.js';
import { calibrate, pxPerMm } from '../../store/purse.js';
import { chart, piece, pieces } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { shapeOf } from '../panel/shape-wish.js';
import { measured } from './frame-wish.js';
import { hung } from './hung.js';
import { cardMm } from './scale-things.js';

/** The card of the step Purse. */
export function PurseCard() {
  const say = words.value.purse;
  return (
    <>
      <h2>{say.step}</h2>
      <Back />
      <Choice
        name={say.frame}
        of={['frame-none', 'frame-half-round', 'frame-squared', 'frame-oval']}
      />
      {piece.value.wish.frame && <Measures frame={piece.value.wish.frame} />}
      <Sits />
      <Lining />
      <Card />
    </>
  );
}

function Back() {
  const say = words.value.purse;
  const { back } = piece.value.wish;
  const plain = typeof back === 'object' ? back.id : undefined;
  return (
    <>
      <Choice name={say.back} of={['back-none', 'back-same', 'back-own']} />
      {piece.value.picture && (
        <fieldset class="choice">
          <legend>{say.plain}</legend>
          <div class="row">
            {(chart.value?.beads ?? []).map(({ id, letter, name, hex }) => (
              <button
                key={id}
                type="button"
                class="button dot"
                data-plain={id}
                aria-pressed={plain === id}
                onClick={() =>
                  pieces.change(say.steps.back, (now) => ({
                    ...now,
                    wish: { ...now.wish, back: { id }, backPlace: undefined },
                  }))
                }
              >
                <span class="spot" style={{ background: hex }} />
                <span>
                  {letter} {name}
                </span>
              </button>
            ))}
          </div>
        </fieldset>
      )}
      {(back === 'same' || back === 'own') && <p class="small">{say.backHow}</p>}
    </>
  );
}

function Measures({ frame }: { frame: Frame }) {
  const say = words.value.purse;
  const { widthMm, heightMm } = frame;
  const field = (
    name: string,
    value: number,
    least: number,
    most: number,
    part: (value: number) => Partial<Frame>,
    step = 0.5,
  ) => (
    <NumberField
      name={name}
      unit={step === 1 ? '' : say.mm}
      value={value}
      least={least}
      most={most}
      step={step}
      done={say.steps.frame}
      put={(now, wanted) => measured(now, part(wanted))}
    />
  );
  return (
    <>
      <div class="numbers">
        {field(say.width, widthMm, 20, 250, (wide) => ({
          widthMm: wide,
          cornerRadiusMm: undefined,
          hingeWidthMm: undefined,
        }))}
        {field(say.height, heightMm, 5, 150, (high) => ({
          heightMm: high,
          cornerRadiusMm: undefined,
        }))}
        {frame.kind === 'squared' &&
          field(say.corner, cornerOf(frame), 0, Math.min(heightMm, widthMm / 2), (mm) => ({
            cornerRadiusMm: mm,
          }))}
        {frame.kind === 'oval' &&
          field(say.hinges, hingesOf(frame), Math.ceil(0.3 * widthMm), widthMm, (mm) => ({
            hingeWidthMm: mm,
          }))}
        {frame.fixing === 'glued'
          ? field(say.channel, frame.channelDepthMm ?? usualChannelMm, 0.5, 15, (mm) => ({
              channelDepthMm: mm,
            }))
          : field(say.holes, frame.holeSpacingMm ?? usualHolesMm, 1, 20, (mm) => ({
              holeSpacingMm: mm,
            }))}
        {field(
          say.bare,
          bareRoundsOf(frame, shapeOf(piece.value)),
          0,
          10,
          (n) => ({ bareRounds: Math.round(n) }),
          1,
        )}
      </div>
      <p class="small">{say.frameHow}</p>
      <Choice name={say.fixing} of={['frame-sewn', 'frame-glued']} />
      <ActionButton id="fit-frame" look="main" />
    </>
  );
}

/** How the panel sits in its frame, in figures. */
function Sits() {
  const say = words.value.purse;
  const { sides, trouble } = hung.value;
  const plan = sides[0]?.hanging?.plan;
  if (trouble) return <p class="trouble">{trouble}</p>;
  const { frame } = piece.value.wish;
  if (!plan || !frame) return null;
  const tenth = (mm: number) => figure(Math.round(10 * mm) / 10);
  const [left, right] = plan.hinges;
  return (
    <>
      <h3>{say.sits}</h3>
      <ul class="facts">
        <li>{say.worn({ panel: tenth(plan.wornWidthMm), frame: tenth(frame.widthMm) })}</li>
        <li>
          {say.inFrame({
            n: figure(plan.stitches),
            round: figure(plan.rounds),
            bare: figure(plan.bareRounds),
          })}
        </li>
        <li>
          {say.hingesAt({
            left: `${figure(left.inFrame)}/${figure(left.inSeam)}`,
            right: `${figure(right.inFrame)}/${figure(right.inSeam)}`,
          })}
        </li>
        <li>{say.seam({ n: figure(plan.seam.stitches), mm: tenth(plan.seam.lengthMm) })}</li>
        {plan.holes && (
          <li>
            {say.holesHow({
              spaces: figure(plan.holes.spaces),
              stitches: figure(plan.holes.stitches),
              more: figure(plan.holes.more),
            })}
          </li>
        )}
      </ul>
    </>
  );
}

function Lining() {
  const say = words.value.purse;
  const pattern = chart.value?.settled?.pattern;
  if (!pattern) return null;
  let lining;
  try {
    lining = planLining(pattern);
  } catch {
    return null;
  }
  return (
    <>
      <h3>{say.lining}</h3>
      <p>
        {say.liningHow({
          cut: figure(Math.round(lining.cutAcrossMm)),
          seam: figure(Math.round(lining.seamAcrossMm)),
        })}
      </p>
    </>
  );
}

/** A bank card against the screen says how large a millimetre is here. */
function Card() {
  const say = words.value.purse;
  const px = pxPerMm.value;
  const before = useRef(px);
  return (
    <>
      <h3>{say.size}</h3>
      <p class="small">{say.cardHow}</p>
      <div
        class="bank-card"
        style={{ width: `${cardMm.width * px}px`, height: `${cardMm.height * px}px` }}
      >
        <span>{say.cardBox}</span>
      </div>
      <input
        type="range"
        class="card-size"
        aria-label={say.cardBox}
        min={2}
        max={10}
        step={0.01}
        value={px}
        onInput={(event) => calibrate(event.currentTarget.valueAsNumber)}
        // The finger came to scroll.
        onPointerDown={() => (before.current = pxPerMm.peek())}
        onPointerCancel={() => calibrate(before.current)}
      />
    </>
  );
}
