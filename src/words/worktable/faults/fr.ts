import type { FaultWords } from './english.js';

export const fr: FaultWords = {
  shape: (f) =>
    `Cette mesure du panneau peut aller de ${f.least} à ${f.most} : la changer à l’étape Panneau.`,
  corners:
    'Un panneau à angles demande l’augmentation dans la première ou la dernière maille de chaque secteur : la choisir, ou prendre un bord rond.',
  notOurs: (f) =>
    `${f.name} ne contient pas de modèle Rondure en bon état : en ouvrir une autre copie, ou le refaire d’après l’image.`,
  notOursAt: (f) =>
    `${f.name} n’est pas un modèle Rondure en bon état (à l’endroit ${f.place}) : en ouvrir une autre copie, ou le refaire d’après l’image.`,
  tooNew: (f) =>
    `${f.name} a été écrit par un Rondure plus récent : recharger cette page, puis le rouvrir.`,
  noLetter: (f) =>
    `Un modèle a au plus ${f.most} couleurs de perles, et celui-ci les a toutes : en réunir d’abord deux.`,
  beadsTyped: (f) =>
    `« ${f.got} » ne se lit pas comme des perles : écrire des suites comme 3A 2B 1A.`,
  beadsNone: 'Aucune perle n’est donnée : écrire des suites comme 3A 2B 1A.',
  beadsMany: (f) =>
    `Plus de ${f.most} perles sont données, plus qu’un panneau n’en porte : vérifier les nombres.`,
  measured: (f) =>
    `L’une des mesures ne peut être juste : avec ces perles, elle est entre ${f.least} et ${f.most}. Mesurer de nouveau, et vérifier tours, secteurs et taille des perles.`,
  turn: 'La maille marquée se déplacerait plus que les mailles ne peuvent pencher : vérifier le sens, et marquer à chaque tour la première maille du même secteur.',
  pointsFew:
    'Les points ne montrent pas comment tournent les mailles : indiquer la première maille d’un secteur au dernier tour, et à un tour plus près du centre.',
  pointsLine:
    'Les points ne disent pas comment le panneau est posé : répartir ceux du bord tout autour.',
  pointsLean:
    'D’après ces points, les mailles pencheraient plus qu’elles ne peuvent : vérifier le tour et le secteur de chacun, et que la photo montre les perles.',
  nothingMeasured: 'Rien n’est encore mesuré : remplir au moins une mesure.',
  across: (f) =>
    `Avec cette maille, un panneau peut avoir de ${f.least} à ${f.most} mm (2 à 80 tours) : choisir une autre taille, ou d’autres perles.`,
  nothingToBead:
    'Aucune maille ne porterait de perle, car l’image n’atteint pas le panneau : la tirer sous le panneau, ou choisir une perle pour ce qui l’entoure.',
  stock: (f) =>
    `Il manque ${f.missing} perles dans les pots pour ce panneau : permettre plus de couleurs, ou faire le panneau plus petit.`,
  stockBuy: (f) =>
    `Il manque ${f.missing} perles dans les pots pour ce panneau : acheter ${f.beads} perles ${f.name}, ou faire le panneau plus petit.`,
  stockPlain: (f) =>
    `Le dos uni demande ${f.needed} perles ${f.name}, et le pot peut en donner ${f.most} : choisir une autre perle pour le dos, ou faire les panneaux plus petits.`,
  colour: (f) =>
    `« ${f.got} » n’est pas une couleur : l’écrire en six caractères, par exemple d9b36a.`,
  noBeadLeft: 'Il ne reste aucune perle à choisir : en écarter moins.',
  keptMany: (f) =>
    `Perles à employer toujours : ${f.kept} ; couleurs permises : ${f.most}. Permettre plus de couleurs, ou garder moins de perles.`,
  letterMissing: (f) =>
    `L’écriture des pages n’a pas « ${f.character} » : l’ôter du titre et des noms de perles.`,
  size: (f) =>
    `La taille de perle « ${f.got} » est inconnue : prendre l’une de ${f.known}, ou donner le diamètre de chaque perle.`,
  paletteEmpty: (f) =>
    `${f.name} ne contient pas de perles : il faut une ligne de noms de colonnes, et une ligne par perle avec au moins sa couleur.`,
  paletteColumn: (f) =>
    `${f.name} n’a pas de colonne de couleurs : nommer une colonne hex, avec des couleurs comme #d9b36a.`,
  paletteNoTable: (f) =>
    `${f.name} n’est pas un simple tableau : l’ouvrir, et l’enregistrer en CSV.`,
  paletteUnread: (f) =>
    `${f.name} ne se lit pas : l’enregistrer de nouveau dans le programme qui l’a écrit.`,
  paletteLong: (f) =>
    `${f.name} est trop long (${f.most} au plus) : garder les perles qui pourraient servir.`,
  paletteSize: (f) =>
    `${f.name} n’a pas de perles de taille ${f.size}, seulement ${f.found} : choisir l’une de ces tailles.`,
  paletteRow: (f) =>
    `Ligne ${f.line} de ${f.name} : « ${f.got} » ne peut pas servir là. Le corriger, et rouvrir le fichier.`,
  paletteTwice: (f) =>
    `La ligne ${f.line} de ${f.name} reprend l’identifiant « ${f.id} » de la ligne ${f.first} : donner à chaque perle le sien.`,
  jarsNone: (f) =>
    `On ne voit pas de perles sur papier blanc dans ${f.name} : poser des tas espacés sur du papier blanc, à lumière égale, et les photographier d’en haut.`,
  jarsGrid: (f) =>
    `Les perles de ${f.name} ne sont pas en ${f.rows} rangées de ${f.columns} : vérifier les deux nombres, et laisser un doigt de papier entre les tas.`,
  fileEmpty: (f) => `${f.name} est vide : le copier ou le télécharger de nouveau.`,
  fileBig: (f) =>
    `${f.name} est trop grand, ${f.most} Mo au plus sont lus : enregistrer une copie plus petite.`,
  format: (f) =>
    `${f.name} n’est pas une image lue ici : l’enregistrer en JPEG ou en PNG, et ouvrir ce fichier.`,
  damaged: (f) =>
    `${f.name} est tronqué ou abîmé : le copier ou le télécharger de nouveau, ou l’ouvrir et l’enregistrer dans un programme d’images.`,
  pixels: (f) =>
    `${f.name} a ${f.width} × ${f.height} pixels, et ${f.most} millions au plus sont lus : enregistrer une copie plus petite ; 2000 pixels par côté suffisent largement.`,
  invisible: (f) =>
    `On ne voit rien dans ${f.name}, car tout est transparent : l’enregistrer avec ses calques allumés.`,
  drawing: (f) =>
    `${f.name} est trop lourd à dessiner : l’enregistrer en PNG dans un programme de dessin, et ouvrir ce fichier.`,
  marks: (f) =>
    `Les quatre repères ronds des coins ne se trouvent pas dans ${f.name} : photographier la page entière, à plat et nette, avec les quatre repères propres et visibles.`,
  uncoloured: (f) =>
    `Aucune case de la grille n’est coloriée dans ${f.name} : vérifier que c’est la bonne photo.`,
  frameReach: (f) =>
    `Aucun panneau ne va à un fermoir de cette largeur : avec cette maille, elle peut aller de ${f.least} à ${f.most} mm.`,
  frameWide: (f) =>
    `Le fermoir est trop large pour un panneau de ${f.rounds} tours : prendre de ${f.from} à ${f.to} tours.`,
  frameRail: (f) =>
    `Le rail du fermoir est trop long pour un panneau de ${f.rounds} tours : vérifier la largeur et la hauteur du fermoir, ou prendre plus de tours.`,
  lining: (f) =>
    `Cette mesure de la doublure n’a pas la place : elle peut aller de ${f.least} à ${f.most} mm.`,
  undo: 'Cela ne va pas avec ces perles : annuler la dernière étape, et essayer autrement.',
};
