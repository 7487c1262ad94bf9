import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('de');
const tenth = (mm: number): string => fixed(mm, 1);
const percent = (share: number): string => `${short(100 * share, 1)} %`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `Futter: ${f.title}` : `Futter: ${f.title}, ${f.panel}`),
  size: (f) =>
    f.easeMm === 0
      ? `An der breitesten Stelle: Schnittlinie ${tenth(f.cutMm)} mm, Nahtlinie ${tenth(f.seamMm)} mm (Nahtzugabe ringsum ${short(f.allowanceMm, 1)} mm, Nahtlinie so groß wie das Teil).`
      : `An der breitesten Stelle: Schnittlinie ${tenth(f.cutMm)} mm, Nahtlinie ${tenth(f.seamMm)} mm (Nahtzugabe ringsum ${short(f.allowanceMm, 1)} mm, ${short(f.easeMm, 1)} mm enger als das Teil).`,
  measured: (f) =>
    `Für ein Teil von ${tenth(f.measuredMm)} mm, wie gemessen (nach dem Modell ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `SCHÄTZUNG: ${sizeMm(f.model, 1)} mm ist die vom Modell errechnete Größe des Teils, nicht mit dem Lineal gemessen. Das fertige Teil an der breitesten Stelle messen, über die Außenkanten der Perlen, und um den Unterschied größer oder kleiner zuschneiden.`,
  cutTwo:
    '2-mal zuschneiden (einmal für jedes Teil): die Vorlage mit dieser Seite nach oben auf die linke Stoffseite legen, den Pfeil im Fadenlauf. Durchgezogene Linie: schneiden. Gestrichelte Linie: nähen.',
  cutOne:
    '1-mal für dieses Teil zuschneiden; das andere Teil hat ein eigenes Blatt. Die Vorlage mit dieser Seite nach oben auf die linke Stoffseite legen, den Pfeil im Fadenlauf. Durchgezogene Linie: schneiden. Gestrichelte Linie: nähen.',
  sew: (f) =>
    f.gapMm > 0
      ? `Rechts auf rechts von einer Scharniermarke unten herum zur anderen nähen und zwischen den Querstrichen ${short(f.gapMm, 1)} mm zum Wenden offen lassen.`
      : 'Rechts auf rechts von einer Scharniermarke unten herum zur anderen nähen.',
  put: 'Nicht wenden: so in die Börse stecken, wie es ist, die linke Seite an den Teilen, damit innen die rechte Seite zu sehen ist.',
  fold: (f) =>
    `Den offenen Rand oberhalb der Scharniermarken entlang der gestrichelten Linie ${short(f.allowanceMm, 1)} mm nach links umschlagen und die Bruchkante entlang des Bügels an den Rand nähen, unterhalb der Löcher oder innerhalb der Rinnenkante.`,
  close:
    'Mit Wendeöffnung werden Futter und Teile zuerst entlang des Bügels rechts auf rechts zusammengenäht; die Börse durch die Öffnung wenden, deren Kanten nach innen schlagen und sie von Hand mit kleinen Stichen schließen.',
  hinges: (f) =>
    ({
      asked: `Scharniermarken (Punkte): ${percent(f.share)} des Randes liegen im Bügel, wie angegeben.`,
      frame: `Scharniermarken (Punkte): ${Math.round(100 * f.share)} % des Randes liegen im Bügel, nach dem Bügel der Anleitung.`,
      usual: `Scharniermarken (Punkte): eine Schätzung, ${percent(f.share)} des Randes im Bügel${f.marked ? ' (übliche Praxis, keine Quelle)' : ''}: anzeichnen, wo der eigene Bügel endet.`,
    })[f.from],
  spiral:
    'Die Stufe der Spirale am Rand ist weggelassen: Der Umriss ist der geschlossene Ring auf halber Höhe der Stufe.',
  print:
    'Mit 100 % drucken (Originalgröße), Seitenanpassung aus. Beide Quadrate messen: Weicht eines um mehr als 0,5 mm ab, nicht zuschneiden.',
  caution:
    'Vorsicht: Stecknadeln und Nadeln vorher und nachher zählen und wie Scheren und Perlen von kleinen Kindern fernhalten. Ausgefranste Kanten nur bei synthetischem Stoff mit einer Flamme versiegeln, nie in der Nähe von Klebstoff; beim Kleben lüften. Wo man wohnt oder verkauft, gehen die örtlichen Vorschriften vor.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Das Schnittteil ist auf dem nächsten Blatt.'
      : `Das Schnittteil ist auf den nächsten ${f.rows * f.columns} Blättern, ${f.rows} übereinander und ${f.columns} nebeneinander. Sie überlappen sich: von zwei benachbarten Blättern eines entlang der gepunkteten Linie abschneiden, so auf das andere legen, dass Kreuz auf Kreuz liegt, und mit Klebeband verbinden.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Das Schnittteil'
      : `Zeile ${f.row} von ${f.rows}, Spalte ${f.column} von ${f.columns}`,
  marks: {
    pieces: (f) => `${f.pieces}-mal schneiden`,
    cut: (f) => `Schnittlinie ${tenth(f.mm)} mm`,
    seam: (f) => `Nahtlinie ${tenth(f.mm)} mm`,
    estimate: 'Schätzung',
    grain: 'Fadenlauf',
    top: 'Mitte oben',
    hinge: 'Scharnier',
    gap: (f) => `${short(f.mm, 1)} mm offen lassen`,
  },
  check: {
    mm: '50 mm',
    inch: '2 Zoll',
    cm: 'cm',
    in: 'Zoll',
  },
};
