import { useEffect } from 'preact/hooks';
import { languageNames, languages } from '../../../words/pages/languages.js';
import type { Language } from '../../../words/pages/languages.js';
import { ActionButton } from '../../parts/action-button.js';
import { Choice } from '../../parts/choice.js';
import { Icon } from '../../parts/icon.js';
import { fileName, saveFile } from '../../pages/save-file.js';
import { chart, piece } from '../../store/store.js';
import { language, words } from '../../words.js';
import { SheetsView } from './sheets-view.js';
import { lists, making, readLists, wishPages } from './making.js';

/** The card of the step Pages. */
export function PagesCard() {
  const say = words.value.pages;
  return (
    <>
      <h2>{say.step}</h2>
      <p>{say.intro}</p>
      <div class="offer">
        <ActionButton id="booklet" look="main" />
        <p class="small">{say.bookletHow}</p>
        <div class="row">
          <ActionButton id="look-booklet" />
          {'canShare' in navigator && <ActionButton id="share-booklet" />}
        </div>
        <SheetsView />
      </div>
      <div class="offer">
        <ActionButton id="zip" />
        <p class="small">{say.zipHow}</p>
      </div>
      <div class="offer">
        <ActionButton id="swatch-guide" />
        <p class="small">{words.value.panel.guideHow}</p>
      </div>
      <p role="status">{making.value ? say.making : chart.value?.settled ? '' : say.waiting}</p>
      <How />
      <Lists />
    </>
  );
}

/** Languages, edition, paper and what stands on the cover. */
function How() {
  const say = words.value.pages;
  const wish = piece.value.pages ?? {};
  const first = wish.language ?? language.value;
  return (
    <>
      <h3>{say.how}</h3>
      <label class="asked">
        <span>{say.language}</span>
        <select
          value={first}
          onChange={(event) => wishPages({ language: event.currentTarget.value as Language })}
        >
          {languages.map((one) => (
            <option key={one} value={one}>
              {languageNames[one]}
            </option>
          ))}
        </select>
      </label>
      <label class="asked">
        <span>{say.second}</span>
        <select
          value={wish.second ?? ''}
          onChange={(event) =>
            wishPages({ second: (event.currentTarget.value || undefined) as Language | undefined })
          }
        >
          <option value="">{say.none}</option>
          {languages
            .filter((one) => one !== first)
            .map((one) => (
              <option key={one} value={one}>
                {languageNames[one]}
              </option>
            ))}
        </select>
      </label>
      <label class="asked">
        <span>{say.paper}</span>
        <select
          value={wish.paper ?? 'a4'}
          onChange={(event) => wishPages({ paper: event.currentTarget.value as 'a4' | 'letter' })}
        >
          <option value="a4">{say.papers.a4}</option>
          <option value="letter">{say.papers.letter}</option>
        </select>
      </label>
      <Choice name={say.how} of={['grey', 'large', 'other-hand']} />
      <CoverPhoto />
      {(['author', 'licence', 'contact', 'time', 'date'] as const).map((key) => (
        <label key={key} class="asked long">
          <span>{say[key]}</span>
          {key === 'date' ? (
            <input
              type="date"
              value={wish.date ?? ''}
              onChange={(event) => wishPages({ date: event.currentTarget.value || undefined })}
            />
          ) : (
            <input
              maxLength={300}
              value={wish[key] ?? ''}
              onChange={(event) =>
                wishPages({ [key]: event.currentTarget.value.trim() || undefined })
              }
            />
          )}
        </label>
      ))}
    </>
  );
}

/** The maker's own photograph for the cover. */
function CoverPhoto() {
  const photo = piece.value.pages?.photo;
  return (
    <div class="row">
      {photo && (
        <img class="cover-photo" src={`data:image/jpeg;base64,${photo.jpeg}`} alt={photo.name} />
      )}
      <ActionButton id="cover-photo" />
      {photo && <ActionButton id="no-photo" look="quiet" />}
    </div>
  );
}

/** The lists to be read here; each can be saved alone. */
function Lists() {
  const say = words.value.pages;
  const { pages } = piece.value;
  const settled = chart.value?.settled;
  useEffect(() => {
    if (lists.peek() && settled) void readLists();
  }, [settled, pages]);
  const shown = Object.entries(lists.value ?? {}).filter(([name]) =>
    Object.hasOwn(say.list, name.replace(/^back-/, '')),
  );
  return (
    <>
      <h3>{say.lists}</h3>
      <label class="asked">
        <span>{say.pieces}</span>
        <input
          type="number"
          min="1"
          max="10000"
          value={pages?.pieces ?? 1}
          onChange={(event) => {
            const typed = event.currentTarget.valueAsNumber;
            if (typed >= 1 && typed <= 10_000) wishPages({ pieces: Math.round(typed) });
          }}
        />
      </label>
      <div class="row">
        <ActionButton id="read-lists" />
      </div>
      {shown.length > 0 && <p class="small">{say.listsHow}</p>}
      {shown.map(([name, text]) => (
        <details key={name} class="list">
          <summary>
            {say.list[name.replace(/^back-/, '') as keyof typeof say.list]} ({name})
          </summary>
          <button
            type="button"
            class="button"
            onClick={() => {
              const type = name.endsWith('.svg') ? 'image/svg+xml' : 'text/plain';
              saveFile(new Blob([text], { type }), fileName(piece.peek().title, `-${name}`));
            }}
          >
            <Icon name="zip" />
            <span>{words.value.actions['save-one']}</span>
          </button>
          {name.endsWith('.svg') ? (
            <ChartPicture svg={text} name={say.list['chart.svg']} />
          ) : (
            <pre tabIndex={0}>{text}</pre>
          )}
        </details>
      ))}
    </>
  );
}

function ChartPicture({ svg, name }: { svg: string; name: string }) {
  return (
    <img class="chart-page" alt={name} src={`data:image/svg+xml,${encodeURIComponent(svg)}`} />
  );
}
