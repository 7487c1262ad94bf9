import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Image',
  invite: 'Mettre sa propre image sur le panneau',
  inviteHow: 'La déposer n’importe où, la coller, ou :',
  drop: 'Lâcher pour poser l’image sur le panneau',
  yours: 'Votre image',
  sampleNote: 'Ceci est notre exemple. On peut tout y essayer.',
  local: 'Votre image reste sur cet appareil. Rien n’est envoyé nulle part.',
  moveHow:
    'Faire glisser l’image sous le panneau. La molette ou deux doigts changent sa taille ; la poignée ronde la fait tourner.',
  size: 'Taille',
  sizeUnit: '%',
  turned: 'Tournée de',
  turnedUnit: '°',
  across: 'Vers la droite',
  down: 'Vers le bas',
  mm: 'mm',
  lies: 'Comment elle est posée',
  liesHow: {
    subject:
      'Ce qui se détache d’un fond uni est aussi grand que le bord le permet ; si rien ne se détache, l’image remplit le panneau.',
    fill: 'L’image couvre tout le panneau ; ce qui dépasse du bord est coupé.',
    fit: 'Le plus long côté traverse le panneau : les coins sont coupés, et du fond reste le long des grands côtés.',
    inside: 'Rien n’est coupé ; tout autour de l’image il y a du fond.',
  },
  kind: 'Ce que c’est',
  kindHow:
    'Dans un dessin, les traits foncés gagnent la perle ; dans une photo, chaque perle prend la couleur moyenne.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Prise comme une photo.' : 'Prise comme un dessin.'),
  around: 'Autour et derrière',
  groundAuto: 'Ce qui lui va',
  cutOutHow: 'Enlève un fond uni, pour que le sujet repose sur des perles à lui.',
  white: 'Blanc',
  bare: 'Nu, sans perles',
  aroundHow: 'Ce qui se voit là où l’image finit ou laisse passer le fond.',
  mind: 'Ce qui ne doit pas se perdre',
  mindHow: 'Passez le pinceau sur un œil ou un bec : ses perles sont choisies avec plus de soin.',
  mindSize: 'Pinceau',
  mindKeys:
    'Au clavier\u00a0: les flèches mènent le pinceau le long du tour et de tour en tour, Espace marque, virgule et point le font plus petit et plus grand. Avec Maj, les flèches marquent en passant. Échap repose le pinceau.',
  mindThere: ({ place }) => `${place}\u00a0; marqué`,
  opening: 'L’image s’ouvre …',
  noPicture:
    'Cette grille est venue sans son image. Ses perles restent telles quelles ; ouvrir une image pour en poser une nouvelle.',
  steps: {
    move: 'déplacer l’image',
    size: 'taille de l’image',
    turn: 'tourner l’image',
    place: 'poser l’image',
    open: 'ouvrir une image',
    art: 'genre d’image',
    background: 'fond',
    mind: 'marquer ce qui ne doit pas se perdre',
  },
};
