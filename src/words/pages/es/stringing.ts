import type { PageWords } from '../index.js';

/** An hour on the clock, after a preposition. */
export const hourOf = (hour: number): string => (hour === 1 ? 'la 1' : `las ${hour}`);

export const stringing: PageWords['stringing'] = {
  // M: ensartar; «enhebrar» is said too.
  order:
    'Ensartar los abalorios en el orden de la lista de ensartado, de arriba abajo y, en cada línea, desde la izquierda: la vuelta exterior se ensarta primero. El último abalorio del hilo es el primero que se teje.',
  reading:
    'Lectura: 3A son tres abalorios A. Lo que está entre paréntesis y seguido de x 3 se ensarta 3 veces. Junto a cada vuelta figuran sus abalorios y el total que hay en el hilo cuando su línea está ensartada: contar al final de cada línea.',
  bare: 'Los puntos sin abalorio no necesitan ninguno y no están en la lista de ensartado.',
  onBall:
    'Ensartar desde el ovillo, con el extremo del hilo en la aguja de ensartar, y no cortar el hilo antes de tejer el tramo.',
  stop: (f) =>
    `Parar en ${f.atRoundEnd ? `el último punto de la vuelta ${f.round}` : `el punto ${f.stitch} de la vuelta ${f.round}`}, antes de pasar el hilo por última vez. Sujetar los bucles con un marcador, cortar el hilo dejando ${f.tailCm} cm, ensartar el tramo ${f.next} y unirlo en ese punto, más o menos hacia ${hourOf(f.hour)} del reloj en la cara de los abalorios.`,
};
