import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('cs');

interface Span {
  readonly from: number;
  readonly to: number;
}

/** `1 až 30 a 111 až 140`. */
export const runsText = (runs: readonly Span[]): string =>
  runs.length === 0
    ? 'žádná'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from} až ${to}`)).join(' a ');

const kinds = { 'half-round': 'půlkulatý', squared: 'hranatý', oval: 'oválný' };
const fixings = { sewn: 'přišitý', glued: 'vlepený' };

/** Which stitches lie in the frame. */
export const frame: PageWords['frame'] = {
  kinds,
  paragraph: (f) =>
    [
      // M: rámeček, the clasp frame of a purse; kloub (pant?), its hinge.
      `Rámeček (${kinds[f.kind]}, šířka ${short(f.widthMm, 1)} mm, ${fixings[f.fixing]}): leží v něm očka ${runsText(f.runs)} kola ${f.round}, na obě strany od 12. hodiny stejně daleko.`,
      `Levý kloub, při pohledu na stranu s korálky, přijde mezi očka ${f.left.inFrame} a ${f.left.inSeam}, pravý mezi ${f.right.inFrame} a ${f.right.inSeam}; pod nimi začíná šev.`,
      f.bare.length === 0
        ? 'Žádné očko pro něj nezůstává holé.'
        : `Holá, tedy uháčkovaná bez korálku, zůstávají: ${f.bare.map(({ round, runs }) => `v kole ${round} očka ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `Na každém dílu rozdělte očka v rámečku (${f.stitches}) rovnoměrně po celé jeho délce, ${short(f.railMm, 1)} mm od kloubu ke kloubu${f.holes ? `: asi ${short(f.holes.perSpace, 1)} očka na každou mezeru mezi otvory, jsou-li od sebe ${short(f.holes.spacingMm, 1)} mm. Spočítejte otvory na svém rámečku` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Okraj je o ${short(Math.abs(f.longerPercent), 1)} % delší než rámeček: přebytek rovnoměrně rozdělte.`
          : ` Okraj je o ${short(Math.abs(f.longerPercent), 1)} % kratší než rámeček: rovnoměrně ho natáhněte.`
    }`,
  word: 'rámeček',
  mark: 'Okraj mezi dvěma tečkami (klouby) leží v rámečku.',
};
