import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Praca',
  intro:
    'Postawić ekran obok maty z koralikami. Pokazuje zawsze jedną rzecz i pamięta co do koralika, gdzie się skończyło.',
  waiting: 'Koraliki są jeszcze dobierane …',
  changed: 'Panel zmieniono już po rozpoczęciu pracy. Nadal robi się ten, od którego się zaczęło.',
  which: 'Który',
  copies: 'Ile sztuk każdego',
  panel: 'Panel',
  sides: { front: 'Przód', back: 'Tył' },
  panelOf: (f) => `${f.name}, ${f.n} z ${f.of}`,
  strung: (f) => `Nawleczone koraliki: ${f.done} z ${f.all}`,
  worked: (f) => `Przerobione oczka: ${f.done} z ${f.all}`,
  length: (f) => `odcinek ${f.n} z ${f.of}`,
  stringRound: (f) => `Okrążenie ${f.r} · koraliki: ${f.done} z ${f.all}`,
  then: (run) => `potem ${run}`,
  thenDone: 'to już ostatnie',
  notStrung: (n) =>
    `Według tej strony na nić tego odcinka trzeba jeszcze nawlec: ${n}. Najpierw się nawleka.`,
  strungByList: 'Wszystkie są już na nici',
  tapStrung: 'Gdy są na nici, dotknąć w dowolnym miejscu',
  stands: (f) =>
    `Na nici: koralików ${f.beads}, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Wszystkie koraliki są nawleczone: ${f.beads}`
      : `Odcinek ${f.n} z ${f.of} jest nawleczony, koralików: ${f.beads}`,
  lengthDoneHow:
    'Koralik nawleczony jako ostatni przerabia się pierwszy. Przesunąć koraliki dalej po nici, a nić zostawić na kłębku.',
  stringLength: (f) => `Nawlec odcinek ${f.n} z ${f.of}`,
  inHand: 'Robótka tak, jak leży w ręce, bieżące oczko przy szydełku',
  roundOf: (f) => `Okrążenie ${f.r} z ${f.of}`,
  inRound: (f) => `klin ${f.wedge} · oczko ${f.stitch} z ${f.of}`,
  allWorked: (n) => `wszystkie oczka: ${n}`,
  begin: (wedges) => `Zacząć od kółka i przerobić w nie oczka okrążenia 1: ${wedges}.`,
  roundDone: (f) =>
    `Okrążenie ${f.r} gotowe: oczek ${f.stitches}, koralików ${f.beads}, koralików razem ${f.all}.`,
  moveMarker: 'Przenieść znacznik do pierwszego oczka następnego okrążenia.',
  closeRound:
    'Zamknąć okrążenie oczkiem zamykającym i zrobić jedno oczko łańcuszka; oba bez koralika.',
  joinHere: (length) => `Stop: tu dołączyć odcinek ${length}.`,
  bothInOne: 'oba wbite w jedno oczko',
  bare: 'bez koralika',
  open: 'nieustalone',
  tapWorked: 'Dotknąć, gdy przerobione',
  coming: 'Następne koraliki na nici',
  pace: 'Ile naraz',
  panelDone: 'Panel jest gotowy',
  endSpiral:
    'Przerobić dwa lub trzy oczka zamykające bez koralika, żeby wygładzić uskok, uciąć nić, zostawiając 20 cm, i przeciągnąć ją.',
  endJoined:
    'Zamknąć okrążenie oczkiem zamykającym, uciąć nić, zostawiając 20 cm, i przeciągnąć ją.',
  voiceless: 'To urządzenie nie ma głosu dla języka strony.',
  cannot: {
    stayAwake:
      'Ta przeglądarka nie umie utrzymać włączonego ekranu: wydłuż czas do wygaszenia w ustawieniach urządzenia.',
    speak: 'Ta przeglądarka nie umie czytać na głos.',
    listen: 'Ta przeglądarka nie umie słuchać: dalej prowadzi dotknięcie lub spacja.',
  },
  heard: { next: ['dalej', 'następny', 'tak'], back: ['wstecz', 'źle'] },
  listens:
    'Nasłuchuje słów „dalej” i „wstecz”. Niektóre przeglądarki wysyłają to, co słyszą, do swojego producenta, żeby to zrozumieć; ta strona nie wysyła niczego.',
  deaf: 'Przeglądarka nie może teraz słuchać: nie dostała zgody albo potrzebuje do tego sieci.',
};
