import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Imagen',
  invite: 'Poner la imagen propia en el panel',
  inviteHow: 'Soltarla en cualquier sitio, pegarla, o:',
  drop: 'Soltar para poner la imagen en el panel',
  yours: 'Su imagen',
  sampleNote: 'Esta es nuestra muestra. Se puede probar todo en ella.',
  local: 'La imagen se queda en este dispositivo. No se envía nada a ninguna parte.',
  moveHow:
    'Arrastrar la imagen por debajo del panel. La rueda o dos dedos cambian su tamaño; el asa redonda la gira.',
  size: 'Tamaño',
  sizeUnit: '%',
  turned: 'Giro',
  turnedUnit: '°',
  across: 'A la derecha',
  down: 'Hacia abajo',
  mm: 'mm',
  lies: 'Cómo está puesta',
  liesHow: {
    subject:
      'Lo que destaca sobre un fondo liso va tan grande como cabe dentro del borde; si nada destaca, la imagen llena el panel.',
    fill: 'La imagen cubre todo el panel; lo que sobresale del borde se corta.',
    fit: 'El lado más largo cruza el panel: se cortan las esquinas y junto a los lados largos queda fondo.',
    inside: 'No se corta nada; alrededor de la imagen queda fondo.',
  },
  kind: 'Qué es',
  kindHow:
    'En un dibujo, las líneas oscuras ganan el abalorio; en una foto, cada abalorio toma el color medio.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Tomada como foto.' : 'Tomada como dibujo.'),
  around: 'Alrededor y detrás',
  groundAuto: 'Lo que le vaya bien',
  cutOutHow: 'Quita un fondo liso, para que el motivo descanse sobre abalorios propios.',
  white: 'Blanco',
  bare: 'Sin abalorios',
  aroundHow: 'Lo que se ve donde la imagen termina o deja ver el fondo.',
  mind: 'Lo que no debe perderse',
  mindHow:
    'Pase el pincel por un ojo o un pico en el panel: sus abalorios se eligen con más cuidado.',
  mindSize: 'Pincel',
  mindKeys:
    'Con el teclado: las flechas llevan el pincel por la vuelta y de vuelta en vuelta, Espacio pinta, coma y punto lo hacen más pequeño y más grande. Con Mayús, las flechas pintan al pasar. Esc deja el pincel.',
  mindThere: ({ place }) => `${place}; marcado`,
  opening: 'Abriendo la imagen …',
  noPicture:
    'Este esquema ha llegado sin su imagen. Sus abalorios se quedan como están; abrir una imagen para poner una nueva.',
  steps: {
    move: 'mover la imagen',
    size: 'tamaño de la imagen',
    turn: 'girar la imagen',
    place: 'colocar la imagen',
    open: 'abrir una imagen',
    art: 'clase de imagen',
    background: 'fondo',
    mind: 'marcar lo que no debe perderse',
  },
};
