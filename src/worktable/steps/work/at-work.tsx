import { useEffect } from 'preact/hooks';
import { ActionButton } from '../../parts/action-button.js';
import { Trouble } from '../../keep/shelf-view.js';
import { figure, words } from '../../words.js';
import { keepAwake } from './awake.js';
import { panelName } from './panel-name.js';
import { CrochetScreen, workedBack, workedOn } from './crochet-screen.js';
import { canListen, deaf, listening, startEars } from './ears.js';
import { HelpSheets } from './help-sheets.js';
import { strungBack, strungOn, StringScreen } from './string-screen.js';
import { canSpeak, endVoice, voiceless } from './voice.js';
import { atWork, plans, stringLength, work } from './work-store.js';

/** One step further, in whatever hands are doing. */
export const goOn = () => (atWork.peek() === 'crochet' ? workedOn() : strungOn());
/** One step back. */
export const goBack = () => (atWork.peek() === 'crochet' ? workedBack() : strungBack());

/** The screen beside the bead mat: nothing on it but what the hands do next. */
export function AtWork() {
  const say = words.value.work;
  const open = atWork.value;
  const now = work.value;
  useEffect(() => keepAwake(), []);
  useEffect(() => endVoice, []);
  useEffect(() => startEars({ next: goOn, back: goBack }), []);
  if (!now) return null;
  return (
    <main class={`at-work ${open}`} data-state="settled">
      <header>
        <ActionButton id="to-table" look="quiet" />
        <p class="where">
          {panelName(now.at)}
          {open === 'string' &&
            plans.value.length > 1 &&
            ` · ${say.length({ n: figure(stringLength.value + 1), of: figure(plans.value.length) })}`}
        </p>
        <div class="senses">
          {canSpeak() && <ActionButton id="read-aloud" look="quiet" />}
          {canListen() && <ActionButton id="listen" look="quiet" />}
        </div>
      </header>
      <Trouble />
      {listening.value && <p class="note">{say.listens}</p>}
      {deaf.value && (
        <p class="note" role="alert">
          {say.deaf}
        </p>
      )}
      {voiceless.value && (
        <p class="note" role="alert">
          {say.voiceless}
        </p>
      )}
      {open === 'crochet' ? <CrochetScreen /> : <StringScreen />}
      <HelpSheets />
      <footer>
        <ActionButton id="work-back" />
        {open === 'crochet' ? (
          <>
            <ActionButton id="where-am-i" />
            <ActionButton id="something-wrong" />
            <ActionButton id="pin-note" />
          </>
        ) : (
          <>
            <ActionButton id="check-strung" />
            <ActionButton id="crochet" />
          </>
        )}
      </footer>
    </main>
  );
}
