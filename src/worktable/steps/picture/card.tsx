import { ActionButton } from '../../parts/action-button.js';
import { Choice } from '../../parts/choice.js';
import { NumberField } from '../../parts/number-field.js';
import { calmChart, calmPiece } from '../../store/calm.js';
import { wish } from '../../store/store.js';
import { figure, words } from '../../words.js';
import { brushing, brushMm } from './mind.js';
import { brushRadii } from './mind-keys.js';
import { placed, placeOf } from './place.js';

/** The card of the step Picture. */
export function PictureCard() {
  const say = words.value.picture;
  const { sample, picture } = calmPiece.value;
  return (
    <>
      <div class={sample ? 'invite' : 'ways'}>
        {sample ? <h2>{say.invite}</h2> : <h2>{say.yours}</h2>}
        {sample && <p>{say.inviteHow}</p>}
        <div class="row">
          <ActionButton id="open" look={sample ? 'main' : 'plain'} />
          <ActionButton id="camera" />
          <ActionButton id="paste" />
          {!sample && <ActionButton id="sample" look="quiet" />}
        </div>
        <p class="small">{say.local}</p>
      </div>
      <ByHand />
      {sample && <p class="small">{say.sampleNote}</p>}
      {picture ? <Lies /> : !sample && <p>{say.noPicture}</p>}
    </>
  );
}

/** An empty chart to print and colour, and its photo read back. */
function ByHand() {
  const say = words.value.coloured;
  return (
    <details class="by-hand">
      <summary>{say.title}</summary>
      <p>{say.how}</p>
      <div class="row">
        <ActionButton id="blank-chart" />
        <ActionButton id="coloured-chart" />
        <ActionButton id="blank-svg" look="quiet" />
      </div>
    </details>
  );
}

function Lies() {
  const say = words.value.picture;
  const place = placeOf(calmPiece.value);
  return (
    <>
      <p>{say.moveHow}</p>
      <div class="numbers">
        <NumberField
          name={say.size}
          unit={say.sizeUnit}
          value={100 * (place.zoom ?? 1)}
          least={10}
          most={500}
          step={1}
          done={say.steps.size}
          put={(now, value) => placed(now, { zoom: value / 100 })}
        />
        <NumberField
          name={say.turned}
          unit={say.turnedUnit}
          value={place.rotateDegrees ?? 0}
          least={-180}
          most={180}
          step={1}
          done={say.steps.turn}
          put={(now, value) => placed(now, { rotateDegrees: value })}
        />
        <NumberField
          name={say.across}
          unit={say.mm}
          value={place.shiftXmm ?? 0}
          least={-100}
          most={100}
          step={0.5}
          done={say.steps.move}
          put={(now, value) => placed(now, { shiftXmm: value })}
        />
        <NumberField
          name={say.down}
          unit={say.mm}
          value={place.shiftYmm ?? 0}
          least={-100}
          most={100}
          step={0.5}
          done={say.steps.move}
          put={(now, value) => placed(now, { shiftYmm: value })}
        />
      </div>
      <Choice
        name={say.lies}
        of={[
          'place-subject',
          'place-fill',
          'place-fit',
          'place-inside',
          'mirror',
          'repeat',
          'straighten',
        ]}
      />
      <p class="small">{say.liesHow[place.place]}</p>
      <Choice name={say.kind} of={['art-auto', 'art-photo', 'art-drawing', 'paper']} />
      <p class="small">
        {say.kindHow} {decided()}
      </p>
      <Minded />
      <Around />
    </>
  );
}

/** The brush over what must not be lost. */
function Minded() {
  const say = words.value.picture;
  return (
    <fieldset class="choice">
      <legend>{say.mind}</legend>
      <div class="row">
        <ActionButton id="mind" />
        <ActionButton id="unmind" />
        <ActionButton id="mind-none" look="quiet" />
      </div>
      {brushing.value && (
        <label class="number">
          <span>{say.mindSize}</span>
          <input
            type="range"
            min={brushRadii.least}
            max={brushRadii.most}
            step={brushRadii.step}
            value={brushMm.value}
            onInput={(event) => (brushMm.value = event.currentTarget.valueAsNumber)}
          />
          <span>
            {figure(2 * brushMm.value)} {say.mm}
          </span>
        </label>
      )}
      <p class="small">{say.mindHow}</p>
      {brushing.value && <p class="small by-keys">{say.mindKeys}</p>}
    </fieldset>
  );
}

/** How the picture was taken, where that was not said. */
function decided(): string {
  const report = calmChart.value?.settled?.report;
  return report?.artDecided ? words.value.picture.kindDecided({ art: report.art }) : '';
}

/** What lies around and behind the picture: white, bare, or one of the beads on the mat. */
function Around() {
  const say = words.value.picture;
  const { background } = calmPiece.value.wish;
  const choices: { key: string; name: string; hex?: string; put: string | { id: string } }[] = [
    { key: 'auto', name: say.groundAuto, put: 'auto' },
    { key: '#ffffff', name: say.white, hex: '#ffffff', put: '#ffffff' },
    { key: 'bare', name: say.bare, put: 'bare' },
    ...(calmChart.value?.beads ?? []).map(({ id, name, hex, letter }) => ({
      key: `bead ${id}`,
      name: `${letter} ${name}`,
      hex,
      put: { id },
    })),
  ];
  const now = typeof background === 'string' ? background : `bead ${background.id}`;
  return (
    <fieldset class="choice around">
      <legend>{say.around}</legend>
      <div class="row">
        {choices.map(({ key, name, hex, put }) => (
          <button
            key={key}
            type="button"
            class="button dot"
            aria-pressed={now === key}
            onClick={() => wish(say.steps.background, { background: put })}
          >
            <span class={`spot ${hex ? '' : 'none'}`} style={hex ? { background: hex } : {}} />
            <span>{name}</span>
          </button>
        ))}
      </div>
      <p class="small">{say.aroundHow}</p>
      <ActionButton id="cut-out" />
      <p class="small">{say.cutOutHow}</p>
    </fieldset>
  );
}
