import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('es');
/** 95 as 95,0: sizes to cut by are said to a tenth. */
const tenth = (mm: number) => fixed(mm, 1);
const percent = (share: number) => `${short(100 * share, 1)} %`;

export const lining: PageWords['lining'] = {
  title: (f) => (f.panel === undefined ? `Forro: ${f.title}` : `Forro: ${f.title}, ${f.panel}`),
  size: (f) =>
    `En la parte más ancha: línea de corte ${tenth(f.cutMm)} mm, línea de costura ${tenth(f.seamMm)} mm (margen de costura de ${short(f.allowanceMm, 1)} mm todo alrededor, ${f.easeMm === 0 ? 'sin holgura' : `${short(f.easeMm, 1)} mm más estrecha que el panel`}).`,
  measured: (f) =>
    `Para un panel de ${tenth(f.measuredMm)} mm, según lo medido (según el modelo, ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `ESTIMACIÓN: ${sizeMm(f.model, 1)} mm es el tamaño del panel según el modelo, no medido con regla. Medir el panel terminado en su parte más ancha, por los bordes de los abalorios, y cortar más grande o más pequeño según esa diferencia.`,
  cutTwo:
    'Cortar 2 piezas (una por panel): con esta cara hacia arriba sobre el revés de la tela y la flecha al hilo de la tela. Línea continua: cortar. Línea discontinua: coser.',
  cutOne:
    'Cortar 1 pieza para este panel; el otro panel tiene su propia hoja. Con esta cara hacia arriba sobre el revés de la tela y la flecha al hilo de la tela. Línea continua: cortar. Línea discontinua: coser.',
  sew: (f) =>
    f.gapMm > 0
      ? `Derecho con derecho, coser desde una marca de bisagra, por la parte de abajo, hasta la otra, y dejar ${short(f.gapMm, 1)} mm abiertos entre las rayas para volver el forro.`
      : 'Derecho con derecho, coser desde una marca de bisagra, por la parte de abajo, hasta la otra.',
  put: 'No volverlo: meterlo en el monedero tal como está, con el revés contra los paneles, para que su derecho se vea por dentro.',
  fold: (f) =>
    `Doblar hacia el revés ${short(f.allowanceMm, 1)} mm de la orilla abierta, por encima de las marcas de bisagra, siguiendo la línea discontinua, y coser el doblez al borde del panel a lo largo de la boquilla, por debajo de los agujeros o por dentro del filo del canal.`,
  close:
    'Con abertura, el forro y los paneles se cosen primero a lo largo de la boquilla, derecho con derecho; volver el monedero por la abertura, meter sus orillas hacia dentro y cerrarla a mano con puntadas pequeñas.',
  hinges: (f) =>
    ({
      asked: `Marcas de bisagra (círculos negros): el ${percent(f.share)} del borde queda en la boquilla, según lo indicado.`,
      frame: `Marcas de bisagra (círculos negros): el ${Math.round(100 * f.share)} % del borde queda en la boquilla, según la boquilla del patrón.`,
      usual: `Marcas de bisagra (círculos negros): una estimación, el ${percent(f.share)} del borde en la boquilla${f.marked ? ' (práctica común, sin fuente)' : ''}: marcar dónde termina la boquilla que se va a usar.`,
    })[f.from],
  spiral:
    'El escalón de la espiral en el borde no se tiene en cuenta: el contorno es el anillo cerrado a media altura del escalón.',
  print:
    'Imprimir al 100 %, sin ajustar la escala. Medir los dos cuadrados: si uno se desvía más de 0,5 mm, no cortar.',
  caution:
    'Precaución: contar alfileres y agujas antes y después, y mantenerlos, igual que las tijeras y los abalorios, fuera del alcance de los niños pequeños. Sellar con llama los bordes deshilachados solo en telas sintéticas, nunca cerca de pegamento; ventilar la habitación al pegar. Las normas del lugar donde se vive o se vende están por encima de estos consejos.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'La pieza está en la hoja siguiente.'
      : `La pieza está en las ${f.rows * f.columns} hojas siguientes, ${f.rows} de alto y ${f.columns} de ancho. Se solapan: de cada dos hojas vecinas, cortar una por la línea de puntos, ponerla sobre la otra de modo que las cruces caigan sobre las cruces, y unirlas con cinta adhesiva.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'La pieza'
      : `Fila ${f.row} de ${f.rows}, columna ${f.column} de ${f.columns}`,
  marks: {
    pieces: (f) => `cortar ${f.pieces}`,
    cut: (f) => `corte ${tenth(f.mm)} mm`,
    seam: (f) => `costura ${tenth(f.mm)} mm`,
    estimate: 'estimación',
    grain: 'al hilo',
    top: 'centro arriba',
    hinge: 'bisagra',
    gap: (f) => `sin coser ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    // H: pulg. is the usual short form; in is the symbol.
    inch: '2 pulg.',
    cm: 'cm',
    in: 'pulg.',
  },
};
