import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('de');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Die eigene Masche messen',
    describe:
      'Wie man eine Probe häkelt und misst, mit einem Drehungsmesser, auf den sie gelegt wird; mit 100 % zu drucken.',
    intro:
      'Jede Hand häkelt eine andere Masche. Ein kleines Probestück sagt, wie hoch, wie breit und wie schräg die eigene ist, damit Zählplan und fertige Größe zur eigenen Hand passen.',
    steps: (f) => [
      {
        head: 'Häkeln.',
        text: `${count(f.beads)} Perlen (${f.size}) in einer Farbe auf das Knäuel fädeln und mit dem Faden und der Häkelnadel der Börse ${f.rounds} Runden mit ${f.wedges} Segmenten häkeln, eine Perle in jeder Masche (das letzte Blatt sagt, wie die Masche gehäkelt wird), Zunahme in der ${{ first: 'ersten', middle: 'mittleren', last: 'letzten' }[f.increase]} Masche jedes Segments, ${f.construction === 'spiral' ? 'in Spiralrunden' : 'jede Runde geschlossen'}, mit der ${f.hand === 'right' ? 'rechten' : 'linken'} Hand. Nach Runde ${f.fromRound} den Faden 1 m von der Nadel markieren.`,
      },
      {
        head: 'Markieren.',
        text: `In Runde ${f.fromRound} und in Runde ${f.toRound} eine Schlaufe aus auffälligem Faden um die erste Masche von Segment ${f.markedWedge} legen${f.markedWedge === 1 ? ' (die erste Masche der Runde)' : ''}.`,
      },
      {
        head: 'Ansehen.',
        text: 'Anfeuchten, flach streichen, trocknen lassen. Liegt die Probe flach? Steht sie auf wie eine Schale oder wellt sich ihr Rand, das aufschreiben und Schritt 4 weglassen.',
      },
      {
        head: 'Breite.',
        text: 'Die breiteste Stelle, über die Außenkanten der Perlen, mit dem Messschieber oder zwischen zwei aufrechten Klötzen.',
      },
      {
        head: 'Am Rand.',
        text: `In der Mitte von Segment ${f.rimWedge} einen Faden 50 mm weit an der letzten Runde entlanglegen, über die Mitten der Perlen, und die Maschen von Perlenmitte zu Perlenmitte zählen. Halbe zählen mit.`,
      },
      {
        head: 'Drehung.',
        text: `Auf den Drehungsmesser legen, Perlen nach oben, das Loch auf das Kreuz, die markierte Masche von Runde ${f.fromRound} auf die Linie der 0. Ein Lineal vom Kreuz über die markierte Masche von Runde ${f.toRound} legen: die Grade ablesen, und ob sie in oder gegen die Arbeitsrichtung liegen.`,
      },
      {
        head: 'Faden.',
        text: `Wie viele Maschen hat der Meter ergeben, vom Ende der Runde ${f.fromRound} bis die Marke an der Nadel war?`,
      },
      { head: 'Perlen.', text: '50 Perlen auffädeln, zusammenschieben, die Reihe messen.' },
    ],
    write: 'Aufschreiben',
    blanks: (f) => [
      'flach, Schale oder Wellen',
      'Breite, mm',
      'Maschen auf 50 mm Rand',
      `Drehung, Runde ${f.fromRound} bis ${f.toRound}, Grad`,
      'in oder gegen die Arbeitsrichtung',
      'Maschen aus 1 m Faden',
      '50 Perlen, mm',
      'Masche 1 bis 3 (letztes Blatt)',
    ],
    then: 'Diese Zahlen dann zusammen mit dem, was Schritt 1 sagt, dort angeben, wo der Zählplan entsteht: im Programm unter „Teil“, „Meine Masche“.',
    stitchTitle: 'Die Masche',
    stitchIntro:
      'Die nehmen, mit der auch die Börse gehäkelt wird, und dabei bleiben: Faden, Nadel, Maschenglieder und Hand machen die Größe. Eine Probe in der einen sagt nichts über die anderen. Ihre Nummer auf dem ersten Blatt aufschreiben.',
    ways: {
      'both-loops': 'Feste Masche, unter beiden Maschengliedern',
      'bead-side-loop': 'Dieselbe unter einem Maschenglied, dem auf der Seite der Perlen',
      slip: 'Kettmasche',
    },
    gaugeTitle: 'Drehungsmesser',
    gaugeAlt:
      'Ein Kreis mit Graden, oben 0 und unten 180, in und gegen die Arbeitsrichtung; in der Mitte Runden und Segmente, auf die die Probe gelegt wird.',
    round: (r) => `Runde ${r}`,
    lean: (lean) => `Versatz ${short(lean, 2)}`,
    with: 'in Arbeitsrichtung',
    against: 'gegen die Arbeitsrichtung',
    scale:
      'Mit 100 % drucken (Originalgröße). Die Quadrate messen: Weichen sie um mehr als einen halben Millimeter ab, ohne Seitenanpassung noch einmal drucken.',
    read: `Grau: Runden und Segmente einer üblichen Masche, um das Stück in die Mitte zu legen. Außerhalb der Skala: wo die markierte Masche bei einem Versatz von 0, ${short(0.25, 2)} und ${short(0.5, 1)} Maschen zu liegen kommt.`,
  },
};
