import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { form, short } = numbersIn('cs');
const clockwise = (is: boolean): string =>
  is ? 'po směru hodinových ručiček' : 'proti směru hodinových ručiček';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (wedges) =>
    `Začátek: udělat kouzelný kroužek, nebo 3 či 4 řetízková očka uzavřená do kroužku, a uháčkovat do něj ${wedges} ${form(wedges, { one: 'očko', few: 'očka', other: 'oček' })} kola 1, s korálkem v každém, které má písmeno. Kouzelný kroužek stáhnout; uprostřed zůstane malý otvor. Nechat konec nitě 15 až 20 cm na zapošití.`,
  stitch: (f) =>
    [
      'Očko: krátký sloupek (KS), s korálkem v každém.',
      f.beadsFace === 'away'
        ? 'Zapíchnout háček a protáhnout smyčku. Přisunout korálek těsně k práci, nabrat nit a protáhnout ji oběma smyčkami: korálek se položí na stranu od sebe.'
        : 'Přenést korálek na svou stranu, háček nad nití: položí se na stranu k sobě.',
      f.lean === 0.5
        ? `Zapichovat pod obě nitky očka; každé očko pak obvykle sedí asi o půl očka za tím pod ním (posun ${short(0.5, 2)}).`
        : `Tento návod počítá s posunem ${short(f.lean, 3)} očka: o tolik sedí každé očko za tím pod ním.`,
      f.measured
        ? 'Tak byl změřen na vzorku: pracovat stejným háčkem, stejnou nití a stejnými korálky.'
        : 'Ruce se liší: před začátkem změřit posun na vzorku.',
      'Práci nikdy neobracet.',
    ].join(' '),
  direction: (f) =>
    [
      `Tento seznam je pro ${f.hand === 'right' ? 'pravou' : 'levou'} ruku, s korálky na straně ${f.beadsFace === 'away' ? 'od sebe' : 'k sobě'}.`,
      `Na straně s korálky, kterou ukazuje schéma a která je na peněžence vnější, běží práce ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Při háčkování je vidět druhá strana, kde běží ${clockwise(!f.clockwise)}.`
        : 'Při háčkování je vidět právě tato strana.',
      'Druhou rukou uháčkovaný díl vyjde jako svůj zrcadlový obraz.',
    ].join(' '),
  marker:
    'Značka: zavěsit značkovač do prvního očka kola a na začátku každého kola ho posunout výš.',
  increases: (example) =>
    `Přidání: dvě písmena v hranatých závorkách, ${example}, jsou dvě očka uháčkovaná do jednoho a téhož očka předchozího kola, v tom pořadí, v jakém jsou napsána. Od kola 2 je jedna taková dvojice v každém klínu každého kola.`,
  reading:
    'Čtení: 3A jsou tři očka s korálkem A. Část v kulatých závorkách, za kterou stojí x 3, se uháčkuje 3krát. Vpředu stojí očka a korálky kola a součet korálků uháčkovaných do jeho konce: počítat, když je kolo hotové.',
  bare: '2 holé jsou dvě očka bez korálku.',
  spiral:
    'Kola běží dál jako spirála a neuzavírají se. Po posledním očku posledního kola uháčkovat dvě nebo tři pevná očka, aby se schod vyhladil; nemají korálek a nepočítají se. Nit ustřihnout na 20 cm a protáhnout poslední smyčkou.',
  joined:
    'Každé kolo uzavřít pevným očkem do jeho prvního očka a udělat jedno řetízkové očko na výšku. První očko dalšího kola přijde do téhož prvního očka. Pevná očka a řetízková očka na výšku nemají korálek a nepočítají se. Na konci nit ustřihnout na 20 cm a protáhnout poslední smyčkou.',
};
