import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'Półka',
  intro: 'Prace są przechowywane na tym urządzeniu, w tej przeglądarce, po każdym kroku.',
  empty: 'Nic tu jeszcze nie leży. Praca trafia na półkę z pierwszym obrazem.',
  onTable: 'na stole',
  removed: 'Zdjęte z półki',
  removedHow: 'Można je odłożyć z powrotem, dopóki nie zostaną uprzątnięte.',
  open: (title) => `Połóż ${title} na stole`,
  take: (title) => `Zdejmij ${title} z półki`,
  back: (title) => `Odłóż ${title} na półkę`,
  takeShort: 'Zdejmij',
  backShort: 'Odłóż',
  takenOff: (title) => `${title}: zdjęto z półki.`,
  putBack: (title) => `${title}: znów na półce.`,
  waits: (title) => `${title}: leży na półce.`,
  copyOf: (title) => `${title}, druga praca`,
  copied:
    'Drugie okno zachowuje swoją pracę. To, co robi się tutaj, idzie dalej jako osobna praca.',
  when: (date) => `ostatnio ${date}`,
  elsewhere: 'Ta praca jest otwarta w innym oknie.',
  refused:
    'Ta przeglądarka niczego nie przechowuje, może dlatego, że okno jest prywatne. Przed zamknięciem zapisać pracę jako plik.',
  full: 'Na tym urządzeniu nie ma już miejsca. Ostatnie kroki są na stole, ale nie zostały zachowane: zapisać teraz pracę jako plik.',
  edition: 'Jest nowe wydanie tej strony. Praca zostaje.',
  fileDamaged: (file) =>
    `${file}: tej pracy nie da się otworzyć, część jej brakuje lub jest uszkodzona.`,
  fileNewer: (file) =>
    `${file}: ta praca pochodzi z nowszego wydania tej strony. Otworzyć stronę na nowo albo poprosić o starszy plik.`,
  forClass: 'Dla grupy',
  classHow:
    'Schemat i praca każdej zaznaczonej robótki w jednym PDF: dla każdego imienia, zawsze od nowej kartki; bez imion raz.',
  classNames: 'Imiona, po jednym w wierszu',
  classSave: 'Zapisz jako jeden PDF',
};
