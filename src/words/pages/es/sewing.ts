import type { Pair } from '../english/sewing.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { runsText } from './frame.js';
import { hourOf } from './stringing.js';

const { many } = numbersIn('es');

const fixedIn = (fixing: 'sewn' | 'glued' | undefined): string[] => [
  ...(fixing === undefined
    ? []
    : ['La boquilla puede contener níquel, que provoca reacciones en algunas personas.']),
  ...(fixing === 'glued'
    ? [
        'Pegar en una habitación ventilada, lejos de llamas y de niños, y leer la etiqueta del pegamento.',
      ]
    : []),
];

export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `Extender el panel «${f.back}» con los abalorios hacia abajo y poner encima el panel «${f.front}» con los abalorios hacia arriba, los dos dibujos derechos, de modo que haya abalorios por fuera en ambos lados. Los dos paneles se tejen con la misma mano; vistas desde el panel «${f.front}», las vueltas del panel «${f.back}» avanzan en sentido contrario.`,
  count: (f) =>
    `Los bordes se cosen contando. La vuelta ${f.round}, la última, tiene ${f.stitches} puntos en cada panel. Marcar su primer punto en los dos paneles y contar desde él en el sentido en que se tejió.`,
  meet: (f) =>
    `El punto 1 del panel «${f.front}» va con el punto ${f.stitches} del panel «${f.back}», el punto 2 con el punto ${f.stitches - 1}, y así sucesivamente: los dos números suman siempre ${f.stitches + 1}.`,
  meetShifted: (f) =>
    `El punto ${f.stitch} del panel «${f.front}» va con el punto ${f.meets} del panel «${f.back}»; desde ahí, contar hacia delante en el panel «${f.front}» y hacia atrás en el panel «${f.back}».`,
  spiral:
    'En una espiral, el final de la última vuelta queda una vuelta más afuera que su comienzo, y los escalones de los dos paneles suben en sentidos opuestos: los bordes quedan separados hasta el ancho de una vuelta, sobre todo junto al escalón. No coser a ojo: seguir la cuenta y dejar que la costura junte los dos bordes. Los puntos rasos de después de la última vuelta no se cuentan.',
  joined:
    'Los bordes coinciden en todo el contorno. El punto raso que cierra la última vuelta no se cuenta.',
  opening: (f) =>
    `La parte de arriba queda abierta para la boquilla: por lo general, algo menos de la mitad del borde, centrada en las 12 del reloj${f.marked ? ' (práctica común, sin fuente)' : ''}. Coser desde una bisagra de la boquilla hacia abajo, pasando por las 6, y subir hasta la otra; terminar entre 5 y 10 mm por debajo de cada bisagra.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'La parte de arriba queda abierta para la boquilla.'
      : `La parte de arriba queda abierta para la boquilla. Puntos de la última vuelta que quedan en ella: en el panel «${f.front}», ${runsText(f.frontInFrame)}; en el panel «${f.back}», ${runsText(f.backInFrame)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: Pair) =>
      `el punto ${one.front} del panel «${f.front}» con el punto ${one.back} del panel «${f.back}»`;
    const sew = `Coser ${many(f.pairs, { one: 'pareja', other: 'parejas' })} de puntos: desde ${pair(f.first)}, pasando por las 6 del reloj, hasta ${pair(f.last)}.`;
    if (f.halves === 0) return `${open} ${sew}`;
    // M: embeber, to ease in.
    const eased =
      f.halves === 1
        ? 'La pareja que queda entre la costura y la boquilla no se cose: como los dos bordes no suben igual, solo uno de sus puntos queda en la boquilla. Embeber el otro junto a la bisagra.'
        : `Las ${f.halves} parejas que quedan entre la costura y la boquilla no se cosen: como los dos bordes no suben igual, solo un punto de cada una queda en la boquilla. Embeber el otro junto a la bisagra.`;
    return `${open} ${sew} ${eased}`;
  },
  work: 'Primero sujetar con alfileres o atar las parejas de la tabla de abajo, la de las 6 antes que las demás, y después coser punto con punto, tomando las dos hebras de cada punto, con el hilo de tejer o con un hilo fuerte de nailon o poliéster, de unas tres veces el largo de la costura.',
  care: (fixing) =>
    [
      'Precaución: contar agujas y alfileres antes y después, y mantenerlos, igual que los abalorios, fuera del alcance de los niños pequeños.',
      ...fixedIn(fixing),
      'Descansar a menudo la vista y las manos. Las normas del lugar donde se vive o se vende están por encima de estos consejos.',
    ].join(' '),
  columns: (f) => ['en el reloj', f.front, f.back],
  row: (f) => [
    `${hourOf(f.frontHour)} (${hourOf(f.backHour)} en «${f.backName}»)`,
    String(f.front),
    String(f.back),
  ],
};
