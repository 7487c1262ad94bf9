import type { FrameKind } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('es');
const { tenths, metres, cm } = amountsIn('es');
const range = (f: readonly [number, number], digits: number): string =>
  `de ${short(f[0], digits)} a ${short(f[1], digits)}`;
/** Of one frame and of several. */
const kinds: Record<FrameKind, readonly [string, string]> = {
  'half-round': ['de media luna', 'de media luna'],
  squared: ['rectangular', 'rectangulares'],
  oval: ['ovalada', 'ovaladas'],
};

export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) => {
    if (f.percent === 0)
      return 'Sin reserva: no se cuentan los abalorios rotos ni los defectuosos.';
    const start = `La reserva es del ${short(f.percent, 2)} %, como mínimo 30 abalorios de cada clase`;
    return f.batch ? `${start}, calculada una sola vez para todos los monederos.` : `${start}.`;
  },
  noBeads: 'Todavía no se ha decidido ningún abalorio.',
  crochetThread: (f) =>
    `${f.name ?? `Hilo de ganchillo de un color que vaya con los abalorios${f.mostMm === undefined ? '' : `, de ${short(f.mostMm, 2)} mm de grosor como máximo`}`}: ${metres(f.mm)}${f.grams === undefined ? '' : `, unos ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) =>
    [
      f.stitches === 1
        ? `1 punto de ${short(f.perStitchMm, 1)} mm gasta ${tenths(f.netMm / 1000)} m`
        : `${count(f.stitches)} puntos de ${short(f.perStitchMm, 1)} mm gastan ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [
            `una reserva del ${short(f.reservePercent, 1)} % añade ${tenths(f.reserveMm / 1000)} m`,
          ]),
      f.tails === 1
        ? `1 cabo de ${short(f.tailMm / 10, 1)} cm añade ${tenths(f.tailsMm / 1000)} m.`
        : `${count(f.tails)} cabos de ${short(f.tailMm / 10, 1)} cm añaden ${tenths(f.tailsMm / 1000)} m.`,
    ].join('; '),
  lengths: (f) =>
    `Ensartados, los abalorios ocupan ${fixed(f.strungMm / 1000, 2)} m de ese hilo, en ${f.lengths === 1 ? 'un tramo' : many(f.lengths, { other: 'tramos' })}.`,
  thickness: (f) =>
    `Por el agujero de ${f.size}, normalmente de ${short(f.holeMm, 2)} mm, pasa un hilo de hasta ${short(f.singleMostMm, 2)} mm; doblado en el ojo de una aguja, de hasta ${short(f.doubledMostMm, 2)} mm (unos ${short(f.doubledMostTex, 0)} tex: 1 g son unos ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `El hilo elegido tiene ${short(f.diameterMm, 2)} mm de grosor, y el agujero de ${f.size}, normalmente ${short(f.holeMm, 2)} mm:`;
    if (!f.single)
      return `${start} DEMASIADO GRUESO. Elegir un hilo más fino o abalorios más grandes.`;
    return f.doubled
      ? `${start} pasa, también doblado en el ojo de una aguja.`
      : `${start} pasa sencillo, pero no doblado en el ojo de una aguja. Ensartar con la punta del hilo endurecida o con ayuda de un lazo de hilo más fino.`;
  },
  sewingThread: (f) =>
    `Hilo de coser fuerte, de nailon o poliéster, de 70 a 135 tex o de 2 a 6 hebras: ${metres(f.mm)}`,
  cord: (f) => `Pegamento para la boquilla, y cordón de papel para rellenar su canal: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Aguja de ganchillo: la que pida la muestra'
      : `Aguja de ganchillo, ${range(f.range, 2)} mm para ${f.size ?? 'estos abalorios'}: la muestra decide`,
  needle: (f) =>
    f.range === undefined
      ? 'Aguja de ensartar que pase por los abalorios elegidos'
      : `Aguja de ensartar, ${range(f.range, 2)} mm de grosor: tiene que pasar por todos los abalorios`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Aguja de coser y alfileres, para la costura, la boquilla y el forro'
      : 'Aguja de coser y alfileres, para los cabos y el forro',
  frame: (f) => {
    const one = f.pieces === 1;
    const start = one ? 'Boquilla con cierre' : `${count(f.pieces)} boquillas con cierre`;
    const kind = f.kind === undefined ? '' : `, ${kinds[f.kind][one ? 0 : 1]}`;
    const fixing = { sewn: ', para coser', glued: ', para pegar' };
    const wide =
      f.range === undefined
        ? `${short(f.widthMm, 1)} mm de ancho`
        : `unos ${short(f.widthMm, 0)} mm de ancho (sirve cualquiera ${range(f.range, 0)} mm)`;
    return `${start}${kind}${f.fixing ? fixing[f.fixing] : ''}, ${wide}`;
  },
  lining: (f) =>
    `Tela para forro, ${f.widthCm} x ${f.heightCm} cm (de una tela de ${f.clothWidthCm} cm de ancho, 2 cm más que el corte): ${many(f.pieces, { one: 'pieza', other: 'piezas' })} de ${f.pieceWidthCm} x ${f.pieceHeightCm} cm, con ${short(f.allowanceMm, 1)} mm de margen de costura incluidos`,
  crochetInstead: (f) =>
    `O tejer el forro a ganchillo: los dos paneles otra vez sin abalorios, unos ${metres(f.mm)} de hilo. Coserlos entre sí como los paneles, meterlos dentro y coser su borde al borde del monedero a lo largo de la boquilla.`,
  crochetedLining: (f) =>
    `Para el forro a ganchillo, ${many(f.pieces, { one: 'panel', other: 'paneles' })} sin abalorios: ${metres(f.mm)} de hilo`,
  frameThread: (f) => `Hilo de nailon transparente para coser la boquilla: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'ovillo o bobina', other: 'ovillos o bobinas' })} de ${short(f.metres, 1)} m${f.cost === undefined ? '' : `, ${fixed(f.cost, 2)} en total`}`,
  ownHook: (f) => `Ganchillo de ${short(f.mm, 2)} mm: con este se teje este patrón`,
  marker:
    'Un trozo de hilo de otro color para marcar el comienzo de la vuelta: sube en cada vuelta',
  mat: 'Tapete para abalorios y notas adhesivas para marcar la línea por la que se va',
  pencil: 'Lápiz blando o jaboncillo para el forro',
  seal: 'Mechero (solo para cabos sintéticos) o líquido antideshilachado',
  glue: 'Pegamento textil transparente para nudos y cabos',
  liningThread: 'Hilo de coser del color del forro',
  scissors: 'Tijeras pequeñas y afiladas para hilo y tela',
  samples:
    'Los códigos no son números de tienda, sino colores de muestra nuestros: comprar por el color y el acabado.',
  braid: (f) => `Galón para cubrir por dentro la costura de la boquilla, si se desea: ${cm(f.mm)}`,
  care: [
    'Cada abalorio es una pieza pequeña con la que un niño menor de tres años puede asfixiarse: mantener los abalorios, las agujas, las tijeras y los monederos terminados fuera del alcance de los niños pequeños. Un monedero no es un juguete.',
    'Para romper un abalorio equivocado: gafas protectoras puestas y un paño sobre el abalorio. Contar las agujas y los ganchillos antes y después.',
    'Sellar con calor solo las puntas de hilos sintéticos, y nunca cerca de pegamento con disolvente; ventilar la habitación al pegar.',
    'Las boquillas de metal pueden contener níquel. Descansar la vista y las manos cada media hora; parar si algo duele.',
    'Son las precauciones habituales, no asesoramiento jurídico: si se vende, consultar las normas del lugar donde viven quien vende y quien compra.',
  ],
};
