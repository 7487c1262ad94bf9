import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'per stampante in bianco e nero',
  large: 'caratteri grandi',
  left: 'per la mano sinistra',
  right: 'per la mano destra',
  mirrored:
    'Questa edizione è per l’altra mano, non per quella per cui è nato il modello: giri, liste e conteggi sono gli stessi, e il disegno viene come immagine speculare. Lettere e numeri nel disegno risulterebbero speculari; per questi serve un modello fatto per questa mano.',
  fills:
    'Senza colori ogni perlina ha un grigio e, quando le perline sono molte, anche un segno accanto alla lettera: due tratti, quattro punti o nessuno. Il colore lo dicono i nomi.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Immagine del pannello lavorato, faccia delle perline: ${f.panel}`,
  chart:
    'Schema del pannello. La lista dei giri dice lo stesso a parole, e i materiali spiegano le lettere.',
  lining: 'Cartamodello della fodera a grandezza reale, con i suoi segni.',
};
