import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('es');

export const booklet: PageWords['booklet'] = {
  // M: ganchillo con abalorios; crochet con mostacillas in Latin America.
  subject: 'Patrón de un panel redondo de ganchillo con abalorios',
  kind: 'Patrón redondo de ganchillo con abalorios',
  size: (f) =>
    `Unos ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} pulg.) de diámetro una vez terminado`,
  sizeFrom: {
    swatch: 'según la muestra de quien hizo el patrón',
    model: 'una estimación, hasta que se teja una muestra',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 panel, se teje dos veces'
        : many(f.panels, { one: 'panel', other: 'paneles' }),
      many(f.rounds, { one: 'vuelta', other: 'vueltas' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'color', other: 'colores' }),
    ].join('  ·  '),
  by: (author) => `por ${author}`,

  panelNames: { front: 'delantero', back: 'trasero' },
  pageOf: (f) => `${f.page} de ${f.pages}`,
  panel: (f) => `panel «${f.panel}»`,
  // M: tramo, a length of thread with its beads.
  length: (f) => `tramo ${f.length} de ${f.lengths}`,
  continued: (heading) => `${heading}, continuación`,
  parts: {
    cover: 'Portada',
    materials: 'Materiales y herramientas',
    before: 'Antes de empezar',
    chart: 'Esquema',
    rounds: 'Vuelta por vuelta',
    stringing: 'Ensartado',
    making: 'Montaje',
    lining: 'Plantilla del forro',
    cautions: 'Precauciones',
    last: 'Sobre este patrón',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Abalorios',
    columns: {
      // Narrow: the letter on a patch of the bead's colour stands below.
      bead: 'Letra',
      name: 'Nombre',
      id: 'Código',
      charted: (panels) => (panels === 1 ? 'Un panel' : 'Dos paneles'),
      reserve: 'Para un monedero, con reserva',
      grams: 'Peso (g)',
    },
    total: 'Todos los abalorios',
    unknownGrams: '–',
    onePanel:
      'El esquema es de un panel. Un monedero lleva dos: las cantidades con reserva son para un delantero y un trasero iguales.',
    twoPanels: 'Un monedero lleva dos paneles, y este patrón tiene los dos.',
    thread: 'Hilo',
    estimate:
      'El hilo que gasta un punto cambia de una mano a otra: marcar un metro, tejerlo, contar los puntos y corregir esta cifra antes de comprar.',
    ownFigure: 'El hilo que gasta un punto es un dato propio de quien hizo el patrón.',
    tools: 'Herramientas, boquilla y forro',
  },

  before,

  rounds: {
    round: 'Vuelta',
    work: 'Tejer',
    stitches: 'Puntos',
    // Narrow: short for abalorios.
    beads: 'Abal.',
    total: 'Total abal.',
    how: 'Contar al terminar cada vuelta: la última columna dice cuántos abalorios se han tejido hasta su final.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, parte: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `total ${lists.number(total)}`,
    totalGrams: (f) => `total ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Los gramos que figuran junto a un total son los de los abalorios ensartados hasta ahí: pesar el hilo antes de empezar y restar su peso. La balanza tiene que mostrar décimas de gramo; los abalorios de un mismo frasco no pesan todos igual, así que vale el recuento.',
    tickOne:
      'En cada línea, desde la izquierda. Marcar la casilla cuando su línea esté en el hilo, y contar en cada total.',
    tick: 'Primero la columna izquierda de arriba abajo, después la derecha; en cada línea, desde la izquierda. Marcar la casilla cuando su línea esté en el hilo, y contar en cada total.',
    weight: (f) =>
      `${lists.beads(f.beads)} en total; ensartados, sin el hilo, pesan unos ${fixed(f.grams, 1)} g y ocupan unos ${fixed(f.metres, 2)} m. Tejerlos gasta unos ${fixed(f.threadM, 1)} m de hilo, con cabos y reserva incluidos.`,
    noWeight: (f) =>
      `${lists.beads(f.beads)} en total, unos ${fixed(f.metres, 2)} m una vez ensartados. Tejerlos gasta unos ${fixed(f.threadM, 1)} m de hilo, con cabos y reserva incluidos.`,
    rounds: (f) =>
      f.first === f.last
        ? `Para la vuelta ${f.first}.`
        : `Para las vueltas ${f.first} a ${f.last}.`,
    first: 'El primer abalorio de esta lista se ensarta primero y se teje el último.',
    nothing: 'Todavía no se ha decidido ningún abalorio, así que no hay nada que ensartar.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Título',
    author: 'Autoría',
    date: 'Fecha de esta edición',
    licence: 'Licencia',
    noLicence:
      'No se indica ninguna. Preguntar a quien hizo el patrón antes de pasarlo a otras personas o de vender lo tejido.',
    version: 'Versión',
    versionText: (f) => `Hecho con Rondure ${f.program}, formato de patrón ${f.format}`,
    figures: 'Las cifras',
    figuresText:
      'Los recuentos de abalorios son exactos. Los gramos, las longitudes de hilo, los tamaños y las herramientas son estimaciones hasta que se teja una muestra; lo que se da como habitual es práctica común o se cita de memoria, sin fuente publicada.',
    read: 'Para leerlo en voz alta',
    readText:
      'Todas las listas de este cuadernillo son texto que se puede buscar, copiar y leer en voz alta. Cada abalorio tiene una letra, así que no hace falta distinguir ningún color.',
  },
};
