import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { form } = numbersIn('cs');

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Jak začít?',
    steps: (f) => [
      `(1) Položte nit do kroužku, konec nitě nechte ${f.tailCm} cm.`,
      '(2) Zapíchněte háček do kroužku a naberte nit, která vede ke korálkům. (3) Vytáhněte ji jako smyčku a udělejte jedno řetízkové očko, které se nepočítá.',
      `Uháčkujte ${f.wedges} ${form(f.wedges, { one: 'očko', few: 'očka', other: 'oček' })} kola 1 kolem kroužku. (4) Zatáhněte za konec nitě: kroužek se stáhne a uprostřed zůstane malý otvor. Stačí i kroužek ze 3 nebo 4 řetízkových oček.`,
    ],
  },
  'bead-side': {
    ask: 'Na které straně leží korálky?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Korálky se kladou na odvrácenou stranu práce: díváte se na stranu bez korálků.'
        : 'Korálky se kladou na vaši stranu práce: díváte se na korálky.',
    ],
  },
  stitch: {
    ask: 'Jak se háčkuje očko?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Zapíchněte háček ${f.way === 'both-loops' ? 'pod obě nitky' : 'jen pod zadní nitku'} dalšího očka, zepředu dozadu.`
        : `(1) Nit držte na své straně. Zapíchněte háček ${f.way === 'both-loops' ? 'pod obě nitky' : 'jen pod přední nitku'} dalšího očka, zezadu k sobě.`,
      '(2) Naberte nit na háček. (3) Protáhněte ji očkem: na háčku jsou dvě smyčky.',
      '(4) Přisuňte další korálek těsně k práci.',
      '(5) Za korálkem naberte nit na háček. (6) Protáhněte ji oběma smyčkami.',
      f.beadsFace === 'away'
        ? 'Očko je hotové: jeho korálek sedí na odvrácené straně.'
        : 'Očko je hotové: jeho korálek sedí na vaší straně.',
    ],
  },
  'slip-stitch': {
    ask: 'Jak se háčkuje očko?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Zapíchněte háček pod nitku, která drží korálek dalšího očka pod ním, zepředu dozadu.'
          : 'Nit držte na své straně. Zapíchněte háček pod nitku, která drží korálek dalšího očka pod ním, zezadu k sobě.'
      } (2) Tento korálek překlopte na stranu, která je už uháčkovaná.`,
      '(3) Přisuňte další korálek těsně k práci.',
      '(4) Za korálkem naberte nit na háček. (5) Protáhněte ji najednou očkem i smyčkou na háčku.',
    ],
  },
  increase: {
    ask: 'Co znamenají dvě písmena v hranatých závorkách?',
    steps: () => [
      'Dvě očka se háčkují do jednoho a téhož očka předchozího kola: nejdřív (1), potom (2), každé se svým korálkem.',
    ],
  },
  'round-run': {
    ask: 'Jak kola běží?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'Jako spirála: každé kolo přechází do dalšího. Tak je to vidět při práci; černá tečka je první očko kola.'
        : 'Jako kruhy: každé kolo se uzavře, než začne další. Tak je to vidět při práci; černá tečka je první očko kola.',
    ],
  },
  marker: {
    ask: 'Kde kolo začíná?',
    steps: () => [
      '(1) Jakmile uháčkujete do označeného očka, posuňte značkovač výš, do očka, které jste právě udělali.',
    ],
  },
  'round-end': {
    ask: 'Jak se kolo uzavře?',
    steps: () => [
      '(1) Zapíchněte háček do prvního očka kola a naberte nit. (2) Protáhněte ji očkem i smyčkou na háčku: to je pevné očko, bez korálku.',
      '(3) Udělejte jedno řetízkové očko na výšku, bez korálku. (4) První očko dalšího kola uháčkujte do téhož prvního očka.',
    ],
  },
  'new-length': {
    ask: 'Jak napojit další úsek?',
    steps: (f) => [
      `(1) V posledním očku starého úseku, když je jeho korálek u práce, naberte na háček novou nit s koncem ${f.tailCm} cm. (2) Protáhněte ji vším, co je na háčku.`,
      '(3) Oba konce nití položte podél okraje a dalších 5 až 10 oček háčkujte přes ně; zbytek později zapošijte.',
    ],
  },
  'last-stitches': {
    ask: 'Jak ukončit poslední kolo?',
    steps: (f) => [
      `(1, 2, 3) Uháčkujte dvě nebo tři pevná očka dolů po schodu, bez korálků. (4) Nit ustřihněte na ${f.tailCm} cm a protáhněte ji poslední smyčkou.`,
    ],
  },
  seam: {
    ask: 'Která očka se sešívají?',
    steps: (f) => [
      `Poslední kola obou dílů a čísla jejich oček; vně: ${f.front}; uvnitř: ${f.back}. Každá čára spojuje dvě očka, která se setkávají. Bílá očka zůstávají otevřená pro rámeček.`,
    ],
  },
  'seam-stitch': {
    ask: 'Jak se šev šije?',
    steps: () => [
      '(1) Jehlu veďte pod oběma nitkami jednoho očka každého dílu, vždy ze stejné strany, a pokračujte dvojici po dvojici.',
    ],
  },
  frame: {
    ask: 'Kde u rámečku začít?',
    steps: (f) => [
      `(1) Začněte uprostřed a jděte k jednomu kloubu; potom začněte znovu uprostřed a jděte k druhému. ${f.bare ? 'U rámečku leží očka bez korálků.' : 'U rámečku leží okraj dílu.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Jak okraj v rámečku drží?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) Zevnitř vyjděte okrajem a otvorem ob jeden. (2) Vraťte se vynechaným otvorem: zadní steh, otvor po otvoru.'
        : '(1) Dejte lepidlo do drážky. (2) Zasuňte okraj dílu s přišitou podšívkou. (3) Vedle zatlačte papírovou šňůrku.',
    ],
  },
  lining: {
    ask: 'Jak přijde podšívka dovnitř?',
    steps: (f) => [
      '(1) Lícem k líci sešijte od jedné značky kloubu kolem spodku ke druhé.',
      '(2) Neobracejte: rub zůstane venku. Otevřený okraj přehněte ven.',
      '(3) Vložte ji do peněženky.',
      f.fixing === 'sewn'
        ? '(4) Uvnitř přišijte přehnutý okraj k okraji dílu, pod otvory.'
        : '(4) Uvnitř přišijte přehnutý okraj k okraji dílu.',
    ],
  },
  braid: {
    ask: 'Jak zakrýt šev rámečku?',
    steps: () => [
      'Nakonec, chcete-li: uvnitř položte na každou stranu polovinu prýmku podél švu rámečku, konce u kloubů zahněte o 10 mm. (1) Oba okraje přišijte k podšívce a k dílu, jehla prochází pod prýmkem.',
    ],
  },
};
