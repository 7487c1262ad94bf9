import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Kde jsem?',
  findHow: 'Klepejte na korálky, které přijdou z niti jako další, nejdřív na ten nejblíž háčku.',
  findNone: 'Takto za sebou nejdou nikde. Podívejte se na ten, na který jste klepli naposled.',
  findMore: (n) => `Možných míst: ${n}. Klepněte na další korálek.`,
  found: (f) => `Další je očko ${f.stitch} v kole ${f.round}, v klínu ${f.wedge}.`,
  foundSlips: (n) => `Korálky, které se tam liší od seznamu: ${n}.`,
  goThere: 'Pokračovat odtud',
  jumped: (f) => `Sem jste přešli od očka ${f.stitch} v kole ${f.round}.`,
  checkTitle: 'Je to správně?',
  checkHow: (after) =>
    after === '0'
      ? 'Takto má vypadat vaše nit, korálek navlečený jako první je první.'
      : `Takto má vypadat vaše nit za korálky, které jste zkontrolovali: ${after}.`,
  checkRight: 'Moje vypadá stejně',
  readStrung: (after) =>
    after === '0'
      ? 'Pokud ne, naklepejte, co na ní opravdu je, nejdřív korálek navlečený jako první.'
      : `Pokud ne, naklepejte, co na ní opravdu je, od místa za korálkem ${after}.`,
  wrongTitle: 'Něco nesedí',
  readComing:
    'Klepejte na korálky tak, jak z niti opravdu přicházejí, nejdřív na ten nejblíž háčku.',
  agree: (n) => `Podle seznamu, korálků: ${n}.`,
  tooMany: 'To není tento kus niti, nebo byl čten z druhého konce.',
  notHere: 'Tyto korálky sem nepatří. Možná jste na jiném místě.',
  slip: {
    missing: (f) => `Za korálkem ${f.after}: chybí ${f.wanted} (kolo ${f.round}, očko ${f.stitch})`,
    extra: (f) =>
      `Za korálkem ${f.after}: ${f.got} navíc (kolo ${f.round}, před očkem ${f.stitch})`,
    other: (f) =>
      `Za korálkem ${f.after}: ${f.got} místo ${f.wanted} (kolo ${f.round}, očko ${f.stitch})`,
    swap: (f) =>
      `Za korálkem ${f.after}: ${f.got} ve špatném pořadí, patří ${f.wanted} (kolo ${f.round}, očko ${f.stitch})`,
  },
  ways: {
    missing:
      'Chybí: uháčkujte to očko bez korálku a korálek přišijte později tenkou jehlou a stejnou nití.',
    extra:
      'Navíc: až k němu dojdete, rozdrťte korálek plochými kleštěmi. Mějte ochranné brýle, přes korálek a kleště držte látku, seberte střepy a ohmatejte, zda není nit naříznutá.',
    other:
      'Jiná barva: až k němu dojdete, rozdrťte špatný korálek, očko uháčkujte bez korálku a správný přišijte později.',
    swap: 'Špatné pořadí: zacházejte s nimi jako se dvěma korálky jiné barvy, nebo je uháčkujte tak, jak jsou, pokud to nikdo neuvidí.',
  },
  broken: 'Rozbité sklo řeže nit i kůži a odskakuje do očí: nikdy bez ochranných brýlí.',
  takeOff: (after) => `Všechny za korálkem ${after} jsem sundala`,
  mendLater: 'Nechat, opravit u háčku',
  noteThem: 'Poznamenat k očkům',
  here: {
    sewOn: (letter) =>
      `Tady chybí ${letter}: očko uháčkujte bez korálku, korálek přišijte později.`,
    extra: (letters) => `Nejdřív sundejte z niti: ${letters}.`,
  },
  ten: 'Po deseti',
  takeBack: 'Vzít zpět',
  typeThem: 'Nebo je napište, například 3A 2B',
  addTyped: 'Přidat je',
  typedWrong: (letters) => `Jen čísla a tato písmena: ${letters}`,
  tapped: (n) => `Zadáno korálků: ${n}`,
  notes: 'Poznámky',
  noteAt: (f) => `Poznámka k očku ${f.stitch} v kole ${f.round}`,
  noteHow: 'Klepnutím na očko práce k němu připnete poznámku.',
  noteLine: (f) => `Kolo ${f.round}, očko ${f.stitch}: ${f.text}`,
  sewOnLine: (f) => `Kolo ${f.round}, očko ${f.stitch}: přišít ${f.letter}, ${f.name}.`,
  sewn: 'Přišito',
  takeAway: 'Odstranit',
  sewOnTitle: 'Korálky k přišití',
  timeTitle: 'Čas a cena',
  time: (f) => `${f.h} h ${f.min} min`,
  timeHow: 'Čas se počítá od klepnutí ke klepnutí; přestávka delší než dvě minuty ne.',
  hourly: 'Kolik stojí hodina',
  cost: {
    beads: 'Korálky',
    thread: 'Nit',
    time: 'Čas',
    sum: 'Dohromady',
    unknown: 'cena není známa',
  },
  costHow: 'Za jeden kus od každého dílu, v penězích vašich cen korálků.',
  outTitle: 'Dochází barva',
  outHow:
    'Co je navlečeno, zůstává. Od zvoleného kola přijde jiný korálek a všechny seznamy se přizpůsobí.',
  outWhich: 'Která barva',
  outFrom: 'Od kola',
  outPanels: 'Ve kterém dílu',
  outAll: 'Ve všech',
  outNeeds: (n) => `Korálků potřeba od toho kola: ${n}`,
  outInJar: (n) => `ve skleničce: ${n}`,
  outNone: 'Od toho kola se tato barva už nepoužívá.',
  outDone: (f) => `Od kola ${f.round} je ${f.to} místo ${f.from}.`,
  practice: 'Cvičný díl',
  practiceHow:
    'Čtyři kola na učení, vaším očkem a vašimi korálky: obě očka každého přidání mají vlastní barvu, stejně tak první očko každého kola. Stránky z něj udělají vlastní sešit.',
  steps: { runsOut: 'jiný korálek, kde jeden dojde' },
};
