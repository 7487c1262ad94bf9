import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Práce',
  intro:
    'Postavte obrazovku vedle podložky s korálky. Ukazuje vždy jednu věc a pamatuje si na korálek přesně, kde jste přestali.',
  waiting: 'Korálky se ještě vybírají …',
  changed: 'Díl byl změněn, až když jste začali. Stále pracujete na tom, se kterým jste začali.',
  which: 'Který díl',
  copies: 'Kolik kusů od každého',
  panel: 'Díl',
  sides: { front: 'Přední', back: 'Zadní' },
  panelOf: (f) => `${f.name}, ${f.n} z ${f.of}`,
  strung: (f) => `Navlečeno korálků: ${f.done} z ${f.all}`,
  worked: (f) => `Uháčkováno oček: ${f.done} z ${f.all}`,
  length: (f) => `úsek ${f.n} z ${f.of}`,
  stringRound: (f) => `Kolo ${f.r} · korálky: ${f.done} z ${f.all}`,
  then: (run) => `pak ${run}`,
  thenDone: 'to jsou poslední',
  notStrung: (n) =>
    `Podle této stránky ještě nejsou na niti korálky tohoto úseku: ${n}. Nejdřív se navlékají.`,
  strungByList: 'Všechny už jsou na niti',
  tapStrung: 'Až budou na niti, klepněte kamkoli',
  stands: (f) =>
    `Na niti: korálků ${f.beads}, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Všechny korálky (${f.beads}) jsou navlečené`
      : `Úsek ${f.n} z ${f.of} je navlečený, korálků: ${f.beads}`,
  lengthDoneHow:
    'Korálek navlečený naposled se uháčkuje jako první. Posuňte korálky po niti dál a nit nechte na klubku.',
  stringLength: (f) => `Navléknout úsek ${f.n} z ${f.of}`,
  inHand: 'Práce, jak leží v ruce, přítomné očko u háčku',
  roundOf: (f) => `Kolo ${f.r} z ${f.of}`,
  inRound: (f) => `klín ${f.wedge} · očko ${f.stitch} z ${f.of}`,
  allWorked: (n) => `všechna očka: ${n}`,
  begin: (wedges) => `Začněte kroužkem a uháčkujte do něj očka kola 1: ${wedges}.`,
  roundDone: (f) =>
    `Kolo ${f.r} je hotové: oček ${f.stitches}, korálků ${f.beads}, korálků celkem ${f.all}.`,
  moveMarker: 'Přesuňte značkovač do prvního očka dalšího kola.',
  closeRound:
    'Uzavřete kolo pevným očkem a udělejte jedno řetízkové očko na výšku; obě bez korálku.',
  joinHere: (length) => `Stůj: zde napojte úsek ${length}.`,
  bothInOne: 'obě do jednoho očka',
  bare: 'bez korálku',
  open: 'neurčeno',
  tapWorked: 'Až bude uháčkováno, klepněte',
  coming: 'Další korálky na niti',
  pace: 'Kolik najednou',
  panelDone: 'Díl je hotový',
  endSpiral:
    'Uháčkujte dvě nebo tři pevná očka bez korálku, aby se schod vyhladil, nit ustřihněte na 20 cm a protáhněte ji.',
  endJoined: 'Uzavřete kolo pevným očkem, nit ustřihněte na 20 cm a protáhněte ji.',
  voiceless: 'Toto zařízení nemá hlas pro jazyk stránky.',
  cannot: {
    stayAwake:
      'Tento prohlížeč neumí nechat obrazovku svítit: nastavte v zařízení, ať zhasíná později.',
    speak: 'Tento prohlížeč neumí číst nahlas.',
    listen: 'Tento prohlížeč neumí naslouchat: dál vede klepnutí nebo mezerník.',
  },
  heard: { next: ['dál', 'další', 'ano'], back: ['zpět', 'špatně'] },
  listens:
    'Poslouchá slova „dál“ a „zpět“. Některé prohlížeče posílají to, co slyší, svému výrobci, aby tomu porozuměly; tato stránka neposílá nic.',
  deaf: 'Prohlížeč teď nemůže poslouchat: nedostal svolení, nebo k tomu potřebuje síť.',
};
