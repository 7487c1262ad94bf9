import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Štětec',
  inHand: 'Na štětci',
  take: 'Vzít',
  none: 'Žádný korálek',
  others: (n) => `Další mé korálky: ${n}`,
  lays: 'Klade',
  also: 'Umí také',
  how: {
    bead: 'Kreslete po díle: každé dotčené očko dostane korálek.',
    line: 'Táhněte od očka k očku: rovná čára z korálků.',
    ring: 'Ťukněte na očko: celé jeho kolo dostane korálek. Tahem přes kola jich bude víc.',
    wedge: 'Ťukněte na očko: celý jeho klín dostane korálek.',
    patch: 'Ťukněte na plochu jedné barvy: celá dostane korálek.',
    away: 'Přejeďte korálky položené rukou: ta očka budou zase, jak je dal obrázek.',
    replace: 'Ťukněte na korálek: kdekoli leží, položí se místo něj ten na štětci.',
    move: 'Obkreslete část smyčkou, nebo ťukněte na plochu; pak ji přetáhněte na nové místo.',
    pick: 'Ťuknutím na korálek díla ho vezmete. Hromádka na podložce udělá totéž.',
  },
  laid: 'Položeno rukou',
  laidNone: 'Zatím nic.',
  laidCount: (n) => `Očka: ${n}.`,
  laidWait: ({ n, wedges }) => `Čekají na klíny, na kterých byly položeny (${wedges}): ${n}.`,
  laidOutside: (n) => `Za okrajem, čekají na více kol: ${n}.`,
  laidHow:
    'Zůstanou, kde jsou, když obrázek položíte jinak nebo zvolíte jiné korálky. S jinými klíny nebo mimo méně kol pro ně není místo: počkají a krok zpět je vrátí.',
  noLetter: 'Barev je už 24 a pro další nezbývá písmeno. Nejdřív spojte dvě hromádky.',
  heapHint: 'korálky; vzít je',
  keysHow:
    'Klávesnicí: šipky jdou podél kola a z kola na kolo, mezerník použije štětec, čárka a tečka mění korálek. Se Shiftem ho šipky použijí cestou.',
  place: ({ round, stitch, wedge, bead }) =>
    `Kolo ${round}, očko ${stitch}, klín ${wedge}: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Kolo ${round}, očko ${stitch}, klín ${wedge}: ${bead}, rukou`,
  steps: {
    bead: 'kladení korálků',
    line: 'čára',
    ring: 'kruh',
    wedge: 'klín',
    patch: 'vyplnění plochy',
    away: 'sejmutí korálků',
    move: 'posunutí části',
    replace: 'korálek místo jiného',
    all: 'sejmutí všeho položeného rukou',
  },
};
