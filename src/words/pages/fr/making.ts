import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Les panneaux',
  two: 'Crocheter les deux panneaux, chacun d’après sa grille et sa liste. Les humidifier et les laisser sécher à plat sous un linge, si les perles et le fil le supportent. Ensuite les mesurer à l’endroit le plus large, sur les bords extérieurs des perles, et noter la mesure : la doublure se coupe d’après elle.',
  one: 'Crocheter le même panneau une seconde fois, d’après la même grille et la même liste : un porte-monnaie a deux panneaux identiques. Les humidifier et les laisser sécher à plat sous un linge, si les perles et le fil le supportent. Ensuite les mesurer à l’endroit le plus large, sur les bords extérieurs des perles, et noter la mesure : la doublure se coupe d’après elle.',
  ends: 'Bouts de fil : avec une aiguille, passer ceux de l’anneau, des raccords et du dernier tour dans cinq ou six mailles sur la face sans perles, revenir dans deux ou trois, puis couper.',
  wrong: 'Si une perle n’est pas la bonne',
  wrongText:
    'Vu tout de suite : défaire jusqu’à elle. Vu plus tard : casser la mauvaise perle (lunettes de protection, un linge par-dessus) et coudre la bonne avec une aiguille fine et le même fil ; de même là où une perle manque.',
  seam: 'La couture',
  oneSeam: (f) =>
    `Poser les panneaux l’un sur l’autre, perles à l’extérieur des deux côtés et le haut des deux motifs du même côté. Marquer dans chacun la première maille du dernier tour, épingler 12 heures sur 12 heures (le haut du cadran) et 6 heures sur 6 heures (le bas), puis les endroits entre les deux. Laisser le haut ouvert pour le fermoir${f.framed ? '' : ', d’ordinaire un peu moins de la moitié du bord'}. Coudre maille à maille, sous les deux brins, avec un fil solide en nylon ou polyester environ trois fois plus long que la couture, d’une charnière, en passant par 6 heures, jusqu’à l’autre${f.framed ? '.' : ' ; finir 5 à 10 mm sous chaque charnière.'}`,
  pairs: 'Mailles du dernier tour qui se correspondent',
  frame: 'Le fermoir',
  frameText:
    'Trouver le milieu du fermoir et du bord ouvert de chaque côté et épingler milieu sur milieu. Coudre du milieu vers les deux charnières, par chaque trou d’un fermoir à trous ; un fermoir à gorge se colle selon les indications du fabricant, un côté après l’autre, et se remplit de cordelette de papier.',
  frameEase:
    'D’ordinaire, le bord est jusqu’à 10 % plus long que le fermoir ; répartir ce surplus régulièrement.',
  lining: 'La doublure',
  liningText:
    'Le patron de doublure de ce livret est en taille réelle. Mesurer le panneau fini avant de couper, et élargir ou rétrécir la ligne de couture de la différence.',
  liningShown:
    'Le patron de doublure de ce livret est en taille réelle et montre pas à pas comment poser la doublure.',
  noTemplate:
    'Il n’y a pas de patron pour un panneau de cette taille : poser le panneau fini sur le tissu, en tracer le contour, et ajouter 5 mm pour la couture.',
  washing: 'Lavage et entretien',
  washingText:
    'Essuyer le porte-monnaie avec un linge humide plutôt que le laver : les perles peintes et enduites peuvent perdre leur couleur au lavage et au nettoyage à sec, et un fermoir en métal peut rouiller.',
};
