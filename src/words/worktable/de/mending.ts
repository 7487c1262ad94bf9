import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Wo bin ich?',
  findHow:
    'Die Perlen antippen, die als nächste vom Faden kommen, zuerst die nächste an der Häkelnadel.',
  findNone: 'So kommen sie nirgends vor. Die zuletzt angetippte noch einmal ansehen.',
  findMore: (n) => `${n} Stellen passen. Die nächste Perle antippen.`,
  found: (f) =>
    `Als Nächstes kommt Masche ${f.stitch} der Runde ${f.round}, in Segment ${f.wedge}.`,
  foundSlips: (n) => `Perlen, die dort anders sind als in der Liste: ${n}.`,
  goThere: 'Von dort weiter',
  jumped: (f) => `Hierher ging es von Masche ${f.stitch} der Runde ${f.round}.`,
  checkTitle: 'Stimmt es?',
  checkHow: (after) =>
    after === '0'
      ? 'So soll der Faden aussehen, die zuerst aufgefädelte Perle zuerst.'
      : `So soll der Faden nach den ${after} geprüften Perlen aussehen.`,
  checkRight: 'Meiner sieht genauso aus',
  readStrung: (after) =>
    after === '0'
      ? 'Wenn nicht: antippen, was wirklich darauf ist, die zuerst aufgefädelte Perle zuerst.'
      : `Wenn nicht: antippen, was wirklich darauf ist, von der Stelle hinter Perle ${after} an.`,
  wrongTitle: 'Etwas stimmt nicht',
  readComing:
    'Die Perlen so antippen, wie sie wirklich vom Faden kommen, zuerst die nächste an der Häkelnadel.',
  agree: (n) => `Wie in der Liste: ${n} Perlen.`,
  tooMany: 'Das ist nicht dieses Stück Faden, oder es wurde vom anderen Ende her gelesen.',
  notHere: 'Diese Perlen gehören nicht hierher. Vielleicht ist die Arbeit an einer anderen Stelle.',
  slip: {
    missing: (f) =>
      `Hinter Perle ${f.after}: ${f.wanted} fehlt (Runde ${f.round}, Masche ${f.stitch})`,
    extra: (f) =>
      `Hinter Perle ${f.after}: ${f.got} zu viel (Runde ${f.round}, vor Masche ${f.stitch})`,
    other: (f) =>
      `Hinter Perle ${f.after}: ${f.got} statt ${f.wanted} (Runde ${f.round}, Masche ${f.stitch})`,
    swap: (f) =>
      `Hinter Perle ${f.after}: ${f.got} vertauscht, richtig ist ${f.wanted} (Runde ${f.round}, Masche ${f.stitch})`,
  },
  ways: {
    missing:
      'Fehlt: Diese Masche ohne Perle häkeln und die Perle später mit feiner Nadel und demselben Garn annähen.',
    extra:
      'Zu viel: Die Perle mit einer Flachzange zerdrücken, wenn sie an der Reihe ist. Schutzbrille tragen, ein Tuch über Perle und Zange halten, die Splitter aufsammeln und den Faden nach Schnitten abtasten.',
    other:
      'Andere Farbe: Die falsche Perle zerdrücken, wenn sie an der Reihe ist, die Masche ohne Perle häkeln und die richtige später annähen.',
    swap: 'Vertauscht: wie zwei Perlen in anderer Farbe behandeln, oder sie so häkeln, wenn es niemand sehen wird.',
  },
  broken:
    'Zerbrochenes Glas schneidet Faden und Haut und springt in die Augen: nie ohne Schutzbrille.',
  takeOff: (after) => `Alles hinter Perle ${after} habe ich abgenommen`,
  mendLater: 'Lassen und beim Häkeln ausbessern',
  noteThem: 'An den Maschen vermerken',
  here: {
    sewOn: (letter) =>
      `Hier fehlt ${letter}: die Masche ohne Perle häkeln, die Perle später annähen.`,
    extra: (letters) => `Zuerst vom Faden nehmen: ${letters}.`,
  },
  ten: 'Zehn auf einmal',
  takeBack: 'Zurücknehmen',
  typeThem: 'Oder eintippen, etwa 3A 2B',
  addTyped: 'Dazulegen',
  typedWrong: (letters) => `Nur Zahlen und diese Buchstaben: ${letters}`,
  tapped: (n) => `Genannte Perlen: ${n}`,
  notes: 'Notizen',
  noteAt: (f) => `Notiz an Masche ${f.stitch} der Runde ${f.round}`,
  noteHow: 'Eine Masche der Arbeit antippen, um eine Notiz anzuheften.',
  noteLine: (f) => `Runde ${f.round}, Masche ${f.stitch}: ${f.text}`,
  sewOnLine: (f) => `Runde ${f.round}, Masche ${f.stitch}: ${f.letter} annähen, ${f.name}.`,
  sewn: 'Angenäht',
  takeAway: 'Wegnehmen',
  sewOnTitle: 'Perlen zum Annähen',
  timeTitle: 'Zeit und Kosten',
  time: (f) => `${f.h} Std. ${f.min} Min.`,
  timeHow: 'Gezählt wird von Tippen zu Tippen; eine Pause von mehr als zwei Minuten zählt nicht.',
  hourly: 'Was eine Stunde wert ist',
  cost: {
    beads: 'Perlen',
    thread: 'Garn',
    time: 'Zeit',
    sum: 'Zusammen',
    unknown: 'kein Preis bekannt',
  },
  costHow: 'Für je eines von jedem Teil, im Geld der Perlenpreise.',
  outTitle: 'Eine Farbe geht aus',
  outHow:
    'Was aufgefädelt ist, bleibt. Von einer Runde an kommt eine andere Perle, und alle Listen folgen.',
  outWhich: 'Welche Farbe',
  outFrom: 'Ab Runde',
  outPanels: 'In welchem Teil',
  outAll: 'In allen',
  outNeeds: (n) => `Von dort an gebrauchte Perlen: ${n}`,
  outInJar: (n) => `im Glas: ${n}`,
  outNone: 'Von dieser Runde an kommt diese Farbe nicht mehr vor.',
  outDone: (f) => `Ab Runde ${f.round} liegt ${f.to} statt ${f.from}.`,
  practice: 'Übungsstück',
  practiceHow:
    'Vier Runden zum Lernen, in der eigenen Masche und den eigenen Perlen: Beide Maschen jeder Zunahme haben eine eigene Farbe, ebenso die erste Masche jeder Runde. Unter Seiten gibt es dafür ein eigenes Heft.',
  steps: { runsOut: 'eine andere Perle, wo eine ausgeht' },
};
