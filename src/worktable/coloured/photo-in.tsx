import { Icon } from '../parts/icon.js';
import { chooseAny } from '../picture-in/ways-in.js';
import { figure, words } from '../words.js';
import {
  blanks,
  chosenBlank,
  goOn,
  halfRead,
  mostColours,
  reading,
  sentence,
  takeFile,
} from './take-photo.js';

/** More crayons than this nobody tells apart on paper, and letters stay free for the brush. */
const colourRange = { least: 1, most: 20 };

/** Which chart was coloured, and its photo. */
export function PhotoIn() {
  const say = words.value.coloured;
  const half = halfRead.value;
  const wait = reading.value;
  return (
    <div class="photo-in">
      {half && !wait && (
        <button type="button" class="button main" data-form="go-on" onClick={() => void goOn(half)}>
          <Icon name="pencil" />
          <span>
            {say.goOn({
              name: half.photo.name,
              n: figure(Object.keys(half.said).length),
              of: figure(half.of),
            })}
          </span>
        </button>
      )}
      <Which />
      <label class="asked">
        <span>{say.colours}</span>
        <input
          type="number"
          inputMode="numeric"
          min={colourRange.least}
          max={colourRange.most}
          value={mostColours.value}
          onChange={(event) => {
            const typed = Math.round(event.currentTarget.valueAsNumber);
            const { least, most } = colourRange;
            if (Number.isFinite(typed)) mostColours.value = Math.min(most, Math.max(least, typed));
            event.currentTarget.value = String(mostColours.peek());
          }}
        />
      </label>
      <section class="invite" aria-label={say.photo}>
        <h2>{say.photo}</h2>
        {wait ? (
          <>
            <p role="status">{say.reading}</p>
            <button type="button" class="button" data-form="stop" onClick={() => wait.abort()}>
              <Icon name="close" />
              <span>{say.stop}</span>
            </button>
          </>
        ) : (
          <>
            <p>{say.photoHow}</p>
            <div class="row">
              <button
                type="button"
                class="button main"
                data-form="choose-photo"
                onClick={() => chooseAny('image/*,.svg', false, (file) => void takeFile(file))}
              >
                <Icon name="folder" />
                <span>{say.choose}</span>
              </button>
              <button
                type="button"
                class="button"
                data-form="take-photo"
                onClick={() => chooseAny('image/*', true, (file) => void takeFile(file))}
              >
                <Icon name="camera" />
                <span>{words.value.actions.camera}</span>
              </button>
            </div>
          </>
        )}
      </section>
      {sentence.value && (
        <p
          class={`said ${sentence.value.kind}`}
          role={sentence.value.kind === 'trouble' ? 'alert' : 'status'}
        >
          {sentence.value.text}
        </p>
      )}
      <p class="small">{words.value.picture.local}</p>
    </div>
  );
}

function Which() {
  const say = words.value.coloured;
  return (
    <fieldset class="choice">
      <legend>{say.which}</legend>
      {blanks.value.map(({ title, shape }, n) => (
        <label key={`${n} ${title}`} class="tick">
          <input
            type="radio"
            name="blank"
            checked={n === chosenBlank.value}
            onChange={() => (chosenBlank.value = n)}
          />
          <span>
            {say.blank({ title, wedges: figure(shape.wedges), rounds: figure(shape.rounds) })}
          </span>
        </label>
      ))}
      <p class="small">{say.whichHow}</p>
      <button
        type="button"
        class="button quiet"
        data-form="open-blank"
        onClick={() => chooseAny('.json,.svg,.png', false, (file) => void takeFile(file))}
      >
        <Icon name="folder" />
        <span>{say.openBlank}</span>
      </button>
    </fieldset>
  );
}
