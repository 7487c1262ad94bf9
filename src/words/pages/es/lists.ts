import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many } = numbersIn('es');
const beads = (n: number) => many(n, { one: 'abalorio', other: 'abalorios' });
const stitches = (n: number) => many(n, { one: 'punto', other: 'puntos' });

export const lists: PageWords['lists'] = {
  number: count,
  decimal: fixed,
  beads,
  stitches,
  // M: V (vuelta); some printed patterns write «Vta.».
  round: (round) => `V${round}`,
  // Both stay the same after any number: «2 sin» (abalorio), «3 pend.» (pendientes).
  aside: (thing, which) => `${thing}, ${which}`,
  bare: 'sin',
  open: 'pend.',
  openLeft: (n) =>
    n === 1
      ? '1 punto está todavía pendiente de decidir (pend.) y no entra en los recuentos de abalorios.'
      : `${stitches(n)} están todavía pendientes de decidir (pend.) y no entran en los recuentos de abalorios.`,
};
