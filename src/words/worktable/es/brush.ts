import type { WorktableWords } from '../index.js';

/** The step Brush: beads laid by hand. */
export const brush: WorktableWords['brush'] = {
  step: 'Pincel',
  inHand: 'En el pincel',
  take: 'Tomar',
  none: 'Sin abalorio',
  others: (n) => `Otros abalorios míos: ${n}`,
  lays: 'Pone',
  also: 'También puede',
  how: {
    bead: 'Dibuje en el panel: cada punto que toque toma el abalorio.',
    line: 'Arrastre de un punto a otro: una línea recta de abalorios.',
    ring: 'Toque un punto: toda su vuelta toma el abalorio. Arrastre por varias vueltas para más.',
    wedge: 'Toque un punto: todo su sector toma el abalorio.',
    patch: 'Toque una mancha de un color: toda ella toma el abalorio.',
    away: 'Pase por encima de lo puesto a mano: esos puntos vuelven a ser como los dio la imagen.',
    replace: 'Toque un abalorio: dondequiera que esté, se pone el del pincel.',
    move: 'Rodee una parte con un lazo, o toque una mancha; luego arrástrela a su nuevo sitio.',
    pick: 'Toque un abalorio del panel para tomarlo. Un montoncito del tapete hace lo mismo.',
  },
  laid: 'Puesto a mano',
  laidNone: 'Todavía nada.',
  laidCount: (n) => `Puntos: ${n}.`,
  laidWait: ({ n, wedges }) => `Esperan los ${wedges} sectores en que se pusieron: ${n}.`,
  laidOutside: (n) => `Fuera del borde, esperan más vueltas: ${n}.`,
  laidHow:
    'Se quedan donde están cuando coloca de nuevo la imagen o elige otros abalorios. Con otros sectores, o fuera de menos vueltas, no tienen sitio: esperan, y Deshacer los devuelve.',
  noLetter: 'Ya hay 24 colores y no queda letra para otro. Junte antes dos montoncitos.',
  heapHint: 'abalorios; tomarlos',
  keysHow:
    'Con el teclado: las flechas van por la vuelta y de vuelta en vuelta, Espacio usa el pincel, coma y punto cambian el abalorio. Con Mayús, las flechas lo usan al pasar.',
  place: ({ round, stitch, wedge, bead }) =>
    `Vuelta ${round}, punto ${stitch}, sector ${wedge}: ${bead}`,
  placeByHand: ({ round, stitch, wedge, bead }) =>
    `Vuelta ${round}, punto ${stitch}, sector ${wedge}: ${bead}, a mano`,
  steps: {
    bead: 'poner abalorios',
    line: 'poner una línea',
    ring: 'poner un anillo',
    wedge: 'poner un sector',
    patch: 'llenar una mancha',
    away: 'quitar abalorios',
    move: 'mover una parte',
    replace: 'poner un abalorio por otro',
    all: 'quitar todo lo puesto a mano',
  },
};
