import type { Pair } from '../english/sewing.js';
import type { PageWords } from '../index.js';
import { runsText } from './frame.js';

const fixedIn = (fixing: 'sewn' | 'glued' | undefined): string[] => [
  ...(fixing === undefined
    ? []
    : ['Burs nikel içerebilir; bazı kişilerin cildi nikele tepki verir.']),
  ...(fixing === 'glued'
    ? ['Yapıştırırken odayı havalandırın, alevden ve çocuklardan uzak durun, etiketi okuyun.']
    : []),
];

export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `“${f.back}” panelini boncukları alta gelecek biçimde yatırın, “${f.front}” panelini boncukları üste gelecek biçimde onun üzerine koyun; iki resim de dik dursun. Böylece iki dış yüzde de boncuk olur. İki panel de aynı elle örülür; “${f.front}” panelinin tarafından bakınca “${f.back}” panelinin sıraları ters yönde ilerler.`,
  count: (f) =>
    `Kenarlar sayılarak dikilir. Son sıra olan ${f.round}. sırada her panelde ${f.stitches} ilmek vardır. İki panelde de bu sıranın ilk ilmeğini işaretleyin ve oradan örgü yönünde sayın.`,
  meet: (f) =>
    `“${f.front}” panelinin 1. ilmeği “${f.back}” panelinin ${f.stitches}. ilmeğiyle, 2. ilmeği ${f.stitches - 1}. ilmeğiyle birleşir ve böyle sürer: iki sayının toplamı her zaman ${f.stitches + 1} olur.`,
  meetShifted: (f) =>
    `“${f.front}” panelinin ${f.stitch}. ilmeği “${f.back}” panelinin ${f.meets}. ilmeğiyle birleşir; oradan “${f.front}” panelinde ileriye, “${f.back}” panelinde geriye doğru sayın.`,
  spiral:
    'Spiralde son sıranın sonu, başından bir sıra daha dıştadır ve iki panelin basamakları ters yönlerde yükselir: kenarlar birbirinden bir sıraya kadar ayrı durur, en çok da basamağın yanında. Göz kararıyla dikmeyin: sayıya uyun ve iki kenarı dikişin bir araya çekmesine izin verin. Son sıradan sonraki kaydırma ilmekler sayılmaz.',
  joined: 'Kenarlar çepeçevre birbirine denk gelir. Son sırayı kapatan kaydırma ilmek sayılmaz.',
  opening: (f) =>
    `Üst taraf burs için açık kalır: genellikle kenarın yarısından biraz azı, ortası saat 12 hizasında${f.marked ? ' (yaygın uygulama, kaynak yok)' : ''}. Bursun bir menteşesinden aşağıya doğru, saat 6 hizasından geçip yukarıya, öbür menteşeye kadar dikin; her menteşenin 5–10 mm altında bitirin.`,
  openingOfFrame: (f) => {
    const open = f.told
      ? 'Üst taraf burs için açık kalır.'
      : `Üst taraf burs için açık kalır. Son sıranın bursun içinde kalan ilmekleri: “${f.front}” panelinde ${runsText(f.frontInFrame)}; “${f.back}” panelinde ${runsText(f.backInFrame)}.`;
    if (!f.first || !f.last) return open;
    const pair = (one: Pair) =>
      `“${f.front}” panelinin ${one.front}. ilmeği ile “${f.back}” panelinin ${one.back}. ilmeği`;
    const sew = `Dikilecek ilmek çifti sayısı: ${f.pairs}. İlk çift: ${pair(f.first)}. Son çift: ${pair(f.last)}. İlkinden sonuncusuna, saat 6 hizasından geçerek dikin.`;
    if (f.halves === 0) return `${open} ${sew}`;
    const eased =
      f.halves === 1
        ? 'Dikiş ile burs arasında kalan bir çift dikilmez: iki kenar aynı biçimde yükselmediği için bu çiftin yalnızca bir ilmeği bursun içinde kalır. Öbür ilmeği menteşenin yanında yedirin.'
        : `Dikiş ile burs arasında kalan ${f.halves} çift dikilmez: iki kenar aynı biçimde yükselmediği için her çiftin yalnızca bir ilmeği bursun içinde kalır. Öbür ilmeği menteşenin yanında yedirin.`;
    return `${open} ${sew} ${eased}`;
  },
  work: 'Önce aşağıdaki tablodaki çiftleri, saat 6 hizasındaki hepsinden önce olmak üzere, iğneleyin ya da bağlayın; sonra ilmek ilmek, her ilmeğin iki ipliğinin de altından geçerek dikin. Örgü ipliğini ya da sağlam naylon veya polyester iplik kullanın; boyu dikişin yaklaşık üç katı olsun.',
  care: (fixing) =>
    [
      'Dikkat: iğneleri ve toplu iğneleri işten önce ve sonra sayın; onları ve boncukları küçük çocuklardan uzak tutun.',
      ...fixedIn(fixing),
      'Gözlerinizi ve ellerinizi sık sık dinlendirin. Yaşadığınız ya da satış yaptığınız yerin kuralları önce gelir.',
    ].join(' '),
  columns: (f) => ['saat', f.front, f.back],
  row: (f) => [
    `saat ${f.frontHour} (“${f.backName}”: saat ${f.backHour})`,
    String(f.front),
    String(f.back),
  ],
};
