import type { FrameKind } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';
import { frame as frameWords } from './frame.js';

const { count, fixed, short } = numbersIn('tr');
const { tenths, metres, cm } = amountsIn('tr');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}–${short(f[1], digits)}`;
const kinds: Record<FrameKind, string> = frameWords.kinds;

export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) => {
    if (f.percent === 0) return 'Yedek yok: kırılan ve kusurlu boncuklar hesaba katılmadı.';
    const start = `Yedek payı %${short(f.percent, 2)}, her çeşitten en az 30 boncuk`;
    return f.batch ? `${start}; bütün cüzdanlar için bir kez hesaplandı.` : `${start}.`;
  },
  noBeads: 'Henüz hiçbir boncuk belirlenmedi.',
  crochetThread: (f) =>
    `${f.name ?? `Boncuklarla uyumlu renkte tığ işi ipliği${f.mostMm === undefined ? '' : `, en çok ${short(f.mostMm, 2)} mm kalınlığında`}`}: ${metres(f.mm)}${f.grams === undefined ? '' : `, yaklaşık ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} g`}`,
  threadSum: (f) => {
    const parts = [
      `her biri ${short(f.perStitchMm, 1)} mm iplik harcayan ${count(f.stitches)} ilmek için ${tenths(f.netMm / 1000)} m`,
      ...(f.reservePercent === 0
        ? []
        : [`%${short(f.reservePercent, 1)} yedek için ${tenths(f.reserveMm / 1000)} m`]),
      `her biri ${short(f.tailMm / 10, 1)} cm olan ${count(f.tails)} iplik ucu için ${tenths(f.tailsMm / 1000)} m`,
    ];
    return `Hesap: ${parts.join('; ')}.`;
  },
  lengths: (f) =>
    `Dizilmiş boncuklar bu ipliğin ${fixed(f.strungMm / 1000, 2)} m kadarını kaplar (${f.lengths === 1 ? 'tek dizi' : `${count(f.lengths)} dizi`}).`,
  thickness: (f) =>
    `Boncuk boyu ${f.size}: delik genellikle ${short(f.holeMm, 2)} mm; en çok ${short(f.singleMostMm, 2)} mm kalınlığında iplik geçer, iğne deliğinde ikiye katlanmış iplik ise en çok ${short(f.doubledMostMm, 2)} mm olabilir (yaklaşık ${short(f.doubledMostTex, 0)} tex: 1 g’ı yaklaşık ${short(1000 / f.doubledMostTex, 0)} m).`,
  thicknessGiven: (f) => {
    const start = `İpliğinizin kalınlığı ${short(f.diameterMm, 2)} mm, ${f.size} boncuğun deliği genellikle ${short(f.holeMm, 2)} mm:`;
    if (!f.single) return `${start} ÇOK KALIN. Daha ince iplik ya da daha büyük boncuk alın.`;
    return f.doubled
      ? `${start} geçer, iğne deliğinde ikiye katlanmışken de geçer.`
      : `${start} tek kat geçer, ama iğne deliğinde ikiye katlanmışken geçmez. Ucu sertleştirilmiş iplikle ya da daha ince iplikten bir ilmik yardımıyla dizin.`;
  },
  sewingThread: (f) =>
    `Sağlam dikiş ipliği, naylon ya da polyester, 70–135 tex veya 2–6 kat: ${metres(f.mm)}`,
  cord: (f) => `Burs için yapıştırıcı ve kanalını doldurmak için kâğıt ip: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Tığ: deneme parçanızın istediği numara'
      : `Tığ, ${f.size ?? 'bu boncuklar'} için ${range(f.range, 2)} mm: deneme parçanıza göre seçin`,
  needle: (f) =>
    f.range === undefined
      ? 'Boncuklarınızdan geçen boncuk iğnesi'
      : `Boncuk iğnesi, ${range(f.range, 2)} mm kalınlıkta: her boncuktan geçmelidir`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Dikiş iğnesi ve toplu iğne: dikiş, burs ve astar için'
      : 'Dikiş iğnesi ve toplu iğne: iplik uçları ve astar için',
  frame: (f) => {
    const start = f.pieces === 1 ? 'Klipsli çanta bursu' : `${count(f.pieces)} klipsli çanta bursu`;
    const kind = f.kind === undefined ? '' : `, ${kinds[f.kind]}`;
    const fixing = { sewn: ', dikilen tür', glued: ', yapıştırılan tür' };
    const wide =
      f.range === undefined
        ? `genişlik ${short(f.widthMm, 1)} mm`
        : `genişlik yaklaşık ${short(f.widthMm, 0)} mm (${range(f.range, 0)} mm olabilir)`;
    return `${start}${kind}${f.fixing ? fixing[f.fixing] : ''}, ${wide}`;
  },
  lining: (f) =>
    `Astar kumaşı, ${f.widthCm} x ${f.heightCm} cm (${f.clothWidthCm} cm enindeki kumaştan, kesimden 2 cm fazla): ${f.pieceWidthCm} x ${f.pieceHeightCm} cm boyutunda ${count(f.pieces)} parça, ${short(f.allowanceMm, 1)} mm dikiş payı içinde`,
  crochetInstead: (f) =>
    `Astar tığla da örülebilir: iki panel bir kez daha boncuksuz örülür, yaklaşık ${metres(f.mm)} iplik gider. Bunları paneller gibi birbirine dikin, içine yerleştirin ve kenarlarını burs boyunca cüzdanın kenarına dikin.`,
  crochetedLining: (f) =>
    `Örme astar için, boncuksuz ${count(f.pieces)} panel: ${metres(f.mm)} iplik`,
  frameThread: (f) => `Bursu dikmek için şeffaf naylon iplik: ${metres(f.mm)}`,
  spools: (f) =>
    `${short(f.metres, 1)} m’lik ${count(f.spools)} yumak ya da makara${f.cost === undefined ? '' : `, toplam ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Tığ, ${short(f.mm, 2)} mm: bu tarif bununla örülür`,
  marker: 'Sıra başını işaretlemek için başka renkte bir parça iplik: her sırada yukarı taşınır',
  mat: 'Boncuk matı ve kaldığınız satırı işaretlemek için yapışkan not kâğıtları',
  pencil: 'Astar için yumuşak kurşun kalem ya da terzi tebeşiri',
  seal: 'Çakmak (yalnızca sentetik uçlar için) ya da saçaklanma önleyici',
  glue: 'Düğümler ve iplik uçları için şeffaf kumaş yapıştırıcısı',
  liningThread: 'Astar renginde dikiş ipliği',
  scissors: 'İplik ve kumaş için küçük, keskin makas',
  samples:
    'Kodlar mağaza numarası değil, kendi örnek renklerimizdir: rengine ve yüzeyine bakarak alın.',
  braid: (f) => `İsterseniz bursun iç dikişini örtmek için şerit (harç): ${cm(f.mm)}`,
  care: [
    'Her boncuk, üç yaşından küçük bir çocuğun boğazına kaçıp boğulmasına yol açabilecek küçük bir parçadır: boncukları, iğneleri, makasları ve bitmiş cüzdanları küçük çocuklardan uzak tutun. Cüzdan oyuncak değildir.',
    'Yanlış bir boncuğu kırarken: koruyucu gözlük takın, boncuğun üzerini bezle örtün. İğneleri ve tığları işten önce ve sonra sayın.',
    'Isıyla yalnızca sentetik iplik uçlarını kapatın, bunu çözücülü yapıştırıcının yanında asla yapmayın; yapıştırırken odayı havalandırın.',
    'Metal burslar nikel içerebilir. Gözlerinizi ve ellerinizi yarım saatte bir dinlendirin; bir yeriniz ağrırsa durun.',
    'Bunlar alışılmış uyarılardır, hukuki danışmanlık değildir: satış yapıyorsanız sizin ve alıcılarınızın yaşadığı yerlerin kurallarına bakın.',
  ],
};
