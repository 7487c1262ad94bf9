import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { form } = numbersIn('pl');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Położyć panel „${f.back}” koralikami do dołu, a na nim panel „${f.front}” koralikami do góry, oba obrazki prosto, tak żeby koraliki były po obu stronach na zewnątrz. Oba panele są robione tą samą ręką; patrząc od strony „${f.front}”, okrążenia panelu „${f.back}” biegną w przeciwną stronę.`,
  count: (f) =>
    `Brzegi zszywa się według liczenia. Okrążenie ${f.round}, ostatnie, ma w każdym panelu oczek: ${f.stitches}. W obu panelach oznaczyć jego pierwsze oczko i od niego liczyć w kierunku pracy.`,
  meet: (f) =>
    `Oczko 1 panelu „${f.front}” spotyka oczko ${f.stitches} panelu „${f.back}”, oczko 2 spotyka oczko ${f.stitches - 1} i tak dalej: oba numery dają razem zawsze ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `Oczko ${f.stitch} panelu „${f.front}” spotyka oczko ${f.meets} panelu „${f.back}”; stąd liczyć w panelu „${f.front}” do przodu, a w panelu „${f.back}” do tyłu.`,
  spiral:
    'W spirali koniec ostatniego okrążenia leży o jeden rząd dalej na zewnątrz niż jego początek, a stopnie obu paneli rosną w przeciwnych kierunkach: brzegi są oddalone najwyżej o jeden rząd, najbardziej obok stopnia. Nie szyć na oko: trzymać się liczenia i pozwolić, by szew ściągnął oba brzegi. Oczka zamykające po ostatnim okrążeniu nie są liczone.',
  joined:
    'Brzegi leżą dookoła krawędź przy krawędzi. Oczko, które zamyka ostatnie okrążenie, nie jest liczone.',
  opening:
    'Góra zostaje otwarta na bigiel: zwykle trochę mniej niż połowa brzegu, ze środkiem na godzinie 12 (powszechna praktyka, bez źródła). Szyć od jednego zawiasu bigla w dół przez godzinę 6 i w górę do drugiego; kończyć 5 do 10 mm pod każdym zawiasem.',
  openingOfFrame: (f) => {
    const open = `Góra zostaje otwarta na bigiel: leżą w nim z ostatniego okrążenia oczka ${runsText(f.frontInFrame)} panelu „${f.front}” i oczka ${runsText(f.backInFrame)} panelu „${f.back}”.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `oczka ${one.front} panelu „${f.front}” z oczkiem ${one.back} panelu „${f.back}”`;
    const pairs = `${f.pairs} ${form(f.pairs, { one: 'parę', few: 'pary', many: 'par', other: 'pary' })}`;
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' W jednej parze obok zawiasów tylko jedno z dwóch oczek leży w biglu, bo brzegi nie rosną jednakowo: dopasować ją tam.'
          : ` Obok zawiasów są pary, w których tylko jedno z dwóch oczek leży w biglu (jest ich ${f.halves}), bo brzegi nie rosną jednakowo: dopasować je tam.`;
    return `${open} Zszyć ${pairs}, od ${pair(f.first)} przez godzinę 6 aż do ${pair(f.last)}; kończyć 5 do 10 mm pod każdym zawiasem, żeby mógł się poruszać (powszechna praktyka, bez źródła).${eased}`;
  },
  work: 'Najpierw spiąć szpilkami lub związać pary z tabeli poniżej, godzinę 6 przed innymi, a potem zszywać oczko do oczka, pod obiema nitkami każdego oczka, nicią z robótki albo mocną nicią nylonową lub poliestrową, mniej więcej trzy razy dłuższą niż szew.',
  care: (fixing) =>
    [
      'Uwaga: policzyć igły i szpilki przed i po, i trzymać je oraz koraliki z dala od małych dzieci.',
      ...(fixing === undefined ? [] : ['Bigiel może zawierać nikiel, na który niektórzy reagują.']),
      ...(fixing === 'glued'
        ? ['Kleić w przewietrzonym pokoju, z dala od ognia i dzieci, i przeczytać etykietę.']
        : []),
      'Często dawać odpocząć oczom i rękom. Tam, gdzie się mieszka lub sprzedaje, pierwsze są miejscowe przepisy.',
    ].join(' '),
  columns: (f) => ['na zegarze', f.front, f.back],
  row: (f) => [
    `godzina ${f.frontHour} (${f.backHour} na „${f.backName}”)`,
    String(f.front),
    String(f.back),
  ],
};
