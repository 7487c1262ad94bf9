import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { form, many } = numbersIn('cs');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Položte díl „${f.back}“ korálky dolů a na něj díl „${f.front}“ korálky nahoru, oba obrázky vzpřímeně, aby byly korálky na obou stranách vně. Oba díly se háčkují stejnou rukou; při pohledu ze strany dílu „${f.front}“ běží kola dílu „${f.back}“ opačně.`,
  count: (f) =>
    `Okraje se sešívají podle počítání. Kolo ${f.round}, poslední, má v každém dílu ${f.stitches} ${form(f.stitches, { one: 'očko', few: 'očka', other: 'oček' })}. V obou dílech označte jeho první očko a odtud počítejte ve směru práce.`,
  meet: (f) =>
    `Očko 1 dílu „${f.front}“ se setká s očkem ${f.stitches} dílu „${f.back}“, očko 2 s očkem ${f.stitches - 1} a tak dál: obě čísla dají vždy dohromady ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `Očko ${f.stitch} dílu „${f.front}“ se setká s očkem ${f.meets} dílu „${f.back}“; odtud počítejte v dílu „${f.front}“ dopředu a v dílu „${f.back}“ dozadu.`,
  spiral:
    'Ve spirále leží konec posledního kola o jednu řadu oček dál od středu než jeho začátek a schody obou dílů stoupají opačnými směry: okraje jsou vůči sobě posunuté až o jednu řadu oček, nejvíc vedle schodu. Nešijte odhadem: držte se počítání a nechte šev stáhnout oba okraje k sobě. Pevná očka po posledním kole se nepočítají.',
  joined:
    'Okraje leží po celém obvodu hrana na hraně. Pevné očko, které uzavírá poslední kolo, se nepočítá.',
  opening: (f) =>
    `Nahoře zůstane otevřeno pro rámeček: obvykle o něco méně než polovina okraje, středem na 12. hodině${f.marked ? ' (běžná praxe, bez zdroje)' : ''}. Šijte od jednoho kloubu rámečku dolů přes 6. hodinu a nahoru k druhému; skončete 5 až 10 mm pod každým kloubem.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'Nahoře zůstane otevřeno pro rámeček.'
      : `Nahoře zůstane otevřeno pro rámeček: leží v něm z posledního kola dílu „${f.front}“ očka ${runsText(f.frontInFrame)} a dílu „${f.back}“ očka ${runsText(f.backInFrame)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `(očko ${one.front} dílu „${f.front}“ a očko ${one.back} dílu „${f.back}“)`;
    const pairs = many(f.pairs, { one: 'dvojici', few: 'dvojice', other: 'dvojic' });
    // M: nadržet, to ease in.
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' Dvojici mezi švem a rámečkem nesešívejte: protože oba okraje nestoupají stejně, leží z ní v rámečku jen jedno očko. Druhé u kloubu při přišívání nadržte.'
          : ` Dvojice mezi švem a rámečkem (počet: ${f.halves}) nesešívejte: protože oba okraje nestoupají stejně, leží z každé v rámečku jen jedno očko. Druhé u kloubu při přišívání nadržte.`;
    return `${open} Sešijte ${pairs}, od dvojice ${pair(f.first)} přes 6. hodinu až k dvojici ${pair(f.last)}.${eased}`;
  },
  work: 'Nejdřív sešpendlete nebo svažte dvojice z tabulky níže, 6. hodinu před ostatními, a potom sešívejte očko k očku, pod oběma nitkami každého očka, nití z práce nebo pevnou nylonovou či polyesterovou nití, asi třikrát delší než šev.',
  care: (fixing) =>
    [
      'Pozor: jehly a špendlíky spočítejte před prací i po ní a držte je i korálky dál od malých dětí.',
      ...(fixing === undefined
        ? []
        : ['Rámeček může obsahovat nikl, na který někteří lidé reagují.']),
      ...(fixing === 'glued'
        ? ['Lepte ve větrané místnosti, dál od ohně a dětí, a přečtěte si štítek.']
        : []),
      'Často dopřejte odpočinek očím i rukám. Přednost mají místní předpisy tam, kde bydlíte nebo prodáváte.',
    ].join(' '),
  columns: (f) => ['na hodinách', f.front, f.back],
  row: (f) => [
    `${f.frontHour}. hodina („${f.backName}“: ${f.backHour}.)`,
    String(f.front),
    String(f.back),
  ],
};
