import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('pl');
const { tenths, metres, cm } = amountsIn('pl');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}–${short(f[1], digits)}`;
const kinds = { 'half-round': 'półokrągły', squared: 'prostokątny', oval: 'owalny' };
const kindsOfMany = { 'half-round': 'półokrągłe', squared: 'prostokątne', oval: 'owalne' };
const fixings = { sewn: 'do przyszycia', glued: 'do wklejenia' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Bez zapasu: koraliki pęknięte i źle uformowane nie są wliczone.'
      : f.batch
        ? `Zapas wynosi ${short(f.percent, 2)}%, co najmniej 30 koralików każdego rodzaju, liczony raz dla wszystkich portmonetek.`
        : `Zapas wynosi ${short(f.percent, 2)}%, co najmniej 30 koralików każdego rodzaju.`,
  noBeads: 'Nie ustalono jeszcze żadnych koralików.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Nić do szydełkowania w kolorze pasującym do koralików${f.mostMm === undefined ? '' : `, o grubości do ${short(f.mostMm, 2)} mm`}`}: ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`około ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`]),
    ].join(', '),
  threadSum: (f) =>
    `${[
      `${many(f.stitches, { one: 'oczko', few: 'oczka', many: 'oczek', other: 'oczka' })} po ${short(f.perStitchMm, 1)} mm: ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [`zapas ${short(f.reservePercent, 1)}%: jeszcze ${tenths(f.reserveMm / 1000)} m`]),
      `${many(f.tails, { one: 'koniec', few: 'końce', many: 'końców', other: 'końca' })} nici po ${short(f.tailMm / 10, 1)} cm: jeszcze ${tenths(f.tailsMm / 1000)} m`,
    ].join('; ')}.`,
  lengths: (f) =>
    f.lengths === 1
      ? `Nawleczone koraliki zajmują z tego ${fixed(f.strungMm / 1000, 2)} m, w jednym odcinku.`
      : `Nawleczone koraliki zajmują z tego ${fixed(f.strungMm / 1000, 2)} m, w ${count(f.lengths)} odcinkach.`,
  thickness: (f) =>
    `Przez otwór koralika ${f.size}, zwykle ${short(f.holeMm, 2)} mm, przechodzi nić o grubości do ${short(f.singleMostMm, 2)} mm; złożona przy uchu igły do ${short(f.doubledMostMm, 2)} mm (około ${short(f.doubledMostTex, 0)} tex: 1 g to około ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `Nić ma grubość ${short(f.diameterMm, 2)} mm, otwór koralika ${f.size} zwykle ${short(f.holeMm, 2)} mm:`;
    if (!f.single) return `${start} ZA GRUBA. Wziąć cieńszą nić lub większe koraliki.`;
    return f.doubled
      ? `${start} przechodzi, także złożona przy uchu igły.`
      : `${start} pojedyncza przechodzi, ale złożona przy uchu igły już nie. Nawlekać usztywnionym końcem nici albo przez pętlę z cieńszej nici.`;
  },
  sewingThread: (f) =>
    `Mocna nić do szycia, nylonowa lub poliestrowa, 70–135 tex albo złożona z 2–6 nitek: ${metres(f.mm)}`,
  cord: (f) => `Klej do bigla i sznurek papierowy do wypełnienia jego rowka: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Szydełko: takie, jakiego wymaga próbka'
      : `Szydełko ${range(f.range, 2)} mm do ${f.size === undefined ? 'tych koralików' : `koralików ${f.size}`}: decyduje próbka`,
  needle: (f) =>
    f.range === undefined
      ? 'Igła do koralików, która przez nie przechodzi'
      : `Igła do koralików, grubość ${range(f.range, 2)} mm: musi przejść przez każdy koralik`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Igła do szycia i szpilki: do szwu, bigla i podszewki'
      : 'Igła do szycia i szpilki: do końców nici i podszewki',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `szerokość ${short(f.widthMm, 1)} mm`
        : `szerokość około ${short(f.widthMm, 0)} mm (może być ${range(f.range, 0)} mm)`;
    return [
      f.pieces === 1 ? 'Bigiel' : `Bigle (${count(f.pieces)} szt.)`,
      ...(f.kind === undefined ? [] : [(f.pieces === 1 ? kinds : kindsOfMany)[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Tkanina na podszewkę, ${f.widthCm} x ${f.heightCm} cm (z tkaniny szerokości ${f.clothWidthCm} cm, o 2 cm więcej niż wykrój): ${many(f.pieces, { one: 'kawałek', few: 'kawałki', many: 'kawałków', other: 'kawałka' })} po ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, razem z zapasem na szew ${short(f.allowanceMm, 1)} mm`,
  crochetInstead: (f) =>
    `Podszewkę można też zrobić na szydełku: oba panele jeszcze raz bez koralików, około ${metres(f.mm)} nici. Zszyć je tak jak panele, włożyć do środka i przyszyć ich brzeg do brzegu portmonetki wzdłuż bigla.`,
  crochetedLining: (f) =>
    `Na podszewkę szydełkową, ${many(f.pieces, { one: 'panel', few: 'panele', many: 'paneli', other: 'panelu' })} bez koralików: ${metres(f.mm)} nici`,
  frameThread: (f) => `Przezroczysta nić nylonowa do przyszycia bigla: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'motek lub szpulka', few: 'motki lub szpulki', many: 'motków lub szpulek', other: 'motka lub szpulki' })} po ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, razem ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Szydełko ${short(f.mm, 2)} mm: tym robi się ten wzór`,
  marker:
    'Kawałek nici w innym kolorze do zaznaczania początku okrążenia: przekłada się go wyżej w każdym okrążeniu',
  mat: 'Mata do koralików i karteczki samoprzylepne do zaznaczania linijki',
  pencil: 'Miękki ołówek lub kreda krawiecka do podszewki',
  seal: 'Zapalniczka (tylko do końców syntetycznych) lub płyn przeciw strzępieniu',
  glue: 'Przezroczysty klej do tkanin na supełki i końce nici',
  liningThread: 'Nić do szycia w kolorze podszewki',
  scissors: 'Małe ostre nożyczki do nici i tkaniny',
  samples:
    'Kody nie są numerami ze sklepu, lecz naszymi własnymi kolorami próbnymi: kupować według koloru i wykończenia.',
  braid: (f) => `Tasiemka do zakrycia szwu przy biglu od środka, według uznania: ${cm(f.mm)}`,
  care: [
    'Każdy koralik to mała część, którą dziecko w wieku poniżej trzech lat może się udławić: koraliki, igły, nożyczki i gotowe portmonetki trzymać z dala od małych dzieci. Portmonetka nie jest zabawką.',
    'Rozbijanie niewłaściwego koralika: założyć okulary ochronne, na koralik położyć szmatkę. Igły i szydełka policzyć przed pracą i po niej.',
    'Ciepłem zabezpieczać tylko końce nici syntetycznych i nigdy w pobliżu kleju z rozpuszczalnikiem; przy klejeniu wietrzyć.',
    'Metalowe bigle mogą zawierać nikiel. Co pół godziny dać odpocząć oczom i rękom; przestać, gdy coś boli.',
    'To zwykłe ostrzeżenia, nie porada prawna: kto sprzedaje, niech sprawdzi przepisy u siebie i u kupujących.',
  ],
};
