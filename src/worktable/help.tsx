import { useRef } from 'preact/hooks';
import { useFocusOver } from './actions/focus.js';
import { allActions } from './actions/known.js';
import { steps } from './steps/list.js';
import { look, view } from './store/store.js';
import { words } from './words.js';
import { Icon } from './parts/icon.js';

/** Every action that has a key, from the same list as the buttons. */
export function Help() {
  const say = words.value;
  const box = useRef<HTMLElement>(null);
  useFocusOver(box, '[data-action="help"]');
  const keyName = (key: string) =>
    key
      .split('+')
      .map((part) => {
        if (part === '') return '+';
        const named = part === 'Ctrl' ? 'Control' : part;
        return (say.keys as Record<string, string>)[named] ?? part.toUpperCase();
      })
      .filter((part, n, all) => !(part === '+' && all[n - 1] === '+'))
      .join(' ');
  const groups = [
    { id: undefined, name: say.table.panel },
    ...steps.map((step) => ({ id: step.id, name: step.name(say) })),
  ];
  return (
    <aside class="help" ref={box} tabIndex={-1} aria-label={say.table.keys}>
      <div class="head">
        <h2>{say.table.keys}</h2>
        <button
          type="button"
          class="button quiet"
          onClick={() => look({ ...view.peek(), help: false })}
        >
          <Icon name="close" />
          <span>{say.table.close}</span>
        </button>
      </div>
      <p>{say.table.keysIntro}</p>
      {groups.map(({ id, name }) => {
        const keyed = allActions().filter((one) => one.step === id && one.keys);
        return (
          keyed.length > 0 && (
            <dl key={name}>
              <dt class="group">{name}</dt>
              {keyed.map((one) => (
                <div key={one.id}>
                  <dt>{say.actions[one.id]}</dt>
                  <dd>
                    {one.keys!.slice(0, one.eachKey ? undefined : 1).map((key) => (
                      <kbd key={key}>{keyName(key)}</kbd>
                    ))}
                    {one.id === 'to-step' && (
                      <>
                        <span>…</span>
                        <kbd>{one.keys!.at(-1)}</kbd>
                      </>
                    )}
                  </dd>
                </div>
              ))}
            </dl>
          )
        );
      })}
    </aside>
  );
}
