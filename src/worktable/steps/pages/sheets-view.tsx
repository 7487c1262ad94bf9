import { useEffect, useRef } from 'preact/hooks';
import { useFocusOver } from '../../actions/focus.js';
import { Icon } from '../../parts/icon.js';
import { chart, piece } from '../../store/store.js';
import { figure, language, words } from '../../words.js';
import { openSheet, sheets, showSheets } from './sheets.js';

/** The booklet's pages as they will be printed; a tap shows one as large as the window. */
export function SheetsView() {
  const say = words.value.pages;
  const settled = chart.value?.settled;
  const { pages } = piece.value;
  const first = useRef(true);
  useEffect(() => {
    // Those that are there already stand for what is wished now.
    if (!first.current && settled && sheets.peek()) void showSheets();
    first.current = false;
  }, [settled, pages, language.value]);
  const now = sheets.value;
  if (!now) return null;
  const { addresses } = now;
  const of = figure(now.pages);
  return (
    <>
      <p class="small" role="status">
        {addresses.length < Math.max(1, now.pages) ? say.making : say.pages(of)}
      </p>
      <ol class="sheets">
        {addresses.map((address, n) => (
          <li key={address}>
            <button type="button" onClick={() => (openSheet.value = n)}>
              <img src={address} alt={say.pageOf({ n: figure(n + 1), of })} />
            </button>
          </li>
        ))}
      </ol>
      {openSheet.value !== undefined && addresses[openSheet.value] && (
        <OneSheet
          address={addresses[openSheet.value]}
          n={openSheet.value}
          drawn={addresses.length}
          of={now.pages}
        />
      )}
    </>
  );
}

function OneSheet(props: { address: string; n: number; drawn: number; of: number }) {
  const { address, n, drawn, of } = props;
  const say = words.value;
  const box = useRef<HTMLElement>(null);
  useFocusOver(box, '[data-action="look-booklet"]');
  const go = (to: number) => {
    if (to >= 0 && to < drawn) openSheet.value = to;
  };
  const name = say.pages.pageOf({ n: figure(n + 1), of: figure(of) });
  return (
    <aside
      class="one-sheet"
      ref={box}
      tabIndex={-1}
      aria-label={name}
      onKeyDown={(event) => {
        if (event.key === 'Escape') openSheet.value = undefined;
        else if (event.key === 'ArrowLeft') go(n - 1);
        else if (event.key === 'ArrowRight') go(n + 1);
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      <div class="row">
        <button
          type="button"
          class="button"
          data-sheet="before"
          disabled={n === 0}
          onClick={() => go(n - 1)}
        >
          <Icon name="to-left" />
          <span>{say.actions['page-before']}</span>
        </button>
        <span role="status">{name}</span>
        <button
          type="button"
          class="button"
          data-sheet="after"
          disabled={n >= drawn - 1}
          onClick={() => go(n + 1)}
        >
          <Icon name="to-right" />
          <span>{say.actions['page-after']}</span>
        </button>
        <button
          type="button"
          class="button"
          data-sheet="close"
          onClick={() => (openSheet.value = undefined)}
        >
          <Icon name="close" />
          <span>{say.table.close}</span>
        </button>
      </div>
      <div class="paper" tabIndex={0}>
        <img src={address} alt={name} />
      </div>
    </aside>
  );
}
