import type { PageWords } from '../index.js';

type Booklet = PageWords['booklet'];

export const enlarged: Booklet['enlarged'] = {
  part: 'Esquema ampliado',
  sheet: (f) => `hoja ${f.sheet} de ${f.sheets}`,
  how: 'El plano pequeño muestra dónde está esta hoja. Lo que queda más allá de una línea de puntos está también en la hoja vecina; un triángulo dice cuál es. La leyenda de los abalorios está en el esquema entero.',
};

export const wedgeChart: Booklet['wedgeChart'] = {
  part: 'Esquema de un sector',
  alike: (f) =>
    `Los ${f.wedges} sectores son iguales, y este es uno de ellos: tejer cada fila ${f.wedges} veces en su vuelta.`,
  how: (f) =>
    f.direction === 1
      ? 'Cara de los abalorios, borde arriba. La fila 1 es la punta, en el centro del panel. Leer cada fila de izquierda a derecha. Un triángulo negro sobre dos puntos señala el punto de abajo en el que se tejen los dos.'
      : 'Cara de los abalorios, borde arriba. La fila 1 es la punta, en el centro del panel. Leer cada fila de derecha a izquierda. Un triángulo negro sobre dos puntos señala el punto de abajo en el que se tejen los dos.',
};

export const level: Booklet['level'] = {
  title: 'Nivel del proyecto',
  intermediate: 'Intermedio: vueltas que se repiten; hilo fino, ganchillo fino',
  complex: 'Complejo: un dibujo que se sigue abalorio por abalorio; hilo fino, ganchillo fino',
};
