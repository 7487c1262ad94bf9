import { progressOf } from '../../../core/work/progress.js';
import { pieceCost } from '../../../core/work/piece-cost.js';
import { ActionButton } from '../../parts/action-button.js';
import { figure, language, words } from '../../words.js';
import { markWork, work } from './work-store.js';

/** Time that went into the purse at hand, and what it cost; counted only where that is wished. */
export function TimeAndCost() {
  const say = words.value.mending;
  const now = work.value!;
  const seconds = now.pattern.panels.reduce(
    (sum, _panel, panel) => sum + progressOf(now, { panel, copy: now.at.copy }).seconds,
    0,
  );
  const cost = pieceCost(now.pattern, seconds, now.hourly);
  const money = new Intl.NumberFormat(language.value, {
    minimumFractionDigits: 2,
    maximumFractionDigits: 2,
  });
  const shown = (value: number | undefined) =>
    value === undefined ? say.cost.unknown : money.format(value);
  const minutes = Math.round(seconds / 60);
  return (
    <details class="time-cost">
      <summary>{say.timeTitle}</summary>
      <div class="row">
        <ActionButton id="count-time" />
        <b data-time={Math.round(seconds)}>
          {say.time({ h: figure(Math.floor(minutes / 60)), min: figure(minutes % 60) })}
        </b>
      </div>
      <p class="small">{say.timeHow}</p>
      <label class="under-name">
        <span>{say.hourly}</span>
        <input
          type="number"
          inputMode="decimal"
          min={0}
          step={0.5}
          value={now.hourly ?? ''}
          onChange={(event) => {
            const hourly = event.currentTarget.valueAsNumber;
            markWork(({ hourly: _was, ...rest }) =>
              hourly >= 0 && hourly < 1e6 ? { ...rest, hourly } : rest,
            );
          }}
        />
      </label>
      <dl class="cost">
        {(['beads', 'thread', 'time'] as const).map((part) => (
          <div key={part}>
            <dt>{say.cost[part]}</dt>
            <dd>{shown(cost[part])}</dd>
          </div>
        ))}
        <div class="sum">
          <dt>{say.cost.sum}</dt>
          <dd data-cost>{money.format(cost.sum)}</dd>
        </div>
      </dl>
      <p class="small">{say.costHow}</p>
    </details>
  );
}
