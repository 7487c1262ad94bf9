import type { PageWords } from '../index.js';

/** The questions and steps beside the drawings of the handwork. */
export const hands: PageWords['hands'] = {
  ring: {
    ask: '¿Cómo se empieza?',
    steps: (f) => [
      `(1) Formar un anillo con el hilo, dejando un cabo de ${f.tailCm} cm.`,
      '(2) Meter el ganchillo en el anillo y tomar el hilo que va a los abalorios. (3) Sacarlo en forma de bucle y tejer una cadeneta, que no se cuenta.',
      `Tejer los ${f.wedges} puntos de la vuelta 1 alrededor del anillo. (4) Tirar del cabo: el anillo se cierra y en el centro queda un agujero pequeño. También sirve un anillo de 3 o 4 cadenetas.`,
    ],
  },
  'bead-side': {
    ask: '¿De qué lado quedan los abalorios?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? 'Los abalorios quedan detrás de la labor: quien teje mira la cara sin abalorios.'
        : 'Los abalorios quedan delante de la labor: quien teje mira los abalorios.',
    ],
  },
  stitch: {
    ask: '¿Cómo se teje un punto?',
    steps: (f) => [
      f.beadsFace === 'away'
        ? `(1) Meter el ganchillo por debajo de ${f.way === 'both-loops' ? 'las dos hebras' : 'la hebra de atrás sola'} del punto siguiente, de delante hacia atrás.`
        : `(1) Llevar el hilo delante de la labor. Meter el ganchillo por debajo de ${f.way === 'both-loops' ? 'las dos hebras' : 'la hebra de delante sola'} del punto siguiente, de atrás hacia delante.`,
      '(2) Echar hebra. (3) Pasarla por el punto: hay dos bucles en el ganchillo.',
      '(4) Acercar el abalorio siguiente hasta la labor.',
      '(5) Más allá del abalorio, echar hebra. (6) Pasarla por los dos bucles.',
      f.beadsFace === 'away'
        ? 'El punto está hecho: su abalorio queda detrás.'
        : 'El punto está hecho: su abalorio queda delante.',
    ],
  },
  'slip-stitch': {
    ask: '¿Cómo se teje un punto?',
    steps: (f) => [
      `(1) ${
        f.beadsFace === 'away'
          ? 'Meter el ganchillo por debajo de la hebra que sujeta el abalorio del punto siguiente de abajo, de delante hacia atrás.'
          : 'Llevar el hilo delante de la labor. Meter el ganchillo por debajo de la hebra que sujeta el abalorio del punto siguiente de abajo, de atrás hacia delante.'
      } (2) Inclinar ese abalorio hacia el lado ya tejido.`,
      '(3) Acercar el abalorio siguiente hasta la labor.',
      '(4) Más allá del abalorio, echar hebra. (5) Pasarla de una vez por el punto y por el bucle del ganchillo.',
    ],
  },
  increase: {
    ask: '¿Qué significan dos letras entre corchetes?',
    steps: () => [
      'Dos puntos se tejen en un mismo punto de la vuelta anterior: primero (1) y después (2), cada uno con su abalorio.',
    ],
  },
  'round-run': {
    ask: '¿Cómo van las vueltas?',
    steps: (f) => [
      f.construction === 'spiral'
        ? 'En espiral: cada vuelta sigue en la siguiente. Se ve como al tejer; un punto negro es el primer punto de una vuelta.'
        : 'En anillos: cada vuelta se cierra antes de empezar la siguiente. Se ve como al tejer; un punto negro es el primer punto de una vuelta.',
    ],
  },
  marker: {
    ask: '¿Dónde empieza una vuelta?',
    steps: () => [
      '(1) En cuanto se haya tejido en el punto marcado, subir el marcador al punto recién hecho.',
    ],
  },
  'round-end': {
    ask: '¿Cómo se cierra una vuelta?',
    steps: () => [
      '(1) Meter el ganchillo en el primer punto de la vuelta y tomar el hilo. (2) Pasarlo por el punto y por el bucle del ganchillo: un punto raso, sin abalorio.',
      '(3) Tejer una cadeneta para subir, sin abalorio. (4) Tejer el primer punto de la vuelta siguiente en ese mismo primer punto.',
    ],
  },
  'new-length': {
    ask: '¿Cómo se une el tramo siguiente?',
    steps: (f) => [
      `(1) En el último punto del tramo viejo, con su abalorio ya junto a la labor, echar hebra con el hilo nuevo, dejando un cabo de ${f.tailCm} cm. (2) Pasarla por todo lo que haya en el ganchillo.`,
      '(3) Poner los dos cabos a lo largo del borde y tejer los 5 a 10 puntos siguientes por encima; rematar después lo que sobre.',
    ],
  },
  'last-stitches': {
    ask: '¿Cómo se termina la última vuelta?',
    steps: (f) => [
      `(1, 2, 3) Tejer dos o tres puntos rasos bajando el escalón, sin abalorios. (4) Cortar el hilo dejando ${f.tailCm} cm y pasarlo por el último bucle.`,
    ],
  },
  seam: {
    ask: '¿Qué puntos se cosen juntos?',
    steps: (f) => [
      `Las últimas vueltas de los dos paneles y los números de sus puntos; por fuera: ${f.front}; por dentro: ${f.back}. Cada línea une dos puntos que se encuentran. Los puntos blancos quedan abiertos para la boquilla.`,
    ],
  },
  'seam-stitch': {
    ask: '¿Cómo se cose la costura?',
    steps: () => [
      '(1) Pasar la aguja por debajo de las dos hebras de un punto de cada panel, siempre desde el mismo lado, y seguir pareja por pareja.',
    ],
  },
  frame: {
    ask: '¿Por dónde se empieza en la boquilla?',
    steps: (f) => [
      `(1) Empezar en el centro e ir hacia una bisagra; después empezar otra vez en el centro e ir hacia la otra. ${f.bare ? 'Junto a la boquilla quedan los puntos sin abalorios.' : 'Junto a la boquilla queda el borde del panel.'}`,
    ],
  },
  'frame-edge': {
    ask: '¿Cómo se sujeta el borde en la boquilla?',
    steps: (f) => [
      f.fixing === 'sewn'
        ? '(1) Desde dentro, salir por el borde y por el segundo agujero más adelante. (2) Volver a entrar por el agujero anterior: pespunte, agujero por agujero.'
        : '(1) Poner pegamento en el canal. (2) Meter el borde del panel, con el forro cosido a él. (3) Apretar a su lado cordón de papel.',
    ],
  },
  lining: {
    ask: '¿Cómo se pone el forro?',
    steps: (f) => [
      '(1) Derecho contra derecho, coser de una marca de bisagra a la otra pasando por abajo.',
      '(2) Dejarlo del revés y doblar la orilla abierta hacia fuera.',
      '(3) Meterlo en el monedero.',
      f.fixing === 'sewn'
        ? '(4) Por dentro, coser la orilla doblada al borde del panel, por debajo de los agujeros.'
        : '(4) Por dentro, coser la orilla doblada al borde del panel.',
    ],
  },
  braid: {
    ask: '¿Cómo se cubre la costura de la boquilla?',
    steps: () => [
      'Por último, si se desea: por dentro, poner en cada lado la mitad del galón a lo largo de la costura de la boquilla, con los extremos doblados 10 mm junto a las bisagras. (1) Coser los dos bordes al forro y al panel, pasando la aguja por debajo del galón.',
    ],
  },
};
