import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Colorear a mano',
  how: 'Imprimir un esquema vacío de este panel, colorearlo con lápices o rotuladores y leer después su foto.',
  saved: (name) => `${name} está guardado. Imprimir al 100 %, colorear y volver con una foto.`,
  which: 'El esquema coloreado',
  whichHow: 'Los sectores y las vueltas figuran arriba en su hoja.',
  blank: ({ title, wedges, rounds }) => `${title}: ${wedges} sectores, ${rounds} vueltas`,
  openBlank: 'Abrir otro esquema vacío',
  colours: 'Colores, como máximo',
  photo: 'Su foto',
  photoHow:
    'Toda la hoja, plana y con luz uniforme, con sus cuatro marcas. Soltar la foto aquí, o:',
  choose: 'Elegir una foto',
  drop: 'Soltar para leer la foto',
  goOn: ({ name, n, of }) => `Seguir con ${name}, ${n} de ${of}`,
  reading: 'Leyendo el esquema coloreado …',
  stop: 'Detener',
  noCorners:
    'No se han encontrado las cuatro marcas redondas de las esquinas: fotografiar toda la hoja, plana y nítida, con las cuatro marcas a la vista, y comprobar que arriba está elegido el esquema correcto.',
  notColoured:
    'No se ha encontrado ninguna casilla coloreada: comprobar que arriba está elegido el esquema correcto y que sus casillas están bien cubiertas.',
  blankTaken: 'Ese es el propio esquema vacío; ahora está elegido. Falta todavía su foto.',
  uneven:
    'Hay una sombra en la hoja, así que puede haber más casillas mal leídas: repasar el panel, o repetir la foto con luz uniforme.',
  many: 'Muchísimas casillas son dudosas. Comprobar que se eligió el esquema correcto.',
  count: ({ n, of }) => `${n} de ${of}`,
  place: ({ round, wedge, place }) => `Vuelta ${round}, sector ${wedge}, su punto ${place}`,
  reasons: {
    between: 'Su color está entre dos abalorios.',
    uneven: 'Tiene dos colores.',
    unlike: 'Su color no se parece a ningún otro de la hoja.',
    partly: 'Solo está coloreada en parte.',
    outside: 'Queda fuera de la foto.',
  },
  patch: 'La foto alrededor de la casilla, con su contorno dibujado',
  ask: '¿Qué es?',
  asRead: 'leída así',
  white: 'Dejada en blanco',
  other: 'Otro abalorio',
  rest: 'Tomar el resto como se ha leído',
  keysHow: (n) => `Teclas: del 1 al ${n} eligen, la flecha izquierda vuelve.`,
  done: 'Todas las casillas están resueltas',
  counts: ({ coloured, white }) => `Casillas coloreadas: ${coloured}. Blancas: ${white}.`,
  whiteAsk: 'Las casillas blancas son',
  whiteOpen: 'Aún por decidir',
  whiteHow: 'Lo que está por decidir se puede poner con el pincel.',
  lay: 'Ponerlo en la mesa',
  laid: (title) => `«${title}» está en la mesa. Deshacer devuelve lo que había antes.`,
  steps: {
    read: 'leer un esquema coloreado',
  },
};
