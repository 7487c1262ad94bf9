import { sights } from '../../core/colour/vision.js';
import { look, tell, view } from '../store/store.js';
import { words } from '../words.js';

/** The next pair of eyes: usual ones, three that see fewer colours, and a grey printer. */
export function nextEyes(): void {
  const { eyes } = view.peek();
  const next = sights[(sights.indexOf(eyes) + 1) % sights.length];
  look({ eyes: next });
  tell(words.peek().beads.eyesNow[next]);
}

/** Back to the eyes of whoever looks. */
export function ownEyes(): void {
  look({ eyes: 'usual' });
  tell(words.peek().beads.eyesNow.usual);
}
