import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many } = numbersIn('pl');

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: 'Jak zacząć?',
    steps: (f) => [
      `(1) Ułożyć z nici kółko, zostawiając koniec ${f.tailCm} cm.`,
      '(2) Wbić szydełko w kółko i chwycić nić, która prowadzi do koralików. (3) Wyciągnąć ją jako pętelkę i zrobić jedno oczko łańcuszka, którego się nie liczy.',
      `Przerobić ${many(f.wedges, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' })} okrążenia 1 wokół kółka. (4) Pociągnąć za koniec nici: kółko się zaciśnie, na środku zostanie mały otwór. Może też być kółko z 3 lub 4 oczek łańcuszka.`,
    ],
  },
  'bead-side': {
    ask: 'Po której stronie leżą koraliki?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Koraliki układają się za robótką: szydełkując, patrzy się na stronę bez koralików.'
        : 'Koraliki układają się przed robótką: szydełkując, patrzy się na koraliki.',
    ],
  },
  stitch: {
    ask: 'Jak się robi oczko?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Wbić szydełko ${f.way === 'both-loops' ? 'pod obie nitki' : 'tylko pod tylną nitkę'} następnego oczka, od przodu do tyłu.`
        : `(1) Trzymać nić przed robótką. Wbić szydełko ${f.way === 'both-loops' ? 'pod obie nitki' : 'tylko pod przednią nitkę'} następnego oczka, od tyłu do siebie.`,
      '(2) Zarzucić nić na szydełko. (3) Przeciągnąć ją przez oczko: na szydełku są dwie pętelki.',
      '(4) Przysunąć następny koralik tuż do robótki.',
      '(5) Za koralikiem zarzucić nić na szydełko. (6) Przeciągnąć ją przez obie pętelki.',
      f.beadsFace === 'away'
        ? 'Oczko jest gotowe: jego koralik leży za robótką.'
        : 'Oczko jest gotowe: jego koralik leży przed robótką.',
    ],
  },
  'slip-stitch': {
    ask: 'Jak się robi oczko?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Wbić szydełko pod nitkę, która trzyma koralik następnego oczka poniżej, od przodu do tyłu.'
          : 'Trzymać nić przed robótką. Wbić szydełko pod nitkę, która trzyma koralik następnego oczka poniżej, od tyłu do siebie.'
      } (2) Przechylić ten koralik na stronę już przerobioną.`,
      '(3) Przysunąć następny koralik tuż do robótki.',
      '(4) Za koralikiem zarzucić nić na szydełko. (5) Przeciągnąć ją naraz przez oczko i przez pętelkę na szydełku.',
    ],
  },
  increase: {
    ask: 'Co znaczą dwie litery w nawiasie kwadratowym?',
    steps: () => [
      'Dwa oczka wbija się w to samo oczko poprzedniego okrążenia: najpierw (1), potem (2), każde ze swoim koralikiem.',
    ],
  },
  'round-run': {
    ask: 'Jak biegną okrążenia?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'Spiralą: każde okrążenie przechodzi w następne. Tak to widać podczas pracy; czarna kropka to pierwsze oczko okrążenia.'
        : 'Pierścieniami: każde okrążenie zamyka się, zanim zacznie się następne. Tak to widać podczas pracy; czarna kropka to pierwsze oczko okrążenia.',
    ],
  },
  marker: {
    ask: 'Gdzie zaczyna się okrążenie?',
    steps: () => [
      '(1) Zaraz po wbiciu w oznaczone oczko przenieść znacznik wyżej, do oczka, które właśnie powstało.',
    ],
  },
  'round-end': {
    ask: 'Jak zamknąć okrążenie?',
    steps: () => [
      '(1) Wbić szydełko w pierwsze oczko okrążenia i chwycić nić. (2) Przeciągnąć ją przez to oczko i pętelkę na szydełku: to oczko zamykające, bez koralika.',
      '(3) Zrobić jedno oczko łańcuszka, żeby przejść wyżej, bez koralika. (4) Pierwsze oczko następnego okrążenia wbić w to samo pierwsze oczko.',
    ],
  },
  'new-length': {
    ask: 'Jak dołączyć następny odcinek?',
    steps: (f) => [
      `(1) W ostatnim oczku starego odcinka, gdy jego koralik jest już przy robótce, zarzucić na szydełko nową nić, zostawiając koniec ${f.tailCm} cm. (2) Przeciągnąć ją przez wszystko, co jest na szydełku.`,
      '(3) Położyć oba końce wzdłuż brzegu i obrobić je następnymi 5–10 oczkami; to, co zostanie, ukryć później.',
    ],
  },
  'last-stitches': {
    ask: 'Jak zakończyć ostatnie okrążenie?',
    steps: (f) => [
      `(1, 2, 3) Zrobić dwa lub trzy oczka zamykające w dół uskoku, bez koralików. (4) Uciąć nić, zostawiając ${f.tailCm} cm, i przeciągnąć ją przez ostatnią pętelkę.`,
    ],
  },
  seam: {
    ask: 'Które oczka się zszywa?',
    steps: (f) => [
      `Ostatnie okrążenia obu paneli i numery ich oczek; na zewnątrz: ${f.front}; wewnątrz: ${f.back}. Każda linia łączy dwa oczka, które się spotykają. Białe oczka zostają otwarte na bigiel.`,
    ],
  },
  'seam-stitch': {
    ask: 'Jak zszywać?',
    steps: () => [
      '(1) Przeprowadzić igłę pod obiema nitkami jednego oczka każdego panelu, zawsze od tej samej strony, i tak para po parze.',
    ],
  },
  frame: {
    ask: 'Od czego zacząć przy biglu?',
    steps: (f) => [
      `(1) Zacząć na środku i iść do jednego zawiasu; potem znów zacząć na środku i iść do drugiego. ${f.bare ? 'Przy biglu leżą oczka bez koralików.' : 'Przy biglu leży brzeg panelu.'}`,
    ],
  },
  'frame-edge': {
    ask: 'Jak brzeg trzyma się w biglu?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) Od wewnątrz wyjść przez brzeg i przez otwór, pomijając jeden. (2) Wrócić przez pominięty otwór: ścieg za igłą, otwór po otworze.'
        : '(1) Dać klej do rowka. (2) Wsunąć brzeg panelu z przyszytą do niego podszewką. (3) Wcisnąć obok sznurek papierowy.',
    ],
  },
  lining: {
    ask: 'Jak włożyć podszewkę?',
    steps: (f) => [
      '(1) Prawą stroną do prawej zszyć od jednego znaku zawiasu dołem do drugiego.',
      '(2) Nie wywracać: lewa strona zostaje na zewnątrz. Otwarty brzeg odwinąć na zewnątrz.',
      '(3) Włożyć do portmonetki.',
      f.fixing === 'sewn'
        ? '(4) Wewnątrz przyszyć odwinięty brzeg do brzegu panelu, pod otworami.'
        : '(4) Wewnątrz przyszyć odwinięty brzeg do brzegu panelu.',
    ],
  },
  braid: {
    ask: 'Jak zakryć szew przy biglu?',
    steps: () => [
      'Na koniec, jeśli ktoś chce: od środka położyć po połowie tasiemki na każdą stronę wzdłuż szwu przy biglu, końce podwinąć przy zawiasach o 10 mm. (1) Oba brzegi przyszyć do podszewki i panelu, prowadząc igłę pod tasiemką.',
    ],
  },
};
