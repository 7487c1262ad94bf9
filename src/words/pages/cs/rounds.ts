import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';

const { form, short } = numbersIn('cs');
const clockwise = (is: boolean): string =>
  is ? 'po směru hodinových ručiček' : 'proti směru hodinových ručiček';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  // M: kouzelný or magický kroužek.
  begin: (f) =>
    `Začátek: udělejte kouzelný kroužek, nebo 3 či 4 řetízková očka uzavřená do kroužku pevným očkem; potom jedno řetízkové očko. Řetízková očka ani pevné očko nemají korálek a nepočítají se (běžná praxe, bez zdroje). Do kroužku uháčkujte ${f.wedges} ${form(f.wedges, { one: 'očko', few: 'očka', other: 'oček' })} kola 1, každé s jeho korálkem. Kouzelný kroužek stáhněte; uprostřed zůstane malý otvor. Nechte konec nitě ${f.tailCm} cm na zapošití.`,
  stitch: (f) =>
    [
      f.way === 'slip'
        ? 'Očko: pevné očko, s korálkem v každém.'
        : 'Očko: krátký sloupek (KS), s korálkem v každém.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Každé očko je pak oproti očku pod ním obvykle posunuté asi o půl očka zpět, proti směru práce (posun ${short(0.5, 2)}). Horní nitky oček totiž neleží nad jejich středem, a tak řady oček od středu k okraji běží šikmo; schéma s tím počítá.`
        : `Tento návod počítá s posunem ${short(f.lean, 3)} očka: o tolik je každé očko oproti očku pod ním posunuté zpět, proti směru práce.`,
      f.measured
        ? 'Tak byl změřen na vzorku: pracujte stejným háčkem, stejnou nití a stejnými korálky.'
        : 'Ruce se liší: před začátkem změřte posun na vzorku.',
      'Práci nikdy neobracejte.',
    ].join(' '),
  direction: (f) =>
    [
      `Seznam kol je pro ${f.hand === 'right' ? 'pravou' : 'levou'} ruku, s korálky směrem ${f.beadsFace === 'away' ? 'od vás' : 'k vám'}.`,
      `Na straně s korálky, kterou ukazuje schéma a která je na peněžence vnější, běží práce ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Při háčkování vidíte druhou stranu, kde běží ${clockwise(!f.clockwise)}.`
        : 'Při háčkování vidíte právě tuto stranu.',
      'Díl uháčkovaný druhou rukou vyjde zrcadlově obrácený.',
    ].join(' '),
  marker: 'Značkovač: zavěste ho do prvního očka kola a na začátku každého kola ho posuňte výš.',
  increases: (example) =>
    `Přidání: dvě písmena v hranatých závorkách, ${example}, jsou dvě očka uháčkovaná do jednoho a téhož očka předchozího kola, v tom pořadí, v jakém jsou napsána. Od kola 2 je jedna taková dvojice v každém klínu každého kola.`,
  reading:
    'Čtení: 3A jsou tři očka s korálkem A. Část v kulatých závorkách, za kterou stojí x 3, se uháčkuje 3krát. U každého kola stojí jeho očka a korálky a součet korálků uháčkovaných do jeho konce: počítejte, když je kolo hotové.',
  bare: '„2 holé“ jsou dvě očka bez korálku.',
  spiral: 'Kola běží dál jako spirála a neuzavírají se.',
  joined:
    'Každé kolo uzavřete pevným očkem do jeho prvního očka a udělejte jedno řetízkové očko na výšku. První očko dalšího kola přijde do téhož prvního očka. Pevná očka a řetízková očka na výšku nemají korálek a nepočítají se.',
  end: {
    spiral: (f) =>
      `Po posledním očku posledního kola uháčkujte dvě nebo tři pevná očka, aby se schod vyhladil; nemají korálek a nepočítají se. Nit ustřihněte na ${f.tailCm} cm a protáhněte ji poslední smyčkou.`,
    joined: (f) => `Na konci nit ustřihněte na ${f.tailCm} cm a protáhněte ji poslední smyčkou.`,
  },
};
