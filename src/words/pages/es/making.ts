import type { PageWords } from '../index.js';

export const making: PageWords['booklet']['making'] = {
  panels: 'Los paneles',
  two: 'Tejer los dos paneles, cada uno según su esquema y su lista. Dejarlos húmedos y planos bajo un paño hasta que se sequen, si los abalorios y el hilo lo soportan. Después medirlos por la parte más ancha, de borde exterior a borde exterior de los abalorios, y anotar la medida: por ella se corta el forro.',
  one: 'Tejer el mismo panel por segunda vez, con el mismo esquema y la misma lista: un monedero lleva dos paneles iguales. Dejarlos húmedos y planos bajo un paño hasta que se sequen, si los abalorios y el hilo lo soportan. Después medirlos por la parte más ancha, de borde exterior a borde exterior de los abalorios, y anotar la medida: por ella se corta el forro.',
  ends: 'Cabos: con una aguja, pasar los del anillo, las uniones y la última vuelta por cinco o seis puntos en la cara sin abalorios, volver por dos o tres y cortar.',
  wrong: 'Si un abalorio está mal',
  wrongText:
    'Si se ve pronto: deshacer hasta él. Si se ve más tarde: romper el abalorio equivocado (con gafas protectoras y un paño encima) y coser el correcto con una aguja fina y el mismo hilo; lo mismo donde falte uno.',
  seam: 'La costura',
  oneSeam: (f) =>
    `Poner los paneles uno sobre otro, con los abalorios por fuera en ambos lados y los dos dibujos derechos. Marcar en cada uno el primer punto de la última vuelta, sujetar con alfileres las 12 del reloj con las 12 y las 6 con las 6, y después los lugares intermedios. Dejar abierta la parte de arriba para la boquilla${f.framed ? '' : ', por lo general algo menos de la mitad del borde'}. Coser punto con punto, tomando las dos hebras, con hilo fuerte de nailon o poliéster de unas tres veces el largo de la costura, desde una bisagra hacia abajo, pasando por las 6, hasta la otra${f.framed ? '.' : '; terminar entre 5 y 10 mm por debajo de cada bisagra.'}`,
  pairs: 'Puntos de la última vuelta que van juntos',
  frame: 'La boquilla',
  frameText:
    'Buscar el centro de la boquilla y el del borde abierto en cada lado, y sujetar con alfileres centro con centro. Coser desde el centro hacia fuera hasta las dos bisagras, por cada agujero si la boquilla tiene agujeros; una boquilla con canal se pega como indique su fabricante, primero un lado y después el otro, y se rellena con cordón de papel.',
  frameEase:
    'El borde suele ser hasta un 10 % más largo que la boquilla: repartir lo que sobra por igual al coser.',
  lining: 'El forro',
  liningText:
    'La plantilla del forro de este cuadernillo está a tamaño real. Medir el panel terminado antes de cortar y trazar la línea de costura más ancha o más estrecha según la diferencia.',
  liningShown:
    'La plantilla del forro de este cuadernillo está a tamaño real y muestra paso a paso cómo se pone el forro.',
  noTemplate:
    'La plantilla del forro no sirve para un panel de este tamaño: poner el panel terminado sobre la tela, dibujar su contorno y añadir 5 mm para la costura.',
  washing: 'Lavado y cuidado',
  washingText:
    'Limpiar el monedero con un paño húmedo en lugar de lavarlo: los abalorios pintados o recubiertos pueden perder el color con el lavado y la limpieza en seco, y una boquilla de metal puede oxidarse.',
};
