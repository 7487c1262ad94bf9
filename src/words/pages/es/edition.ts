import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'para impresora en blanco y negro',
  large: 'letra grande',
  left: 'para la mano izquierda',
  right: 'para la mano derecha',
  mirrored:
    'Esta edición es para la otra mano, no para aquella con la que se hizo el patrón: las vueltas, las listas y los recuentos son los mismos, y el dibujo sale como su imagen en espejo. Las letras y los números del dibujo saldrían invertidos, como en un espejo; necesitan un patrón hecho para esta mano.',
  fills:
    'Sin colores, cada abalorio tiene un gris y, cuando hay muchos, también una marca junto a su letra: dos rayas, cuatro puntos o ninguna. Los nombres dicen el color.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Imagen del panel tejido, cara de los abalorios: ${f.panel}`,
  chart:
    'Esquema del panel. La lista de vueltas dice lo mismo con palabras, y los materiales dicen qué es cada letra.',
  lining: 'Plantilla de corte del forro a tamaño real, con sus marcas.',
};
