import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('uk');
const { tenths, metres, cm } = amountsIn('uk');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}–${short(f[1], digits)}`;
const kinds = { 'half-round': 'півкруглий', squared: 'прямокутний', oval: 'овальний' };
const fixings = { sewn: 'пришивний', glued: 'вклеюваний' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Без запасу: биті й нерівні бісеринки не враховано.'
      : f.batch
        ? `Запас ${short(f.percent, 2)} %, не менше 30 бісеринок кожного виду, пораховано один раз на всі гаманці.`
        : `Запас ${short(f.percent, 2)} %, не менше 30 бісеринок кожного виду.`,
  noBeads: 'Бісер ще не вибрано.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Нитка для в’язання в колір бісеру${f.mostMm === undefined ? '' : `, завтовшки до ${short(f.mostMm, 2)} мм`}`}: ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`близько ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} г`]),
    ].join(', '),
  threadSum: (f) =>
    `${[
      `${many(f.stitches, { one: 'петля', few: 'петлі', many: 'петель', other: 'петлі' })} по ${short(f.perStitchMm, 1)} мм: ${tenths(f.netMm / 1000)} м`,
      ...(f.reservePercent === 0
        ? []
        : [`запас ${short(f.reservePercent, 1)} %: ще ${tenths(f.reserveMm / 1000)} м`]),
      `${many(f.tails, { one: 'кінець', few: 'кінці', many: 'кінців', other: 'кінця' })} по ${short(f.tailMm / 10, 1)} см: ще ${tenths(f.tailsMm / 1000)} м`,
    ].join('; ')}.`,
  lengths: (f) =>
    f.lengths === 1
      ? `Нанизаний бісер займає з цього ${fixed(f.strungMm / 1000, 2)} м, одним відрізком.`
      : `Нанизаний бісер займає з цього ${fixed(f.strungMm / 1000, 2)} м; відрізків: ${count(f.lengths)}.`,
  thickness: (f) =>
    `Крізь отвір бісеру ${f.size}, зазвичай ${short(f.holeMm, 2)} мм, проходить нитка до ${short(f.singleMostMm, 2)} мм; складена вдвоє біля вушка голки — до ${short(f.doubledMostMm, 2)} мм (близько ${short(f.doubledMostTex, 0)} текс: 1 г — близько ${short(1000 / f.doubledMostTex, 0)} м).`,
  thicknessGiven: (f) => {
    const start = `Товщина нитки ${short(f.diameterMm, 2)} мм, отвір бісеру ${f.size} зазвичай ${short(f.holeMm, 2)} мм:`;
    if (!f.single) return `${start} ЗАТОВСТА. Узяти тоншу нитку або більший бісер.`;
    return f.doubled
      ? `${start} проходить, і складена вдвоє біля вушка голки також.`
      : `${start} одинарна проходить, але складена вдвоє біля вушка голки — ні. Нанизувати проклеєним кінцем нитки або через петлю з тоншої нитки.`;
  },
  sewingThread: (f) =>
    `Міцна нитка для шиття, нейлонова або поліестерова, 70–135 текс або у 2–6 складень: ${metres(f.mm)}`,
  cord: (f) => `Клей для фермуара й паперовий шнур для його паза: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Гачок: який потрібен за зразком'
      : `Гачок ${range(f.range, 2)} мм, для ${f.size ?? 'цього бісеру'}: вирішує зразок`,
  needle: (f) =>
    f.range === undefined
      ? 'Бісерна голка, що проходить крізь бісер'
      : `Бісерна голка завтовшки ${range(f.range, 2)} мм: вона має проходити крізь кожну бісеринку`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Швейна голка й шпильки: для шва, фермуара й підкладки'
      : 'Швейна голка й шпильки: для кінців нитки й підкладки',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `ширина ${short(f.widthMm, 1)} мм`
        : `ширина близько ${short(f.widthMm, 0)} мм (підійде ${range(f.range, 0)} мм)`;
    return [
      f.pieces === 1 ? 'Фермуар' : `Фермуари, ${count(f.pieces)} шт.`,
      ...(f.kind === undefined ? [] : [kinds[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Тканина на підкладку, ${f.widthCm} x ${f.heightCm} см (із тканини завширшки ${f.clothWidthCm} см, на 2 см більше за крій): ${many(f.pieces, { one: 'шматок', few: 'шматки', many: 'шматків', other: 'шматка' })} ${f.pieceWidthCm} x ${f.pieceHeightCm} см, припуск ${short(f.allowanceMm, 1)} мм враховано`,
  crochetInstead: (f) =>
    `Підкладку можна й зв’язати: обидві деталі ще раз без бісеру, приблизно ${metres(f.mm)} нитки. Зшити їх, як деталі з бісером, вкласти всередину й пришити їхній край до краю гаманця вздовж фермуара.`,
  crochetedLining: (f) =>
    `На в’язану підкладку, ${many(f.pieces, { one: 'деталь', few: 'деталі', many: 'деталей', other: 'деталі' })} без бісеру: ${metres(f.mm)} нитки`,
  frameThread: (f) => `Прозора нейлонова нитка, щоб пришити фермуар: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'моток або котушка', few: 'мотки або котушки', many: 'мотків або котушок', other: 'мотка або котушки' })} по ${short(f.metres, 1)} м${f.cost === undefined ? '' : `, разом ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Гачок ${short(f.mm, 2)} мм: ним в’яжуть за цим описом`,
  marker:
    'Шматочок нитки іншого кольору — маркер початку ряду: його переносять вище в кожному ряду',
  mat: 'Килимок для бісеру й клейкі аркушики, щоб позначати рядок',
  pencil: 'М’який олівець або кравецька крейда для підкладки',
  seal: 'Запальничка (лише для синтетичних кінців) або засіб проти осипання',
  glue: 'Прозорий клей для тканини — на вузлики й кінці нитки',
  liningThread: 'Швейна нитка в колір підкладки',
  scissors: 'Маленькі гострі ножиці для нитки й тканини',
  samples:
    'Коди — це не номери з крамниці, а наші власні кольори-зразки: купувати за кольором і покриттям.',
  braid: (f) => `Тасьма, щоб закрити шов фермуара зсередини, за бажанням: ${cm(f.mm)}`,
  care: [
    'Кожна бісеринка — дрібна деталь, якою дитина до трьох років може вдавитися: тримати бісер, голки, ножиці й готові гаманці подалі від маленьких дітей. Гаманець — не іграшка.',
    'Якщо треба розбити неправильно нанизану бісеринку: надягти захисні окуляри, накрити бісеринку тканиною. Голки й гачки перелічити до і після роботи.',
    'Оплавляти лише синтетичні кінці й ніколи поруч із клеєм на розчиннику; коли клеїте, провітрювати.',
    'Металеві фермуари можуть містити нікель. Кожні пів години давати відпочинок очам і рукам; зупинитися, якщо щось болить.',
    'Це звичайні застереження, а не юридична порада: якщо продаєте, дізнайтеся про правила у себе й у покупців.',
  ],
};
