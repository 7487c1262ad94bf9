import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Panele',
  two: 'Zrobić oba panele, każdy według własnego schematu i listy. Zwilżyć je, rozłożyć płasko pod tkaniną i zostawić do wyschnięcia, jeśli koraliki i nić to znoszą. Potem zmierzyć je w najszerszym miejscu, po zewnętrznych krawędziach koralików, i zapisać wynik: według niego wycina się podszewkę.',
  one: 'Zrobić taki sam panel po raz drugi, według tego samego schematu i tej samej listy: portmonetka ma dwa jednakowe panele. Zwilżyć je, rozłożyć płasko pod tkaniną i zostawić do wyschnięcia, jeśli koraliki i nić to znoszą. Potem zmierzyć je w najszerszym miejscu, po zewnętrznych krawędziach koralików, i zapisać wynik: według niego wycina się podszewkę.',
  ends: 'Końce nici: końce z kółka, łączeń i ostatniego okrążenia przeciągnąć igłą po stronie bez koralików przez pięć lub sześć oczek, z powrotem przez dwa lub trzy i uciąć.',
  wrong: 'Gdy trafi się niewłaściwy koralik',
  wrongText:
    'Zauważony od razu: spruć do niego. Zauważony później: stłuc niewłaściwy koralik (w okularach ochronnych, pod tkaniną), a właściwy przyszyć cienką igłą i tą samą nicią; tak samo tam, gdzie koralika brakuje.',
  seam: 'Szew',
  oneSeam: (f) =>
    `Położyć panele jeden na drugim, koralikami na zewnątrz po obu stronach, tak żeby góra obu obrazków była u góry. W każdym oznaczyć pierwsze oczko ostatniego okrążenia, spiąć godzinę 12 z godziną 12 i godzinę 6 z godziną 6, potem miejsca między nimi. Górę zostawić otwartą na bigiel${f.framed ? '' : ', zwykle trochę mniej niż połowę brzegu'}. Zszywać oczko do oczka, pod obiema nitkami każdego oczka, mocną nicią nylonową lub poliestrową, mniej więcej trzy razy dłuższą niż szew, od jednego zawiasu w dół przez godzinę 6 do drugiego${f.framed ? '.' : '; kończyć 5–10 mm poniżej każdego zawiasu.'}`,
  pairs: 'Oczka ostatniego okrążenia, które się łączy',
  frame: 'Bigiel',
  frameText:
    'Po każdej stronie znaleźć środek bigla i środek otwartego brzegu i spiąć środek ze środkiem. Szyć od środka na zewnątrz do obu zawiasów, przez każdy otwór bigla z otworami; bigiel z rowkiem klei się tak, jak podaje jego producent, jedną stronę po drugiej, i wypełnia sznurkiem papierowym.',
  frameEase:
    'Zwykle brzeg jest do 10% dłuższy niż bigiel; nadmiar rozłożyć równomiernie przy szyciu.',
  lining: 'Podszewka',
  liningText:
    'Szablon podszewki w tej broszurze ma rzeczywistą wielkość. Przed cięciem zmierzyć gotowy panel i narysować linię szwu szerzej lub węziej o tyle, o ile panel się różni.',
  liningShown:
    'Szablon podszewki w tej broszurze ma rzeczywistą wielkość i krok po kroku pokazuje, jak włożyć podszewkę.',
  noTemplate:
    'Dla panelu tej wielkości nie ma szablonu: położyć gotowy panel na tkaninie, obrysować go i dodać 5 mm na szew.',
  washing: 'Pranie i pielęgnacja',
  washingText:
    'Portmonetkę lepiej przecierać wilgotną szmatką niż prać: koraliki malowane i powlekane mogą w praniu i czyszczeniu chemicznym stracić kolor, a metalowy bigiel może rdzewieć.',
};
