import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('es');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Medir el punto propio',
    describe:
      'Cómo tejer y medir una muestra, con un círculo de giro sobre el que ponerla; se imprime al 100 %.',
    intro:
      'Cada mano teje un punto distinto. Un pequeño panel de prueba, una muestra, dice cuánto mide el suyo de alto y de ancho y cuánto se inclina, para que el esquema y el tamaño final se ajusten a su mano.',
    steps: (f) => [
      {
        head: 'Tejer.',
        text: `Ensartar en el ovillo ${count(f.beads)} abalorios (${f.size}) de un solo color y tejer ${f.rounds} vueltas de ${f.wedges} sectores con el hilo y el ganchillo del monedero, un abalorio en cada punto (la última hoja dice cómo se teje el punto), aumento en el ${{ first: 'primer punto', middle: 'punto central', last: 'último punto' }[f.increase]} de cada sector, ${f.construction === 'spiral' ? 'en espiral' : 'con cada vuelta cerrada'}, con la mano ${f.hand === 'right' ? 'derecha' : 'izquierda'}. Después de la vuelta ${f.fromRound}, marcar el hilo a 1 m del ganchillo.`,
      },
      {
        head: 'Marcar.',
        text: `En la vuelta ${f.fromRound} y en la vuelta ${f.toRound}, poner un lazo de hilo vistoso en el primer punto del sector ${f.markedWedge}${f.markedWedge === 1 ? ' (el primer punto de la vuelta)' : ''}.`,
      },
      {
        head: 'Mirar.',
        text: 'Humedecer la muestra, alisarla con la mano, dejarla secar. ¿Queda plana? Si se levanta como un cuenco o si el borde se ondula, apuntarlo y saltar el paso 4.',
      },
      {
        head: 'Ancho.',
        text: 'La parte más ancha, por los bordes exteriores de los abalorios, con un calibre o entre dos tacos derechos.',
      },
      {
        head: 'Por el borde.',
        text: `En medio del sector ${f.rimWedge}, poner un hilo a lo largo de la última vuelta durante 50 mm, por el centro de los abalorios, y contar los puntos de centro a centro de abalorio. Las mitades cuentan.`,
      },
      {
        head: 'Giro.',
        text: `Poner la muestra en el círculo, con los abalorios hacia arriba, el agujero en la cruz y el punto marcado de la vuelta ${f.fromRound} en la línea del 0. Poner una regla desde la cruz por el punto marcado de la vuelta ${f.toRound}: leer los grados y si van en el sentido de la labor o en contra.`,
      },
      {
        head: 'Hilo.',
        text: `¿Cuántos puntos dio el metro, desde el final de la vuelta ${f.fromRound} hasta que la marca llegó al ganchillo?`,
      },
      { head: 'Abalorios.', text: 'Ensartar 50 abalorios, juntarlos, medir la hilera.' },
    ],
    write: 'Apuntar',
    blanks: (f) => [
      'plana, cuenco u ondas',
      'ancho, mm',
      'puntos en 50 mm de borde',
      `giro, vueltas ${f.fromRound} a ${f.toRound}, grados`,
      'en el sentido de la labor o en contra',
      'puntos con 1 m de hilo',
      '50 abalorios, mm',
      'punto 1 a 3 (última hoja)',
    ],
    then: 'Después, dar estos números, junto con lo que dice el paso 1, donde se hace el esquema: en el programa, en «Panel», «Mi punto».',
    stitchTitle: 'El punto',
    stitchIntro:
      'Elegir aquel con el que se tejerá el monedero y no cambiarlo: el hilo, el ganchillo, las hebras y la mano hacen el tamaño. Una muestra en uno de ellos no dice nada de los otros. Apuntar su número en la primera hoja.',
    ways: {
      'both-loops': 'Punto bajo (medio punto en parte de Latinoamérica), por las dos hebras',
      'bead-side-loop': 'El mismo por una sola hebra, la del lado de los abalorios',
      slip: 'Punto raso (en Latinoamérica, punto deslizado)',
    },
    gaugeTitle: 'Círculo de giro',
    gaugeAlt:
      'Un círculo con grados, 0 arriba y 180 abajo, en el sentido de la labor y en contra; en el centro, vueltas y sectores sobre los que poner la muestra.',
    round: (r) => `vuelta ${r}`,
    lean: (lean) => `inclinación ${short(lean, 2)}`,
    with: 'en el sentido de la labor',
    against: 'contra el sentido de la labor',
    scale:
      'Imprimir al 100 %, sin ajustar la escala. Medir los cuadrados: si se desvían más de medio milímetro, imprimir de nuevo sin escalar.',
    read: `En gris: vueltas y sectores de un punto habitual, para centrar la pieza. Fuera de la escala: dónde queda el punto marcado con una inclinación de 0, ${short(0.25, 2)} y ${short(0.5, 1)} puntos.`,
  },
};
