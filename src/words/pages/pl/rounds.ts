import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { form, short } = numbersIn('pl');
const clockwise = (is: boolean): string =>
  is ? 'zgodnie z ruchem wskazówek zegara' : 'przeciwnie do ruchu wskazówek zegara';

/** How to work a panel, and what a line of its list of rounds means. */
export const rounds: PageWords['rounds'] = {
  begin: (wedges) =>
    `Początek: zrobić magiczne kółko albo 3 lub 4 oczka łańcuszka zamknięte w kółko i przerobić w nie ${wedges} ${form(wedges, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' })} okrążenia 1, z koralikiem w każdym, które ma literę. Magiczne kółko zaciągnąć; na środku zostaje mały otwór. Zostawić koniec nici 15 do 20 cm do wszycia.`,
  stitch: (f) =>
    [
      // M: two names are in print for the same stitch.
      'Oczko: półsłupek, w niektórych książkach zwany oczkiem ścisłym, z koralikiem w każdym.',
      f.beadsFace === 'away'
        ? 'Wbić szydełko i wyciągnąć pętelkę. Przysunąć koralik tuż do robótki, zarzucić nić i przeciągnąć ją przez obie pętelki: koralik układa się na stronie odwróconej od szydełkującej osoby.'
        : 'Przenieść koralik na swoją stronę, z szydełkiem nad nicią: układa się na stronie zwróconej do szydełkującej osoby.',
      f.lean === 0.5
        ? `Wbijać pod obie nitki oczka; każde oczko leży wtedy zwykle mniej więcej pół oczka za tym poniżej (przesunięcie ${short(0.5, 2)}).`
        : `Ten wzór liczy na przesunięcie ${short(f.lean, 3)} oczka: o tyle każde oczko leży za tym poniżej.`,
      f.measured
        ? 'Tak zmierzono je na próbce: pracować tym samym szydełkiem, tą samą nicią i tymi samymi koralikami.'
        : 'Ręce są różne: przed rozpoczęciem zmierzyć przesunięcie na próbce.',
      'Nigdy nie odwracać robótki.',
    ].join(' '),
  direction: (f) =>
    [
      `Ta lista jest dla ${f.hand === 'right' ? 'prawej' : 'lewej'} ręki, z koralikami na stronie ${f.beadsFace === 'away' ? 'odwróconej od' : 'zwróconej do'} szydełkującej osoby.`,
      `Na stronie z koralikami, którą pokazuje schemat i która jest zewnętrzną stroną portmonetki, praca biegnie ${clockwise(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Podczas szydełkowania widać drugą stronę; tam biegnie ${clockwise(!f.clockwise)}.`
        : 'Podczas szydełkowania widać tę samą stronę.',
      'Wykonany drugą ręką panel wychodzi jako lustrzane odbicie.',
    ].join(' '),
  marker:
    'Znacznik: zawiesić znacznik w pierwszym oczku okrążenia i przenosić go wyżej na początku każdego okrążenia.',
  increases: (example) =>
    `Dodawanie: dwie litery w nawiasie kwadratowym, ${example}, to dwa oczka przerobione w jedno i to samo oczko okrążenia poniżej, w kolejności, w jakiej są zapisane. Od okrążenia 2 taka para jest w każdym klinie każdego okrążenia.`,
  reading:
    'Czytanie: 3A to trzy oczka z koralikiem A. Część w nawiasie okrągłym, za którą stoi x 3, przerabia się 3 razy. Z przodu stoją oczka i koraliki okrążenia oraz suma koralików przerobionych do jego końca: liczyć, gdy okrążenie jest gotowe.',
  bare: '2 puste to dwa oczka bez koralika.',
  spiral:
    'Okrążenia biegną dalej jako spirala i nie są zamykane. Po ostatnim oczku ostatniego okrążenia przerobić dwa lub trzy oczka ścisłe zamykające, żeby wygładzić stopień; nie mają koralika i nie są liczone. Uciąć nić na 20 cm i przeciągnąć przez ostatnią pętelkę.',
  joined:
    'Każde okrążenie zamknąć oczkiem ścisłym zamykającym w jego pierwsze oczko i zrobić jedno oczko łańcuszka, żeby przejść wyżej. Pierwsze oczko następnego okrążenia przerabia się w to samo pierwsze oczko. Oczka zamykające i oczka łańcuszka do przejścia nie mają koralika i nie są liczone. Na końcu uciąć nić na 20 cm i przeciągnąć przez ostatnią pętelkę.',
};
