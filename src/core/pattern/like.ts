import { RondureError } from '../errors.js';
import type { Pattern } from './pattern.js';
import type { Shape } from '../panel/shape.js';

/**
 * A pattern made of a list of rounds, with what the list does not hold from the pattern that it was
 * printed from: the other panel, the pictures, frame, swatch and thread. The list's beads hold for
 * the whole pattern, since a letter names one bead in it. What was said of the choice no longer holds.
 *
 * @param made of one panel, which takes the place of the panel of its name, or of the only one
 * @throws RondureError `list-unlike` when wedges, rounds, increase, hand or another way of working differ
 */
export function patternLike(made: Pattern, like: Pattern): Pattern {
  const differs = waysOfWorking.find((key) => made.shape[key] !== like.shape[key]);
  if (differs !== undefined) {
    const facts = { what: differs, list: made.shape[differs], pattern: like.shape[differs] };
    throw new RondureError('list-unlike', facts);
  }
  const [panel] = made.panels;
  const named = like.panels.findIndex(({ name }) => name === panel.name);
  const at = named < 0 && like.panels.length === 1 ? 0 : named;
  if (at < 0) {
    const names = like.panels.map(({ name }) => name).join(', ');
    throw new RondureError('list-unlike', { what: 'panel', list: panel.name, pattern: names });
  }
  const panels = like.panels.map((one, n) => (n === at ? { ...one, rounds: panel.rounds } : one));
  const used = new Set(panels.flatMap(({ rounds }) => rounds).join(''));
  const own = new Map(made.beads.map((bead) => [bead.letter, bead]));
  const beads = [...like.beads.filter(({ letter }) => !own.has(letter)), ...made.beads]
    .filter(({ letter }) => used.has(letter) || own.has(letter))
    .sort((one, other) => (one.letter < other.letter ? -1 : 1));
  const { choice: _choice, ...kept } = like;
  return { ...kept, title: made.title, shape: like.shape, beads, panels };
}

/** What a list may not change of its pattern: the stitch size it only rounds. */
const waysOfWorking = [
  'wedges',
  'rounds',
  'increase',
  'construction',
  'hand',
  'beadsFace',
] as const satisfies readonly (keyof Shape)[];
