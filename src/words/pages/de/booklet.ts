import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('de');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Anleitung für ein rundes Teil in Perlenhäkelei',
  kind: 'Anleitung: Perlenhäkeln in Runden',
  size: (f) => `Fertig etwa ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} Zoll) breit`,
  sizeFrom: {
    swatch: 'nach der Probe des Urhebers',
    model: 'eine Schätzung, bis eine Probe gehäkelt ist',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 Teil, zweimal zu häkeln'
        : many(f.panels, { one: 'Teil', other: 'Teile' }),
      many(f.rounds, { one: 'Runde', other: 'Runden' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'Farbe', other: 'Farben' }),
    ].join('  ·  '),
  by: (author) => `von ${author}`,

  panelNames: { front: 'Vorderteil', back: 'Rückteil' },
  pageOf: (f) => `${f.page} von ${f.pages}`,
  panel: (f) => f.panel,
  // M: Abschnitt, one strung thread of several.
  length: (f) => `Abschnitt ${f.length} von ${f.lengths}`,
  continued: (heading) => `${heading}, Fortsetzung`,
  parts: {
    cover: 'Titelseite',
    materials: 'Material und Werkzeug',
    before: 'Vor dem Beginn',
    chart: 'Zählplan',
    rounds: 'Runde für Runde',
    stringing: 'Auffädelliste',
    making: 'Fertigstellen',
    lining: 'Schnittvorlage Futter',
    cautions: 'Vorsicht',
    last: 'Über diese Anleitung',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Perlen',
    columns: {
      bead: 'Perle',
      name: 'Name',
      id: 'Code',
      charted: (panels) => (panels === 1 ? 'Im Zählplan' : 'In beiden Plänen'),
      reserve: 'Für eine Börse, mit Reserve',
      grams: 'Gramm nötig',
    },
    total: 'Alle Perlen',
    unknownGrams: '–',
    onePanel:
      'Der Zählplan zeigt ein Teil. Eine Börse hat zwei: Die Zahlen mit Reserve gelten für ein Vorderteil und ein gleiches Rückteil.',
    twoPanels: 'Eine Börse hat zwei Teile, und diese Anleitung enthält beide.',
    thread: 'Garn',
    estimate:
      'Der Garnverbrauch je Masche ist von Hand zu Hand verschieden: einen Meter Garn markieren, verhäkeln, die Maschen zählen und diesen Wert vor dem Kauf berichtigen.',
    ownFigure: 'Der Garnverbrauch je Masche ist der eigene Wert des Urhebers.',
    tools: 'Werkzeug, Bügel, Futter',
  },

  before,

  rounds: {
    round: 'Runde',
    work: 'Häkeln',
    stitches: 'Maschen',
    beads: 'Perlen',
    total: 'Perlen gesamt',
    how: 'Zählen, wenn eine Runde fertig ist: Die letzte Spalte sagt, wie viele Perlen bis zu ihrem Ende verhäkelt sind.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, teilweise: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `gesamt ${lists.number(total)}`,
    totalGrams: (f) => `gesamt ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Die Grammzahl neben einer Summe ist das Gewicht der bis dahin aufgefädelten Perlen: den Faden vor dem Beginn wiegen und sein Gewicht abziehen. Die Waage muss Zehntelgramm anzeigen; Perlen aus einem Glas sind verschieden schwer, darum entscheidet das Zählen.',
    tickOne:
      'Jede Zeile von links lesen. Ein Kästchen abhaken, wenn seine Zeile auf dem Faden ist, und bei jeder Summe zählen.',
    tick: 'Zuerst die linke Spalte hinunter, dann die rechte; jede Zeile von links lesen. Ein Kästchen abhaken, wenn seine Zeile auf dem Faden ist, und bei jeder Summe zählen.',
    weight: (f) =>
      `Zusammen ${lists.beads(f.beads)}; aufgefädelt wiegen sie ohne den Faden etwa ${fixed(f.grams, 1)} g und sind etwa ${fixed(f.metres, 2)} m lang. Zum Verhäkeln braucht man etwa ${fixed(f.threadM, 1)} m Garn, Fadenenden und Reserve eingerechnet.`,
    noWeight: (f) =>
      `Zusammen ${lists.beads(f.beads)}, aufgefädelt etwa ${fixed(f.metres, 2)} m. Zum Verhäkeln braucht man etwa ${fixed(f.threadM, 1)} m Garn, Fadenenden und Reserve eingerechnet.`,
    rounds: (f) =>
      f.first === f.last
        ? `Für die ${f.first}. Runde.`
        : `Für die Runden ${f.first} bis ${f.last}.`,
    first: 'Die erste Perle dieser Liste kommt zuerst auf den Faden und wird als letzte verhäkelt.',
    nothing: 'Noch ist keine Perle festgelegt, also gibt es nichts aufzufädeln.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Titel',
    author: 'Urheber',
    date: 'Datum dieser Ausgabe',
    licence: 'Lizenz',
    noLicence:
      'Es ist keine angegeben. Beim Urheber nachfragen, bevor man die Anleitung weitergibt oder Gehäkeltes verkauft.',
    version: 'Version',
    versionText: (f) => `Erstellt mit Rondure ${f.program}, Format der Anleitung ${f.format}`,
    figures: 'Die Zahlen',
    figuresText:
      'Die Perlenzahlen sind genau. Gewichte, Fadenlängen, Größen und Werkzeug sind Schätzungen, bis eine Probe gehäkelt ist; was als üblich gilt, ist übliche Praxis oder aus dem Gedächtnis, ohne veröffentlichte Quelle.',
    read: 'Zum Vorlesen',
    readText:
      'Alle Listen in diesem Heft sind Text, den man durchsuchen, kopieren und vorlesen lassen kann. Jede Perle hat einen Buchstaben, sodass man keine Farben unterscheiden muss.',
  },
};
