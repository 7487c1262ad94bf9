import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { form, short } = numbersIn('cs');
const clockwise = (is: boolean): string =>
  is ? 'po směru hodinových ručiček' : 'proti směru hodinových ručiček';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  // M: kouzelný or magický kroužek.
  begin: (wedges) =>
    `Začátek: udělejte kouzelný kroužek, nebo 3 či 4 řetízková očka uzavřená do kroužku, a uháčkujte do něj ${wedges} ${form(wedges, { one: 'očko', few: 'očka', other: 'oček' })} kola 1, s korálkem v každém, které má písmeno. Kouzelný kroužek stáhněte; uprostřed zůstane malý otvor. Nechte konec nitě 15 až 20 cm na zapošití.`,
  stitch: (f) =>
    [
      'Očko: krátký sloupek (KS), s korálkem v každém.',
      f.beadsFace === 'away'
        ? 'Zapíchněte háček a vytáhněte smyčku. Přisuňte korálek těsně k práci, naberte nit a protáhněte ji oběma smyčkami na háčku: korálek se položí na stranu odvrácenou od vás.'
        : 'Korálek přeneste na svou stranu, háček je přitom nad nití: korálek se položí na stranu přivrácenou k vám.',
      f.lean === 0.5
        ? `Zapichujte pod obě nitky očka; každé očko pak obvykle sedí asi o půl očka za očkem pod ním (posun ${short(0.5, 2)}).`
        : `Tento návod počítá s posunem ${short(f.lean, 3)} očka: o tolik sedí každé očko za očkem pod ním.`,
      f.measured
        ? 'Tak jste ho změřili na vzorku: pracujte stejným háčkem, stejnou nití a stejnými korálky.'
        : 'Ruce se liší: před začátkem změřte posun na vzorku.',
      'Práci nikdy neobracejte.',
    ].join(' '),
  direction: (f) =>
    [
      `Tento seznam je pro ${f.hand === 'right' ? 'pravou' : 'levou'} ruku, s korálky směrem ${f.beadsFace === 'away' ? 'od vás' : 'k vám'}.`,
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
    'Čtení: 3A jsou tři očka s korálkem A. Část v kulatých závorkách, za kterou stojí x 3, se uháčkuje 3krát. Vpředu stojí očka a korálky kola a součet korálků uháčkovaných do konce kola: počítejte, když je kolo hotové.',
  bare: '„2 holé“ jsou dvě očka bez korálku.',
  spiral:
    'Kola běží dál jako spirála a neuzavírají se. Po posledním očku posledního kola uháčkujte dvě nebo tři pevná očka, aby se schod vyhladil; nemají korálek a nepočítají se. Nit ustřihněte na 20 cm a protáhněte ji poslední smyčkou.',
  joined:
    'Každé kolo uzavřete pevným očkem do jeho prvního očka a udělejte jedno řetízkové očko na výšku. První očko dalšího kola přijde do téhož prvního očka. Pevná očka a řetízková očka na výšku nemají korálek a nepočítají se. Na konci nit ustřihněte na 20 cm a protáhněte ji poslední smyčkou.',
};
