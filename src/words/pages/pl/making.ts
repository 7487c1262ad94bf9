import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Panele',
  two: 'Zrobić oba panele, każdy według własnego schematu i listy. Zostawić je wilgotne i płasko pod tkaniną, aż wyschną, jeśli koraliki i nić to znoszą.',
  one: 'Zrobić ten sam panel dwa razy: portmonetka ma dwa. Zostawić je wilgotne i płasko pod tkaniną, aż wyschną, jeśli koraliki i nić to znoszą.',
  seam: 'Szew',
  oneSeam:
    'Położyć panele jeden na drugim, koralikami na zewnątrz po obu stronach, oba obrazki prosto. W każdym oznaczyć pierwsze oczko ostatniego okrążenia, spiąć godzinę 12 z godziną 12 i godzinę 6 z godziną 6, potem miejsca między nimi. Górę zostawić otwartą na bigiel, zwykle trochę mniej niż połowę brzegu (powszechna praktyka, bez źródła). Zszywać oczko do oczka, pod obiema nitkami, mocną nicią nylonową lub poliestrową, mniej więcej trzy razy dłuższą niż szew, od jednego zawiasu w dół przez godzinę 6 do drugiego; kończyć 5 do 10 mm pod każdym zawiasem.',
  pairs: 'Oczka ostatniego okrążenia, które się spotykają',
  frame: 'Bigiel',
  frameText:
    'Znaleźć środek bigla i otwartego brzegu po każdej stronie i spiąć środek ze środkiem. Szyć od środka na zewnątrz do obu zawiasów, przez każdy otwór bigla z otworami; bigiel z rowkiem klei się tak, jak podaje jego producent, jedną stronę po drugiej, i wypełnia sznurkiem papierowym. Zwykle brzeg bywa do 10 % dłuższy niż bigiel (z pamięci, niesprawdzone).',
  lining: 'Podszewka',
  liningText:
    'Szablon podszewki w tym zeszycie ma rzeczywistą wielkość. Przed cięciem zmierzyć gotowy panel i narysować linię szwu szerzej lub węziej o tyle, o ile się różni. Uszyć podszewkę, włożyć ją prawą stroną widoczną do środka i przyszyć jej brzeg do brzegu panelu wzdłuż bigla, pod otworami albo wewnątrz krawędzi rowka.',
  noTemplate:
    'Dla panelu tej wielkości nie ma szablonu: położyć gotowy panel na tkaninie, obrysować go i dodać 5 mm na szew.',
  washing: 'Pranie i pielęgnacja',
  washingText:
    'Portmonetkę lepiej przecierać wilgotną szmatką, niż prać: koraliki malowane i powlekane mogą w praniu i czyszczeniu chemicznym stracić kolor, a metalowy bigiel może rdzewieć.',
};
