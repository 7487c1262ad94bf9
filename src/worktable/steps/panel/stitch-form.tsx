import { useState } from 'preact/hooks';
import type { Swatch } from '../../../core/swatch/swatch.js';
import { ActionButton } from '../../parts/action-button.js';
import { Icon } from '../../parts/icon.js';
import { chooseAny } from '../../picture-in/ways-in.js';
import { isSaid } from '../../said.js';
import { piece, pieces, tell, tellTrouble } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { firstForm, swatchRounds } from './swatch-form.js';
import type { SwatchForm } from './swatch-form.js';
import { openSwatchPhoto, SwatchLines, swatchPhoto } from './swatch-photo.js';
import { TurnDrawing } from './turn-drawing.js';

/** The maker's own stitch: what it was measured as, and the form to measure it anew. */
export function StitchForm() {
  const say = words.value.panel;
  const { swatch } = piece.value;
  const [open, setOpen] = useState(false);
  const [form, setForm] = useState<SwatchForm>({ ...firstForm, rounds: swatchRounds.peek() });
  const put = (part: Partial<SwatchForm>) => setForm({ ...form, ...part });
  return (
    <section class="stitch-form">
      <h3>{say.stitch}</h3>
      <p>{swatch ? measuredAs(swatch) : say.notMeasured}</p>
      <p class="small">{say.stitchHow}</p>
      <ActionButton id="swatch-guide" />
      <p class="small">{say.guideHow}</p>
      <div class="row">
        <button
          type="button"
          class="button"
          aria-expanded={open}
          data-form="stitch"
          onClick={() => setOpen(!open)}
        >
          <Icon name="pencil" />
          <span>{words.value.actions['measure-stitch']}</span>
        </button>
        <button
          type="button"
          class="button"
          data-form="photo"
          onClick={() => {
            setOpen(true);
            chooseAny('image/*', false, (file) => void openSwatchPhoto(file, form.rounds));
          }}
        >
          <Icon name="camera" />
          <span>{words.value.actions['photo-swatch']}</span>
        </button>
        {swatch && (
          <button
            type="button"
            class="button quiet"
            onClick={() => pieces.change(say.steps.forget, ({ swatch: _gone, ...now }) => now)}
          >
            <Icon name="undo" />
            <span>{say.forget}</span>
          </button>
        )}
      </div>
      <SwatchLines take={() => void takeForm(form)} />
      {open && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void takeForm(form).then((taken) => taken && setOpen(false));
          }}
        >
          <Field
            name={say.swatchRounds}
            unit=""
            value={form.rounds}
            put={(rounds) => {
              // Lines of another swatch mean nothing any more.
              swatchPhoto.value = undefined;
              swatchRounds.value = Math.round(rounds ?? firstForm.rounds);
              put({ rounds: swatchRounds.peek() });
            }}
          />
          <fieldset class="choice">
            <legend>{say.lies}</legend>
            <div class="row">
              {(['flat', 'cups', 'ruffles'] as const).map((lies) => (
                <button
                  key={lies}
                  type="button"
                  class="button"
                  aria-pressed={form.lies === lies}
                  onClick={() => put({ lies })}
                >
                  {say.liesWords[lies]}
                </button>
              ))}
            </div>
          </fieldset>
          <Field
            name={say.across}
            unit="mm"
            value={form.acrossMm}
            put={(v) => put({ acrossMm: v })}
          />
          <Field
            name={say.rim}
            unit={say.beads}
            value={form.rimStitches}
            put={(v) => put({ rimStitches: v })}
          />
          <Field name={say.rimMm} unit="mm" value={form.rimMm} put={(v) => put({ rimMm: v })} />
          <fieldset class="choice">
            <legend>{say.turnAsk}</legend>
            <div class="row ways">
              {(['against', 'with'] as const).map((turnWay) => (
                <button
                  key={turnWay}
                  type="button"
                  class="button picture-choice"
                  aria-pressed={form.turnWay === turnWay}
                  onClick={() => put({ turnWay })}
                >
                  <TurnDrawing way={turnWay} />
                  <span>{turnWay === 'with' ? say.turnWith : say.turnAgainst}</span>
                </button>
              ))}
            </div>
          </fieldset>
          <Field
            name={say.turnBy}
            unit={say.degrees}
            value={form.turnDegrees}
            put={(v) => put({ turnDegrees: v })}
          />
          <Field
            name={say.thread}
            unit="mm"
            value={form.threadMm}
            put={(v) => put({ threadMm: v })}
          />
          <Field
            name={say.threadStitches}
            unit={say.stitches}
            value={form.threadStitches}
            put={(v) => put({ threadStitches: v })}
          />
          <Field
            name={say.fifty}
            unit="mm"
            value={form.fiftyBeadsMm}
            put={(v) => put({ fiftyBeadsMm: v })}
          />
          <button type="submit" class="button main" data-form="work-out">
            <Icon name="straighten" />
            <span>{say.work}</span>
          </button>
        </form>
      )}
    </section>
  );
}

async function takeForm(form: SwatchForm): Promise<boolean> {
  const say = words.peek().panel;
  try {
    const { solveForm } = await import('./swatch.js');
    const { swatch } = solveForm(form, piece.peek(), swatchPhoto.peek());
    swatchPhoto.value = undefined;
    pieces.change(say.steps.stitch, (now) => ({ ...now, swatch }));
    tell(say.worked);
    return true;
  } catch (error) {
    if (!isSaid(error)) console.error(error);
    tellTrouble(error);
    return false;
  }
}

function measuredAs({ stitchWidthMm, roundHeightMm, lean }: Swatch): string {
  const say = words.value.panel;
  const of = (one: Swatch['lean']) => (one ? figure(Math.round(one.value * 100) / 100) : '?');
  const size = say.measured({ w: of(stitchWidthMm), h: of(roundHeightMm) });
  return lean ? `${size}, ${say.measuredLean(of(lean))}` : size;
}

function Field(props: {
  name: string;
  unit: string;
  value: number | undefined;
  put: (value: number | undefined) => void;
}) {
  const { name, unit, value, put } = props;
  return (
    <label class="asked">
      <span>{name}</span>
      <span class="typed">
        <input
          type="number"
          inputMode="decimal"
          min="0"
          step="any"
          value={value ?? ''}
          onInput={(event) => {
            const typed = event.currentTarget.valueAsNumber;
            put(Number.isFinite(typed) ? typed : undefined);
          }}
        />
        <span class="unit">{unit}</span>
      </span>
    </label>
  );
}
