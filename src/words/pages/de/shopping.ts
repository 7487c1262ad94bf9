import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('de');
const { tenths, metres, cm } = amountsIn('de');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)} bis ${short(f[1], digits)}`;
const kinds = { 'half-round': 'halbrund', squared: 'eckig', oval: 'oval' };
const fixings = { sewn: 'zum Annähen', glued: 'zum Einkleben' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Ohne Reserve: Zerbrochene und schlecht geformte Perlen sind nicht eingerechnet.'
      : f.batch
        ? `Die Reserve beträgt ${short(f.percent, 2)} %, mindestens 30 Perlen von jeder Sorte, einmal für alle Börsen gerechnet.`
        : `Die Reserve beträgt ${short(f.percent, 2)} %, mindestens 30 Perlen von jeder Sorte.`,
  noBeads: 'Noch sind keine Perlen festgelegt.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Häkelgarn in einer Farbe, die zu den Perlen passt${f.mostMm === undefined ? '' : `, höchstens ${short(f.mostMm, 2)} mm dick`}`}: ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`etwa ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`]),
    ].join(', '),
  threadSum: (f) => {
    const tails = `${tenths(f.tailsMm / 1000)} m für ${f.tails === 1 ? '1 Fadenende von' : `${count(f.tails)} Fadenenden von je`} ${short(f.tailMm / 10, 1)} cm`;
    const net = `${count(f.stitches)} Maschen zu je ${short(f.perStitchMm, 1)} mm Garn brauchen ${tenths(f.netMm / 1000)} m`;
    return f.reservePercent === 0
      ? `${net}; dazu kommen ${tails}.`
      : `${net}; dazu kommen ${tenths(f.reserveMm / 1000)} m Reserve (${short(f.reservePercent, 1)} %) und ${tails}.`;
  },
  lengths: (f) =>
    f.lengths === 1
      ? `Aufgefädelt nehmen die Perlen ${fixed(f.strungMm / 1000, 2)} m davon ein, in einem Abschnitt.`
      : `Aufgefädelt nehmen die Perlen ${fixed(f.strungMm / 1000, 2)} m davon ein, in ${count(f.lengths)} Abschnitten.`,
  thickness: (f) =>
    `Durch das Loch von ${f.size}, meist ${short(f.holeMm, 2)} mm, geht ein Faden bis ${short(f.singleMostMm, 2)} mm; am Nadelöhr doppelt gelegt bis ${short(f.doubledMostMm, 2)} mm (etwa ${short(f.doubledMostTex, 0)} tex: 1 g sind etwa ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `Der Faden ist ${short(f.diameterMm, 2)} mm dick, das Loch von ${f.size} meist ${short(f.holeMm, 2)} mm:`;
    if (!f.single) return `${start} ZU DICK. Einen dünneren Faden oder größere Perlen nehmen.`;
    return f.doubled
      ? `${start} Er passt, auch am Nadelöhr doppelt gelegt.`
      : `${start} Er passt einfach, aber nicht am Nadelöhr doppelt gelegt. Mit versteiftem Fadenende auffädeln oder über eine Schlinge aus dünnerem Faden.`;
  },
  sewingThread: (f) =>
    `Starker Nähfaden, Nylon oder Polyester mit 70 bis 135 tex oder 2 bis 6 Fäden: ${metres(f.mm)}`,
  cord: (f) => `Klebstoff für den Bügel und Papierkordel zum Ausfüllen seiner Rinne: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Häkelnadel: wie es die Probe verlangt'
      : `Häkelnadel, ${range(f.range, 2)} mm für ${f.size ?? 'diese Perlen'}: Die Probe entscheidet`,
  needle: (f) =>
    f.range === undefined
      ? 'Perlnadel, die durch die Perlen geht'
      : `Perlnadel, ${range(f.range, 2)} mm dick: Sie muss durch jede Perle gehen`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Nähnadel und Stecknadeln, für Naht, Bügel und Futter'
      : 'Nähnadel und Stecknadeln, für Fadenenden und Futter',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `${short(f.widthMm, 1)} mm breit`
        : `etwa ${short(f.widthMm, 0)} mm breit (möglich sind ${range(f.range, 0)} mm)`;
    return [
      f.pieces === 1 ? 'Taschenbügel' : `${count(f.pieces)} Taschenbügel`,
      ...(f.kind === undefined ? [] : [kinds[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Futterstoff, ${f.widthCm} x ${f.heightCm} cm (aus Stoff von ${f.clothWidthCm} cm Breite, 2 cm mehr als der Zuschnitt): ${many(f.pieces, { one: 'Stück', other: 'Stücke' })} von ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, ${short(f.allowanceMm, 1)} mm Nahtzugabe enthalten`,
  crochetInstead: (f) =>
    `Oder das Futter häkeln: beide Teile noch einmal ohne Perlen, etwa ${metres(f.mm)} Faden. Sie wie die Teile zusammennähen, einsetzen und ihren Rand entlang des Bügels an den Rand der Börse nähen.`,
  crochetedLining: (f) =>
    `Für das gehäkelte Futter, ${many(f.pieces, { one: 'Teil', other: 'Teile' })} ohne Perlen: ${metres(f.mm)} Faden`,
  frameThread: (f) => `Durchsichtiger Nylonfaden zum Annähen an den Bügel: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'Knäuel oder Spule', other: 'Knäuel oder Spulen' })} zu ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, zusammen ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Häkelnadel ${short(f.mm, 2)} mm: Mit ihr wird diese Anleitung gehäkelt`,
  marker: 'Ein Stück Faden in anderer Farbe als Rundenmarkierer: In jeder Runde rückt es nach oben',
  mat: 'Perlenmatte und Haftzettel zum Markieren der Zeile',
  pencil: 'Weicher Bleistift oder Schneiderkreide für das Futter',
  seal: 'Feuerzeug (nur für synthetische Fadenenden) oder Mittel gegen Ausfransen',
  glue: 'Klarer Textilkleber für Knoten und Fadenenden',
  liningThread: 'Nähgarn in der Farbe des Futters',
  scissors: 'Kleine scharfe Schere für Faden und Stoff',
  samples:
    'Die Codes sind keine Nummern aus einem Laden, sondern unsere eigenen Musterfarben: nach Farbe und Oberfläche kaufen.',
  braid: (f) => `Borte, um die Bügelnaht innen zu verdecken, wenn gewünscht: ${cm(f.mm)}`,
  care: [
    'Jede Perle ist ein Kleinteil, an dem ein Kind unter drei Jahren ersticken kann: Perlen, Nadeln, Scheren und fertige Börsen von kleinen Kindern fernhalten. Eine Börse ist kein Spielzeug.',
    'Beim Zerbrechen einer falschen Perle: Schutzbrille aufsetzen, ein Tuch über die Perle legen. Nadeln und Häkelnadeln vorher und nachher zählen.',
    'Nur synthetische Fadenenden mit Hitze versiegeln und nie in der Nähe von Lösungsmittelkleber; beim Kleben lüften.',
    'Metallbügel können Nickel enthalten. Augen und Hände jede halbe Stunde ausruhen; aufhören, wenn etwas schmerzt.',
    'Die üblichen Hinweise, keine Rechtsberatung: Wer verkauft, beachtet die Vorschriften am eigenen Ort und an dem der Käufer.',
  ],
};
