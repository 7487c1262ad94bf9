import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('pl');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Wzór okrągłego panelu szydełkowanego z koralikami',
  kind: 'Okrągły wzór szydełkowy z koralikami',
  size: (f) =>
    `Po skończeniu około ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} cala) szerokości`,
  sizeFrom: {
    swatch: 'według próbki autora wzoru',
    model: 'wymiar szacunkowy, dopóki nie zrobi się próbki',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 panel, do zrobienia dwa razy'
        : many(f.panels, { one: 'panel', few: 'panele', many: 'paneli', other: 'panelu' }),
      many(f.rounds, {
        one: 'okrążenie',
        few: 'okrążenia',
        many: 'okrążeń',
        other: 'okrążenia',
      }),
      lists.beads(f.beads),
      many(f.colours, { one: 'kolor', few: 'kolory', many: 'kolorów', other: 'koloru' }),
    ].join('  ·  '),
  by: (author) => `autor: ${author}`,

  panelNames: { front: 'przód', back: 'tył' },
  pageOf: (f) => `${f.page} z ${f.pages}`,
  panel: (f) => `panel „${f.panel}”`,
  // M: odcinek, one strung thread of several.
  length: (f) => `odcinek ${f.length} z ${f.lengths}`,
  continued: (heading) => `${heading}, ciąg dalszy`,
  parts: {
    cover: 'Okładka',
    materials: 'Materiały i narzędzia',
    before: 'Przed rozpoczęciem',
    chart: 'Schemat',
    rounds: 'Okrążenie po okrążeniu',
    stringing: 'Lista nawlekania',
    making: 'Wykończenie',
    lining: 'Szablon podszewki',
    cautions: 'Uwaga',
    last: 'O tym wzorze',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Koraliki',
    columns: {
      bead: 'Litera',
      name: 'Nazwa',
      id: 'Kod',
      charted: (panels) => (panels === 1 ? 'Jeden panel' : 'Oba panele'),
      reserve: 'Na dwa panele, z zapasem',
      grams: 'Gramy',
    },
    total: 'Wszystkie koraliki',
    unknownGrams: '–',
    onePanel:
      'Schemat to jeden panel. Portmonetka ma dwa: liczby z zapasem są na przód i taki sam tył.',
    twoPanels: 'Portmonetka ma dwa panele i ten wzór zawiera oba.',
    thread: 'Nić',
    estimate:
      'Ile nici idzie na oczko, zależy od ręki: odmierzyć i zaznaczyć metr, przerobić go, policzyć oczka i poprawić tę liczbę przed zakupem.',
    ownFigure: 'Zużycie nici na oczko to wartość podana przez autora wzoru.',
    tools: 'Narzędzia, bigiel, podszewka',
  },

  before,

  rounds: {
    round: 'Okr.',
    work: 'Przerobić',
    stitches: 'Oczka',
    beads: 'Koraliki',
    total: 'Koraliki razem',
    how: 'Liczyć, gdy okrążenie jest gotowe: ostatnia kolumna mówi, ile koralików przerobiono do jego końca.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, część: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `razem ${lists.number(total)}`,
    totalGrams: (f) => `razem ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Gramy obok sumy podają, ile ważą koraliki nawleczone do tego miejsca: przed rozpoczęciem zważyć samą nić i odejmować jej ciężar. Waga musi pokazywać dziesiąte części grama; koraliki z jednego słoika ważą różnie, więc rozstrzyga liczenie.',
    tickOne:
      'W każdym wierszu od lewej do prawej. Odhaczyć kratkę, gdy jej wiersz jest na nici, i liczyć przy każdej sumie.',
    tick: 'Najpierw lewa kolumna w dół, potem prawa; w każdym wierszu od lewej do prawej. Odhaczyć kratkę, gdy jej wiersz jest na nici, i liczyć przy każdej sumie.',
    weight: (f) =>
      `Razem ${lists.beads(f.beads)}; po nawleczeniu ważą bez nici około ${fixed(f.grams, 1)} g i zajmują około ${fixed(f.metres, 2)} m. Na ich przerobienie idzie około ${fixed(f.threadM, 1)} m nici, razem z końcami i zapasem.`,
    noWeight: (f) =>
      `Razem ${lists.beads(f.beads)}, po nawleczeniu zajmują około ${fixed(f.metres, 2)} m. Na ich przerobienie idzie około ${fixed(f.threadM, 1)} m nici, razem z końcami i zapasem.`,
    rounds: (f) =>
      f.first === f.last ? `Na okrążenie ${f.first}.` : `Na okrążenia od ${f.first} do ${f.last}.`,
    first:
      'Pierwszy koralik tej listy idzie na nić jako pierwszy, a przerabia się go jako ostatni.',
    nothing: 'Żaden koralik nie jest jeszcze ustalony, więc nie ma czego nawlekać.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Tytuł',
    author: 'Autor',
    date: 'Data tego wydania',
    licence: 'Licencja',
    noLicence:
      'Nie podano żadnej. Zapytać autora przed przekazaniem wzoru dalej lub sprzedażą tego, co się według niego zrobi.',
    version: 'Wersja',
    versionText: (f) => `Wykonano w programie Rondure ${f.program}, format wzoru ${f.format}`,
    figures: 'Liczby',
    figuresText:
      'Liczby koralików są dokładne. Gramy, długości nici, wymiary i narzędzia to szacunki, dopóki nie zrobi się próbki; to, co podano jako zwykłe, to powszechna praktyka lub dane z pamięci, bez opublikowanego źródła.',
    read: 'Do czytania na głos',
    readText:
      'Wszystkie listy w tej broszurze to tekst, który można przeszukiwać, kopiować i dać odczytać na głos. Każdy koralik ma literę, więc nie trzeba rozróżniać kolorów.',
  },
};
