import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';

const { fixed, many } = numbersIn('de');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Anleitung für ein rundes Teil in Perlenhäkelei',
  kind: 'Anleitung: rundes Perlenhäkeln',
  size: (f) => `Fertig etwa ${fixed(f.acrossMm, 0)} mm (${fixed(f.acrossMm / 25.4, 1)} Zoll) breit`,
  sizeFrom: {
    swatch: 'nach der Häkelprobe',
    model: 'eine Schätzung, bis eine Probe gehäkelt ist',
  },
  amounts: (f) =>
    [
      many(f.panels, { one: 'Teil', other: 'Teile' }),
      many(f.rounds, { one: 'Runde', other: 'Runden' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'Farbe', other: 'Farben' }),
    ].join('  ·  '),
  by: (author) => `von ${author}`,

  panelNames: { front: 'Vorderteil', back: 'Rückteil' },
  pageOf: (f) => `${f.page} von ${f.pages}`,
  panel: (f) => `Teil „${f.panel}“`,
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
      id: 'Nummer',
      charted: (panels) => (panels === 1 ? 'Im Plan' : 'In beiden Plänen'),
      reserve: 'Für eine Börse, mit Reserve',
      grams: 'Gramm nötig',
    },
    total: 'Alle Perlen',
    unknownGrams: '–',
    onePanel:
      'Der Zählplan ist ein Teil. Eine Börse hat zwei: Die Zahlen mit Reserve sind für ein Vorderteil und ein gleiches Rückteil.',
    twoPanels: 'Eine Börse hat zwei Teile, und diese Anleitung hat beide.',
    thread: 'Garn',
    estimate:
      'Das Garn für eine Masche ist von Hand zu Hand verschieden: einen Meter markieren, verhäkeln, die Maschen zählen und diese Zahl vor dem Kauf berichtigen.',
    ownFigure: 'Das Garn für eine Masche ist der eigene Wert aus der Werkstatt der Anleitung.',
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
        ? `${lists.round(f.round)}, Teil: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `gesamt ${lists.number(total)}`,
    totalGrams: (f) => `gesamt ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Die Gramm neben einer Summe sind die der bis dahin aufgefädelten Perlen: den Faden vor dem Beginn wiegen und sein Gewicht abziehen. Die Waage muss Zehntelgramm zeigen; Perlen aus einem Glas sind verschieden schwer, darum gilt die Zählung.',
    tickOne:
      'In jeder Zeile von links. Ein Kästchen abhaken, wenn seine Zeile auf dem Faden ist, und bei jeder Summe zählen.',
    tick: 'Zuerst die linke Spalte hinunter, dann die rechte; in jeder Zeile von links. Ein Kästchen abhaken, wenn seine Zeile auf dem Faden ist, und bei jeder Summe zählen.',
    weight: (f) =>
      `Zusammen ${lists.beads(f.beads)}; aufgefädelt wiegen sie ohne den Faden etwa ${fixed(f.grams, 1)} g und sind etwa ${fixed(f.metres, 2)} m lang. Sie zu verhäkeln braucht etwa ${fixed(f.threadM, 1)} m Faden, Fadenenden und Reserve eingerechnet.`,
    noWeight: (f) =>
      `Zusammen ${lists.beads(f.beads)}, aufgefädelt etwa ${fixed(f.metres, 2)} m. Sie zu verhäkeln braucht etwa ${fixed(f.threadM, 1)} m Faden, Fadenenden und Reserve eingerechnet.`,
    rounds: (f) =>
      f.first === f.last
        ? `Für die ${f.first}. Runde.`
        : `Für die Runden ${f.first} bis ${f.last}.`,
    first: 'Die erste Perle dieser Liste kommt zuerst auf den Faden und wird als letzte verhäkelt.',
    nothing: 'Noch ist keine Perle entschieden, also gibt es nichts aufzufädeln.',
  },

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
      'Es ist keine angegeben. Vor dem Weitergeben der Anleitung oder dem Verkauf des Gehäkelten beim Urheber nachfragen.',
    version: 'Version',
    versionText: (f) => `Gemacht mit Rondure ${f.program}, Format der Anleitung ${f.format}`,
    figures: 'Die Zahlen',
    figuresText:
      'Die Perlenzahlen sind genau. Gramm, Fadenlängen, Größen und Werkzeug sind Schätzungen nach der Anleitung und üblichen Werten; was keine veröffentlichte Quelle hat, ist an seiner Stelle „übliche Praxis“ oder „aus dem Gedächtnis“ genannt.',
    read: 'Zum Vorlesen',
    readText:
      'Alle Listen in diesem Heft sind Text, den man durchsuchen, kopieren und vorlesen lassen kann. Jede Perle hat einen Buchstaben, sodass keine Farbe unterschieden werden muss.',
  },
};
