import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { hands } from './hands.js';
import { turn } from './chart.js';

const { short } = numbersIn('es');

export const rounds: PageWords['rounds'] = {
  begin: (f) =>
    `Para empezar: hacer un anillo mágico, o bien 3 o 4 cadenetas cerradas en anillo con un punto raso; después, una cadeneta. Las cadenetas y el punto raso no llevan abalorio y no se cuentan (práctica común, sin fuente). Tejer en el anillo los ${f.wedges} puntos de la vuelta 1, cada uno con su abalorio. El anillo mágico se cierra tirando del hilo; en el centro queda un agujero pequeño. Dejar un cabo de ${f.tailCm} cm para rematarlo después.`,
  stitch: (f) =>
    [
      // M: medio punto is the same stitch in Latin America; in Spain it can mean another one.
      f.way === 'slip'
        ? 'El punto: punto raso, con un abalorio en cada uno.'
        : 'El punto: punto bajo (pb), llamado medio punto (mp) en parte de Latinoamérica, con un abalorio en cada uno.',
      ...(f.drawn ? [] : hands[f.way === 'slip' ? 'slip-stitch' : 'stitch'].steps(f)),
      f.lean === 0.5
        ? `Así cada punto suele quedar retrasado la mitad del ancho de un punto respecto al de abajo (inclinación: ${short(0.5, 2)} de punto). Las hebras superiores de un punto no quedan sobre su centro; por eso las líneas de puntos del centro al borde salen inclinadas, y el esquema lo tiene en cuenta.`
        : `Este patrón se basa en una inclinación de ${short(f.lean, 3)} de punto: lo que cada punto queda retrasado respecto al de abajo.`,
      f.measured
        ? 'Así se midió en la muestra: tejer con el mismo ganchillo, el mismo hilo y los mismos abalorios.'
        : 'Cada mano es distinta: medir la inclinación en una muestra antes de empezar.',
      'No dar nunca la vuelta a la labor: se mira siempre la misma cara.',
    ].join(' '),
  direction: (f) =>
    [
      `La lista de vueltas es para tejer con la ${f.hand === 'right' ? 'mano derecha' : 'mano izquierda'} y con los abalorios en la ${f.beadsFace === 'away' ? 'cara que no ve quien teje' : 'cara que ve quien teje'}.`,
      `En la cara de los abalorios, que es la que muestra el esquema y el exterior del monedero, la labor avanza ${turn(f.clockwise)}.`,
      f.beadsFace === 'away'
        ? `Quien teje mira la otra cara, en la que avanza ${turn(!f.clockwise)}.`
        : 'Al tejer se mira esa misma cara.',
      'Tejido con la otra mano, el panel sale como su imagen en el espejo.',
    ].join(' '),
  marker:
    'Marcador: colgar un marcador en el primer punto de la vuelta y subirlo al comienzo de cada vuelta.',
  increases: (example) =>
    `Aumentos: dos letras entre corchetes, ${example}, son dos puntos tejidos en un mismo punto de la vuelta anterior, en el orden en que están escritos. A partir de la segunda vuelta hay una de estas parejas en cada sector de cada vuelta.`,
  reading:
    'Lectura: 3A son tres puntos con el abalorio A. Lo que está entre paréntesis y seguido de x 3 se teje 3 veces. Junto a cada vuelta figuran sus puntos y sus abalorios, y el total de abalorios tejidos hasta su final: contar al terminar cada vuelta.',
  bare: '«2 sin» son dos puntos sin abalorio.',
  spiral: 'Las vueltas siguen en espiral y no se cierran.',
  joined:
    'Cerrar cada vuelta con un punto raso en su primer punto y tejer una cadeneta para subir. El primer punto de la vuelta siguiente se teje en ese mismo primer punto. Los puntos rasos y las cadenetas de subida no llevan abalorio y no se cuentan.',
  end: {
    spiral: (f) =>
      `Después del último punto de la última vuelta, tejer dos o tres puntos rasos para suavizar el escalón; no llevan abalorio y no se cuentan. Cortar el hilo dejando ${f.tailCm} cm y pasarlo por el último bucle.`,
    joined: (f) => `Al final, cortar el hilo dejando ${f.tailCm} cm y pasarlo por el último bucle.`,
  },
};
