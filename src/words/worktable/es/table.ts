import { formIn } from '../form.js';
import type { WorktableWords } from '../index.js';

const form = formIn('es');

/** What stands on the table whatever step is open. */
export const table: WorktableWords['table'] = {
  untitled: 'Panel sin nombre',
  titleLabel: 'Nombre de la pieza',
  way: 'El camino de la imagen al monedero',
  mat: 'El tapete',
  matEmpty: 'Los abalorios vendrán aquí en cuanto haya una imagen.',
  heap: (n) => `${n} ${form(n, { one: 'abalorio', other: 'abalorios' })}`,
  heapHint: 'abalorios; mostrar dónde están',
  matSum: ({ colours, beads }) =>
    `${colours} ${form(colours, { one: 'color', other: 'colores' })}, ${beads} ${form(beads, { one: 'abalorio', other: 'abalorios' })}`,
  panel: 'El panel, con los abalorios hacia arriba',
  panelLabel: ({ rounds, wedges, mm }) =>
    `Panel redondo: ${rounds} ${form(rounds, { one: 'vuelta', other: 'vueltas' })}, ${wedges} ${form(wedges, { one: 'sector', other: 'sectores' })}, unos ${mm} mm de ancho`,
  panelSize: ({ rounds, cm }) =>
    `${rounds} ${form(rounds, { one: 'vuelta', other: 'vueltas' })} · ${cm} cm`,
  working: 'Eligiendo abalorios …',
  stitch: ({ round, stitch, letter, name }) =>
    `Vuelta ${round}, punto ${stitch}: ${letter}, ${name}`,
  bareStitch: ({ round, stitch }) => `Vuelta ${round}, punto ${stitch}: sin abalorio`,
  thread: 'El hilo',
  threadLabel: ({ n }) =>
    `${n} ${form(n, { one: 'abalorio', other: 'abalorios' })} en el orden de ensartado; las flechas lo recorren`,
  length: ({ n, beads, m }) =>
    `Tramo ${n}: ${beads} ${form(beads, { one: 'abalorio', other: 'abalorios' })}, ${m} m`,
  lengthMark: (n) => `tramo ${n}`,
  roundMark: (r) => `vuelta ${r}`,
  mirrored: 'como se ve al tejer: izquierda y derecha cambian de sitio',
  byRound: 'El panel como texto, vuelta por vuelta',
  roundLine: ({ r, runs }) => `Vuelta ${r}: ${runs}`,
  run: ({ n, letter, name }) => `${n} ${letter} (${name})`,
  bareRun: (n) => `${n} sin abalorio`,
  undone: (what) => `Deshecho: ${what}`,
  redone: (what) => `Hecho de nuevo: ${what}`,
  saved: (file) => `Guardado: ${file}`,
  close: 'Cerrar',
  keys: 'Teclas',
  keysIntro: 'Todo se puede hacer también con el teclado.',
  more: 'Más',
};
