import type { FrameKind } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('it');
const { tenths, metres, cm } = amountsIn('it');
const range = (f: readonly [number, number], digits: number): string =>
  `da ${short(f[0], digits)} a ${short(f[1], digits)}`;
/** Of one frame and of several. */
const kinds: Record<FrameKind, readonly [string, string]> = {
  'half-round': ['a mezzaluna', 'a mezzaluna'],
  squared: ['rettangolare', 'rettangolari'],
  oval: ['ovale', 'ovali'],
};

export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) => {
    if (f.percent === 0)
      return 'Senza scorta: le perline rotte e quelle difettose non sono contate.';
    const start = `Scorta: ${short(f.percent, 2)}%, almeno 30 perline di ogni tipo`;
    return f.batch ? `${start}, calcolata una sola volta per tutti i borsellini.` : `${start}.`;
  },
  noBeads: 'Nessuna perlina è ancora decisa.',
  crochetThread: (f) =>
    `${f.name ?? `Filo da uncinetto di un colore che si accordi con le perline${f.mostMm === undefined ? '' : `, spesso al massimo ${short(f.mostMm, 2)} mm`}`}: ${metres(f.mm)}${f.grams === undefined ? '' : `, circa ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) =>
    [
      f.stitches === 1
        ? `1 maglia da ${short(f.perStitchMm, 1)} mm consuma ${tenths(f.netMm / 1000)} m`
        : `${count(f.stitches)} maglie da ${short(f.perStitchMm, 1)} mm consumano ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [`la scorta (${short(f.reservePercent, 1)}%) aggiunge ${tenths(f.reserveMm / 1000)} m`]),
      f.tails === 1
        ? `1 capo da ${short(f.tailMm / 10, 1)} cm aggiunge ${tenths(f.tailsMm / 1000)} m.`
        : `${count(f.tails)} capi da ${short(f.tailMm / 10, 1)} cm aggiungono ${tenths(f.tailsMm / 1000)} m.`,
    ].join('; '),
  lengths: (f) =>
    `Infilate, le perline occupano ${fixed(f.strungMm / 1000, 2)} m di questo filo, in ${f.lengths === 1 ? 'un tratto' : many(f.lengths, { other: 'tratti' })}.`,
  thickness: (f) =>
    `Dal foro di ${f.size}, di solito ${short(f.holeMm, 2)} mm, passa un filo fino a ${short(f.singleMostMm, 2)} mm di spessore; piegato in due nella cruna di un ago, fino a ${short(f.doubledMostMm, 2)} mm (circa ${short(f.doubledMostTex, 0)} tex: 1 g misura circa ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `Il filo scelto è spesso ${short(f.diameterMm, 2)} mm, il foro di ${f.size} di solito ${short(f.holeMm, 2)} mm:`;
    if (!f.single)
      return `${start} TROPPO GROSSO. Prendere un filo più sottile o perline più grandi.`;
    return f.doubled
      ? `${start} passa, anche piegato in due nella cruna di un ago.`
      : `${start} passa semplice, ma non piegato in due nella cruna di un ago. Infilare con la punta del filo irrigidita, oppure con l’aiuto di un cappio di filo più sottile.`;
  },
  sewingThread: (f) =>
    `Filo da cucito robusto, nylon o poliestere da 70 a 135 tex oppure da 2 a 6 capi: ${metres(f.mm)}`,
  cord: (f) =>
    `Colla per la montatura e cordoncino di carta per riempire la sua scanalatura: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Uncinetto: quello che richiede il campione'
      : `Uncinetto, ${range(f.range, 2)} mm per ${f.size ?? 'queste perline'}: decide il campione`,
  needle: (f) =>
    f.range === undefined
      ? 'Ago da perline che passi nelle perline scelte'
      : `Ago da perline, spesso ${range(f.range, 2)} mm: deve passare in ogni perlina`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Ago da cucito e spilli, per cucitura, montatura e fodera'
      : 'Ago da cucito e spilli, per i capi di filo e la fodera',
  frame: (f) => {
    const one = f.pieces === 1;
    const start = one
      ? 'Montatura a scatto (clic-clac)'
      : `${count(f.pieces)} montature a scatto (clic-clac)`;
    const kind = f.kind === undefined ? '' : `, ${kinds[f.kind][one ? 0 : 1]}`;
    const fixing = { sewn: ', da cucire', glued: ', da incollare' };
    const wide =
      f.range === undefined
        ? `larghezza ${short(f.widthMm, 1)} mm`
        : `larghezza circa ${short(f.widthMm, 0)} mm (vanno bene ${range(f.range, 0)} mm)`;
    return `${start}${kind}${f.fixing ? fixing[f.fixing] : ''}, ${wide}`;
  },
  lining: (f) =>
    `Stoffa per fodera, ${f.widthCm} x ${f.heightCm} cm (da una stoffa larga ${f.clothWidthCm} cm, 2 cm più del taglio): ${many(f.pieces, { one: 'pezzo', other: 'pezzi' })} da ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, compreso un margine di cucitura di ${short(f.allowanceMm, 1)} mm`,
  crochetInstead: (f) =>
    `Oppure lavorare la fodera all’uncinetto: i due pannelli ancora una volta senza perline, circa ${metres(f.mm)} di filo. Cucirli insieme come i pannelli, inserirli e cucire il loro bordo al bordo del portamonete lungo la montatura.`,
  crochetedLining: (f) =>
    `Per la fodera all’uncinetto, ${many(f.pieces, { one: 'pannello', other: 'pannelli' })} senza perline: ${metres(f.mm)} di filo`,
  frameThread: (f) => `Filo di nylon trasparente per cucire la montatura: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'gomitolo o rocchetto', other: 'gomitoli o rocchetti' })} da ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, ${fixed(f.cost, 2)} in tutto`}`,
  ownHook: (f) => `Uncinetto da ${short(f.mm, 2)} mm: con questo si lavora il modello`,
  marker: 'Un pezzo di filo di un altro colore per segnare l’inizio del giro: sale a ogni giro',
  mat: 'Tappetino per perline e foglietti adesivi per segnare la riga a cui si è arrivati',
  pencil: 'Matita morbida o gesso da sarto per la fodera',
  seal: 'Accendino (solo per capi sintetici) o liquido antisfilacciamento',
  glue: 'Colla per tessuti trasparente per nodi e capi',
  liningThread: 'Filo da cucito del colore della fodera',
  scissors: 'Forbicine affilate per filo e stoffa',
  samples:
    'I codici non sono numeri di negozio, ma nostri colori campione: comprare secondo il colore e la finitura.',
  braid: (f) =>
    `Passamaneria per coprire all’interno la cucitura della montatura, se si vuole: ${cm(f.mm)}`,
  care: [
    'Ogni perlina è una piccola parte con cui un bambino sotto i tre anni può soffocare: tenere perline, aghi, forbici e borsellini finiti fuori dalla portata dei bambini piccoli. Un borsellino non è un giocattolo.',
    'Per rompere una perlina sbagliata: occhiali di protezione e un panno sopra la perlina. Contare aghi e uncinetti prima e dopo.',
    'Sigillare con il calore solo le estremità di fili sintetici, e mai vicino a colla con solventi; aerare la stanza quando si incolla.',
    'Le montature di metallo possono contenere nichel. Riposare occhi e mani ogni mezz’ora; fermarsi quando qualcosa fa male.',
    'Sono le avvertenze consuete, non una consulenza legale: se si vende, consultare le norme del luogo in cui vivono chi vende e chi compra.',
  ],
};
