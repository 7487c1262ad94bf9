import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('de');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Inhalt',
  glance: 'Die Arbeit auf einen Blick',
  steps: {
    gather: 'Perlen, Garn und Werkzeug bereitlegen',
    swatch: 'Eine Probe häkeln und messen',
    string: (f) => (f.lengths === 1 ? 'Die Perlen auffädeln' : `Abschnitt ${f.length} auffädeln`),
    rounds: (f) =>
      f.first === f.last ? `Runde ${f.first} häkeln` : `Runden ${f.first} bis ${f.last} häkeln`,
    again: 'Dasselbe Teil noch einmal häkeln',
    seam: 'Die Teile zusammennähen',
    frame: 'Die Börse im Bügel befestigen',
    lining: 'Mit Stoff füttern',
  },
  print: 'Vor dem Drucken',
  printText: (f) =>
    `Mit 100 % drucken, ohne Anpassen an die Seite. Jede Seite dieses Quadrats muss ${f.side} messen. Tut sie es nicht, so stimmt in diesem Heft nichts, was in Originalgröße gezeichnet ist: im Drucker 100 % oder „Tatsächliche Größe“ einstellen und noch einmal drucken.`,
  stop: 'Halt',
  seePage: (f) => `Siehe Seite ${f.page}.`,
  part: 'Auffädeln und häkeln',
  heads: { string: 'Perlen zum Auffädeln', total: 'Summe', grams: 'g', count: 'Perlen' },
  tick: (f) =>
    `Jede Zeile${f.brackets ? ' und jede Wiederholung eines Teils in Klammern' : ''} hat ein Kästchen: abhaken, wenn ihre Perlen auf dem Faden sind. Mehr als 20 gleiche Perlen stehen in Zehnern. Die Summe hinter einer Zeile zählt die Perlen dieses Abschnitts bis zu ihrem Ende.`,
  twoBoxes: 'Zwei Kästchen nebeneinander gelten je eins für jedes Teil.',
  roundsTick:
    'Ein dünner senkrechter Strich trennt die Segmente. Das Kästchen abhaken, wenn eine Runde fertig ist; die Summe ist die aller bis dahin gehäkelten Perlen.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} heißt ${count(f.beads)} Perlen in ${count(f.stitches)} Maschen; die übrigen sind leer.`,
  round: (round) => `Runde ${round}`,
  working: {
    part: 'Zählplan, wie man ihn beim Häkeln sieht',
    note: (f) =>
      `Das ist die Seite, die man beim Häkeln vor sich hat, gedreht, wie sie in der Hand liegt: Der Start ist oben, und die Arbeit läuft nach ${f.hand === 'right' ? 'links' : 'rechts'}, weg von der Häkelnadel.${f.mirrored ? ' Die Perlen liegen dahinter, deshalb ist das Bild seitenverkehrt zur fertigen Börse.' : ''}`,
    wedges: 'Zahlen in Ringen zählen die Segmente in Arbeitsrichtung.',
    hook: 'Häkelnadel',
    use: 'Beim Häkeln nach dem Zählplan arbeiten, wie man ihn sieht; das fertige Teil neben den Zählplan der Perlenseite halten.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `Segment ${f.from}` : `Segmente ${f.from} bis ${f.to}`),
    how: 'Blasse Perlen an den Seiten gehören zu den Nachbarsegmenten. Zahlen stehen vor der ersten Masche jeder Runde.',
  },
  time: (f) => `Zeit: ${f.time}`,
  rights: {
    title: 'Rechte',
    none: 'Dieses Heft nennt weder Urheber noch Lizenz. Es nur selbst verwenden, bis die Person, von der es kommt, sagt, was sonst erlaubt ist.',
    authorOnly: (f) =>
      `Die Anleitung ist von ${f.author}; eine Lizenz ist nicht angegeben. Nachfragen, bevor man sie weitergibt oder Gehäkeltes verkauft.`,
    contact: 'Berichtigungen',
    contactText: (f) => `Einen Fehler gefunden, oder ist etwas unklar? Schreiben an: ${f.contact}.`,
  },
  yours: {
    title: 'Meine Börse',
    madeFor: 'Gemacht für',
    begun: 'Begonnen',
    finished: 'Fertig',
    swatch: 'Meine Probe',
    bead: 'Perlen',
    thread: 'Garn',
    hook: 'Häkelnadel',
    after: (f) => `Breite nach ${f.rounds} Runden`,
    notes: 'Notizen',
  },
  alt: {
    square: 'Ein Quadrat, an dem man den Druck nachmisst.',
    photo: 'Foto des fertigen Stücks.',
    purse: (f) => `Zeichnung der geschlossenen Börse im Bügel: ${f.panel}.`,
    working:
      'Zählplan des Teils, wie man ihn beim Häkeln sieht. Die Rundenliste sagt dasselbe in Worten, und beim Material sind die Buchstaben erklärt.',
    sector: (f) => `Vergrößerter Zählplan, ${f.wedges}. Die Rundenliste sagt dasselbe in Worten.`,
  },
  listing: {
    size: 'Größe',
    level: 'Schwierigkeit',
    beads: 'Perlen',
    tools: 'Außerdem nötig',
    file: 'In der Datei',
    fileText: (f) =>
      `Ein PDF, ${f.pages} Seiten, ${f.paper}, ${f.languages}. Es lässt sich durchsuchen und vorlesen; jede Perle hat einen Buchstaben, sodass man keine Farbe unterscheiden muss.`,
    digital:
      'Dies ist eine Anleitung zum Herunterladen und Ausdrucken. Perlen und Werkzeug sind nicht dabei.',
  },
};
