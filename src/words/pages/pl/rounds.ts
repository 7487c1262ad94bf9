import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';

const { many, short } = numbersIn('pl');
const clockwise = (is: boolean): string =>
  is ? 'zgodnie z ruchem wskazówek zegara' : 'przeciwnie do ruchu wskazówek zegara';
// M: za robótką / przed robótką, of the face that the beads lie on, as the worker sees it.
const away = 'za robótką, po stronie odwróconej od osoby szydełkującej';
const toward = 'przed robótką, po stronie zwróconej do osoby szydełkującej';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Początek: zrobić magiczne kółko albo 3 lub 4 oczka łańcuszka zamknięte w kółko oczkiem zamykającym; potem jedno oczko łańcuszka. Oczka łańcuszka i oczko zamykające nie mają koralików i się ich nie liczy (powszechna praktyka, bez źródła). Przerobić w kółko ${many(f.wedges, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' })} okrążenia 1, każde z własnym koralikiem. Magiczne kółko zaciągnąć; na środku zostaje mały otwór. Zostawić ${f.tailCm} cm końca nici do ukrycia w robótce.`,
  stitch: (f) =>
    [
      // M: two names are in print for the same stitch.
      f.way === 'slip'
        ? 'Oczko to tutaj oczko zamykające, w terminach USA slip stitch. W każdym jest koralik.'
        : 'Oczko to tutaj półsłupek (psł.), w terminach USA single crochet. W każdym jest koralik.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Każde oczko pozostaje wtedy zwykle mniej więcej pół oczka w tyle za oczkiem poniżej (przesunięcie ${short(0.5, 2)}). Górne nitki oczka nie leżą nad jego środkiem, więc linie oczek od środka do brzegu biegną ukośnie; schemat to uwzględnia.`
        : `Ten wzór zakłada przesunięcie ${short(f.lean, 3)} oczka: o tyle każde oczko pozostaje w tyle za oczkiem poniżej.`,
      f.measured
        ? 'Tyle zmierzono na próbce: pracować tym samym szydełkiem, tą samą nicią i tymi samymi koralikami.'
        : 'Każdy szydełkuje inaczej: przed rozpoczęciem zmierzyć przesunięcie na próbce.',
      'Nigdy nie odwracać robótki.',
    ].join(' '),
  direction: (f) =>
    [
      `Lista okrążeń jest dla ${f.hand === 'right' ? 'prawej' : 'lewej'} ręki, z koralikami ${f.beadsFace === 'away' ? away : toward}.`,
      `Na stronie z koralikami, którą pokazuje schemat i która jest zewnętrzną stroną portmonetki, okrążenia biegną ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Podczas szydełkowania widać drugą stronę; tam biegną ${clockwise(!f.clockwise)}.`
        : 'Podczas szydełkowania widać tę samą stronę.',
      'Panel robiony drugą ręką wychodzi jako lustrzane odbicie.',
    ].join(' '),
  marker:
    'Znacznik: zawiesić znacznik w pierwszym oczku okrążenia i przenosić go wyżej na początku każdego okrążenia.',
  // "Wbite w", not "przerobione w": the latter could be heard as two made into one.
  increases: (example) =>
    `Dodawanie: dwie litery w nawiasie kwadratowym, ${example}, to dwa oczka wbite w to samo oczko poprzedniego okrążenia, w kolejności, w jakiej są zapisane; oczek przybywa. Od okrążenia 2 jedna taka para jest w każdym klinie każdego okrążenia.`,
  reading:
    'Czytanie: 3A to trzy oczka z koralikiem A. Część w nawiasie okrągłym, za którą stoi x 3, przerabia się 3 razy. Przy każdym okrążeniu podano liczbę jego oczek i koralików oraz sumę koralików przerobionych do jego końca: liczyć, gdy okrążenie jest gotowe.',
  bare: '2 puste to dwa oczka bez koralika.',
  spiral: 'Okrążenia biegną spiralą i nie są zamykane.',
  joined:
    'Każde okrążenie zamknąć oczkiem zamykającym wbitym w jego pierwsze oczko i zrobić jedno oczko łańcuszka, żeby przejść wyżej. Pierwsze oczko następnego okrążenia wbija się w to samo pierwsze oczko. Oczka zamykające i oczka łańcuszka do przejścia nie mają koralików i się ich nie liczy.',
  end: {
    spiral: (f) =>
      `Po ostatnim oczku ostatniego okrążenia przerobić dwa lub trzy oczka zamykające, żeby wygładzić uskok; nie mają one koralików i się ich nie liczy. Uciąć nić, zostawiając ${f.tailCm} cm, i przeciągnąć ją przez ostatnią pętelkę.`,
    joined: (f) =>
      `Na końcu uciąć nić, zostawiając ${f.tailCm} cm, i przeciągnąć ją przez ostatnią pętelkę.`,
  },
};
