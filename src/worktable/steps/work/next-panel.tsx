import { stitchCount } from '../../../core/panel/shape.js';
import { lengthToString, progressOf } from '../../../core/work/progress.js';
import { Icon } from '../../parts/icon.js';
import { words } from '../../words.js';
import { panelName, panelsOf } from './panel-name.js';
import { markWork, work } from './work-store.js';

/** Once a panel is done: the way to the next one of the purse that is not. */
export function NextPanel() {
  const now = work.value!;
  const stitches = stitchCount(now.pattern.shape);
  const isDone = (at = now.at) => progressOf(now, at).worked >= stitches;
  const next = panelsOf(now).find((at) => !isDone(at));
  if (!isDone() || !next) return null;
  const strings = lengthToString(now.pattern, next.panel, progressOf(now, next)) !== undefined;
  const hands = strings ? 'string' : 'crochet';
  return (
    <button
      type="button"
      class="button main"
      data-next-panel
      onClick={() => markWork((was) => ({ ...was, at: next, open: hands }))}
    >
      <Icon name={strings ? 'needle' : 'hook'} />
      <span>
        {words.value.actions[hands]}: {panelName(next)}
      </span>
    </button>
  );
}
