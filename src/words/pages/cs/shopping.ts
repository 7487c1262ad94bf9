import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('cs');
const { tenths, metres, cm } = amountsIn('cs');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)} až ${short(f[1], digits)}`;
const kinds = { 'half-round': 'půlkulatý', squared: 'hranatý', oval: 'oválný' };
const fixings = { sewn: 'k přišití', glued: 'k vlepení' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Bez rezervy: rozbité a špatně tvarované korálky nejsou započteny.'
      : f.batch
        ? `Rezerva je ${short(f.percent, 2)} %, nejméně 30 korálků od každého druhu, spočítaná jednou pro všechny peněženky.`
        : `Rezerva je ${short(f.percent, 2)} %, nejméně 30 korálků od každého druhu.`,
  noBeads: 'O žádných korálcích ještě není rozhodnuto.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Nit na háčkování v barvě, která se hodí ke korálkům${f.mostMm === undefined ? '' : `, nejvýš ${short(f.mostMm, 2)} mm silná`}`}: ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`asi ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`]),
    ].join(', '),
  threadSum: (f) =>
    `${[
      `${many(f.stitches, { one: 'očko', few: 'očka', other: 'oček' })} po ${short(f.perStitchMm, 1)} mm: ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [`rezerva ${short(f.reservePercent, 1)} %: dalších ${tenths(f.reserveMm / 1000)} m`]),
      `${many(f.tails, { one: 'konec', few: 'konce', other: 'konců' })} nitě po ${short(f.tailMm / 10, 1)} cm: dalších ${tenths(f.tailsMm / 1000)} m`,
    ].join('; ')}.`,
  lengths: (f) =>
    f.lengths === 1
      ? `Navlečené korálky z nitě zaberou ${fixed(f.strungMm / 1000, 2)} m, v jednom úseku.`
      : `Navlečené korálky z nitě zaberou ${fixed(f.strungMm / 1000, 2)} m; počet úseků: ${count(f.lengths)}.`,
  thickness: (f) =>
    `Otvorem korálku ${f.size}, obvykle ${short(f.holeMm, 2)} mm, projde nit do ${short(f.singleMostMm, 2)} mm; přeložená v oušku jehly do ${short(f.doubledMostMm, 2)} mm (asi ${short(f.doubledMostTex, 0)} tex: 1 g má asi ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `Vaše nit je silná ${short(f.diameterMm, 2)} mm, otvor korálku ${f.size} obvykle ${short(f.holeMm, 2)} mm:`;
    if (!f.single) return `${start} PŘÍLIŠ SILNÁ. Vezměte tenčí nit nebo větší korálky.`;
    return f.doubled
      ? `${start} projde, i přeložená v oušku jehly.`
      : `${start} projde jednoduchá, ale ne přeložená v oušku jehly. Navlékejte ztuženým koncem nitě, nebo přes smyčku z tenčí nitě.`;
  },
  sewingThread: (f) =>
    `Pevná nit na šití, nylonová nebo polyesterová, 70 až 135 tex nebo 2 až 6 pramenů: ${metres(f.mm)}`,
  cord: (f) => `Lepidlo na rámeček a papírová šňůrka k vyplnění jeho drážky: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Háček: jaký vyžaduje váš vzorek'
      : `Háček ${range(f.range, 2)} mm na ${f.size ?? 'tyto korálky'}: rozhodne váš vzorek`,
  needle: (f) =>
    f.range === undefined
      ? 'Jehla na korálky, která vašimi korálky projde'
      : `Jehla na korálky, silná ${range(f.range, 2)} mm: musí projít každým korálkem`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Jehla na šití a špendlíky: na šev, rámeček a podšívku'
      : 'Jehla na šití a špendlíky: na konce nitě a podšívku',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `šířka ${short(f.widthMm, 1)} mm`
        : `šířka asi ${short(f.widthMm, 0)} mm (může být ${range(f.range, 0)} mm)`;
    return [
      f.pieces === 1 ? 'Rámeček se zapínáním' : `Rámečky se zapínáním, kusů: ${count(f.pieces)}`,
      ...(f.kind === undefined ? [] : [kinds[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Látka na podšívku, ${f.widthCm} x ${f.heightCm} cm (z látky široké ${f.clothWidthCm} cm, o 2 cm víc než střih): ${many(f.pieces, { one: 'kus', few: 'kusy', other: 'kusů' })} ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, i s přídavkem ${short(f.allowanceMm, 1)} mm`,
  crochetInstead: (f) =>
    `Podšívku lze i uháčkovat: oba díly ještě jednou bez korálků, asi ${metres(f.mm)} nitě. Sešijte je jako díly s korálky, vložte je dovnitř a jejich okraj přišijte k okraji peněženky podél rámečku.`,
  crochetedLining: (f) =>
    `Na háčkovanou podšívku, ${many(f.pieces, { one: 'díl', few: 'díly', other: 'dílů' })} bez korálků: ${metres(f.mm)} nitě`,
  frameThread: (f) => `Průhledná nylonová nit na přišití rámečku: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'klubko nebo cívka', few: 'klubka nebo cívky', other: 'klubek nebo cívek' })} po ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, celkem za ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Háček ${short(f.mm, 2)} mm: s tímto se návod háčkuje`,
  marker: 'Kousek nitě jiné barvy na značení začátku kola: posouvá se v každém kole',
  mat: 'Podložka na korálky a samolepicí lístky na označení řádku, u kterého jste',
  pencil: 'Měkká tužka nebo krejčovská křída na podšívku',
  seal: 'Zapalovač (jen na syntetické konce) nebo přípravek proti třepení',
  glue: 'Čiré textilní lepidlo na uzly a konce',
  liningThread: 'Šicí nit v barvě podšívky',
  scissors: 'Malé ostré nůžky na nit a na látku',
  samples:
    'Kódy v seznamu nejsou čísla z obchodu, ale naše vlastní vzorové barvy: kupujte podle barvy a povrchu.',
  braid: (f) => `Prýmek na zakrytí švu rámečku uvnitř, pokud ho chcete: ${cm(f.mm)}`,
  care: [
    'Každý korálek je malá část, kterou se dítě do tří let může udusit: korálky, jehly, nůžky a hotové peněženky držte dál od malých dětí. Peněženka není hračka.',
    'Rozbití špatného korálku: ochranné brýle, přes korálek látku. Jehly a háčky spočítejte před prací i po ní.',
    'Teplem zatavujte jen syntetické konce, a nikdy blízko lepidla s rozpouštědlem; při lepení větrejte.',
    'Kovové rámečky mohou obsahovat nikl. Očím a rukám dopřejte odpočinek každou půlhodinu; přestaňte, když něco bolí.',
    'To jsou obvyklá upozornění, ne právní rada: pokud prodáváte, zjistěte si předpisy u sebe i tam, kde žijí vaši kupující.',
  ],
};
