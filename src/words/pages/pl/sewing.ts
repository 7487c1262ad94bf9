import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';

const { many } = numbersIn('pl');

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Położyć panel „${f.back}” koralikami do spodu, a na nim panel „${f.front}” koralikami na wierzchu, tak żeby góra obu obrazków była u góry, a koraliki po obu stronach na zewnątrz. Oba panele są robione tą samą ręką; gdy patrzy się od strony panelu „${f.front}”, okrążenia panelu „${f.back}” biegną w przeciwną stronę.`,
  count: (f) =>
    `Brzegi zszywa się, licząc oczka. Okrążenie ${f.round}, ostatnie, ma w każdym panelu ${many(f.stitches, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' })}. W obu panelach oznaczyć jego pierwsze oczko i od niego liczyć w kierunku pracy.`,
  meet: (f) =>
    `Oczko 1 panelu „${f.front}” łączy się z oczkiem ${f.stitches} panelu „${f.back}”, oczko 2 z oczkiem ${f.stitches - 1} i tak dalej: oba numery dają razem zawsze ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `Oczko ${f.stitch} panelu „${f.front}” łączy się z oczkiem ${f.meets} panelu „${f.back}”; od tego miejsca numery oczek panelu „${f.front}” rosną, a panelu „${f.back}” maleją.`,
  // M: uskok, the step that a spiral makes at the rim.
  spiral:
    'W spirali koniec ostatniego okrążenia leży o jeden rząd dalej na zewnątrz niż jego początek, a uskoki obu paneli wznoszą się w przeciwnych kierunkach: brzegi są od siebie oddalone najwyżej o jeden rząd, najbardziej obok uskoku. Nie szyć na oko: trzymać się liczenia i pozwolić, by szew ściągnął oba brzegi do siebie. Oczek zamykających po ostatnim okrążeniu nie liczy się.',
  joined:
    'Brzegi leżą na całym obwodzie krawędź przy krawędzi. Oczka zamykającego, które kończy ostatnie okrążenie, nie liczy się.',
  opening: (f) =>
    `Góra zostaje otwarta na bigiel: zwykle trochę mniej niż połowa brzegu, ze środkiem na godzinie 12${f.marked ? ' (powszechna praktyka, bez źródła)' : ''}. Szyć od jednego zawiasu bigla w dół przez godzinę 6 i w górę do drugiego; kończyć 5–10 mm poniżej każdego zawiasu.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'Góra zostaje otwarta na bigiel.'
      : `Góra zostaje otwarta na bigiel. Oczka ostatniego okrążenia, które w nim leżą: w panelu „${f.front}” ${runsText(f.frontInFrame)}, w panelu „${f.back}” ${runsText(f.backInFrame)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: { front: number; back: number }) =>
      `oczka ${one.front} panelu „${f.front}” i oczka ${one.back} panelu „${f.back}”`;
    const pairs = many(f.pairs, { one: 'parę', few: 'pary', many: 'par', other: 'pary' });
    // M: wdać, to ease in.
    const eased =
      f.halves === 0
        ? ''
        : f.halves === 1
          ? ' Pary między szwem a biglem nie zszywać: brzegi nie wznoszą się jednakowo, więc tylko jedno z jej oczek leży w biglu. Drugie wdać przy zawiasie.'
          : ` Par między szwem a biglem (jest ich ${f.halves}) nie zszywać: brzegi nie wznoszą się jednakowo, więc z każdej tylko jedno oczko leży w biglu. Drugie wdać przy zawiasie.`;
    return `${open} Zszyć ${pairs} oczek, od ${pair(f.first)} przez godzinę 6 aż do ${pair(f.last)}.${eased}`;
  },
  work: 'Najpierw spiąć szpilkami lub związać nitką pary z tabeli poniżej, zaczynając od godziny 6, a potem zszywać oczko do oczka, pod obiema nitkami każdego oczka, nicią z robótki albo mocną nicią nylonową lub poliestrową, mniej więcej trzy razy dłuższą niż szew.',
  care: (fixing) =>
    [
      'Uwaga: policzyć igły i szpilki przed pracą i po niej; trzymać je oraz koraliki z dala od małych dzieci.',
      ...(fixing === undefined ? [] : ['Bigiel może zawierać nikiel, na który niektórzy reagują.']),
      ...(fixing === 'glued'
        ? ['Kleić w przewietrzonym pokoju, z dala od ognia i dzieci, i przeczytać etykietę.']
        : []),
      'Często dawać odpocząć oczom i rękom. Pierwszeństwo mają przepisy obowiązujące tam, gdzie się mieszka lub sprzedaje.',
    ].join(' '),
  columns: (f) => ['na zegarze', f.front, f.back],
  row: (f) => [
    `godzina ${f.frontHour} (panel „${f.backName}”: ${f.backHour})`,
    String(f.front),
    String(f.back),
  ],
};
