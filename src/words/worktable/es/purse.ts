import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Monedero',
  label: 'El monedero tal como cuelga, con una moneda y una regla al lado',
  back: 'El dorso',
  backHow:
    'Elija Detrás bajo el monedero y luego el paso Imagen: la imagen del dorso se coloca aparte.',
  plain: 'O un solo abalorio por todo',
  frame: 'La boquilla',
  width: 'Anchura',
  height: 'Altura',
  corner: 'Radio de las esquinas',
  hinges: 'Entre las bisagras',
  channel: 'Hondura del canal',
  holes: 'De agujero a agujero',
  bare: 'Vueltas sin abalorios',
  mm: 'mm',
  frameHow:
    'Mida donde irá el borde: a lo ancho, y desde la línea entre las bisagras hasta arriba.',
  fixing: 'Cómo se fija',
  fits: (n) => `Ya ajusta: de esta boquilla cuelgan ${n} vueltas.`,
  fitNow: ({ before, after }) =>
    `El panel ajusta ahora en la boquilla. Vueltas: ${before} → ${after}.`,
  sits: 'Cómo queda',
  worn: ({ panel, frame }) =>
    `El panel cuelga con ${panel} mm de ancho en una boquilla de ${frame} mm.`,
  inFrame: ({ n, round, bare }) =>
    `En la boquilla: ${n} puntos de la vuelta ${round}. Vueltas sin abalorios debajo: ${bare}.`,
  hingesAt: ({ left, right }) =>
    `Las bisagras quedan entre los puntos ${left} a la izquierda y ${right} a la derecha.`,
  seam: ({ n, mm }) => `Cosido abajo: ${n} puntos, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Unos ${spaces} espacios entre agujeros: ${stitches} puntos en cada uno, uno más en ${more} de ellos.`,
  lining: 'El forro',
  liningHow: ({ cut, seam }) =>
    `Corte la tela de ${cut} mm de ancho; la costura va a ${seam} mm. La plantilla está en el cuaderno.`,
  size: 'Tamaño real',
  cardHow:
    'Sostenga una tarjeta bancaria contra la pantalla y tire hasta que el recuadro sea igual de grande. Vale para esta pantalla.',
  cardBox: 'tan grande como una tarjeta',
  steps: {
    frame: 'boquilla',
    back: 'dorso del monedero',
    fit: 'ajustar el panel a la boquilla',
  },
};
