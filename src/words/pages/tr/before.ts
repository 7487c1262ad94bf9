import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, sizeMm } = numbersIn('tr');

export const before: PageWords['booklet']['before'] = {
  swatch: 'Önce bir deneme parçası örün',
  swatchText: (f) =>
    `Kendi boncuk, iplik ve tığınızla, tek renkle, ${f.wedges} dilimli 10 sıra örün. Bunun için ${count(f.beads)} boncuk gerekir; başlangıcı, ilmeği ve artırmayı bu bölümdeki çizimler gösterir. Deneme parçasını düz bir yere yayın. Bu tarif ${fixed(f.widthMm, 2)} mm genişliğinde ilmeklere ve ${fixed(f.heightMm, 2)} mm yüksekliğinde sıralara göre hesaplanmıştır: deneme parçasının çapı 5 sıradan sonra yaklaşık ${sizeMm(f.five, 0)} mm, 10 sıradan sonra yaklaşık ${sizeMm(f.ten, 0)} mm olur. Sizinki daha büyükse daha ince, daha küçükse daha kalın bir tığ alın. Çanak gibi çukurlaşıyorsa ilmekler yüksekliklerine göre çok dardır; dalgalanıyorsa çok geniştir.`,
  hand: 'Hangi el ve hangi yüz',
  start: 'Nasıl başlanır ve sürdürülür',
  read: 'Sıra listesi nasıl okunur',
  string: 'Boncuklar nasıl dizilir',
  signs: 'İşaretler ve kısaltmalar',
  sign: 'İşaret',
  meaning: 'Anlamı',
  table: (second) => [
    ['S7', '7. sıra, ortadan sayılır'],
    ['A, B', 'boncuklar: harfler malzeme tablosundaki ve şemadaki gibidir'],
    ['3A', 'A boncuğuyla üç ilmek; dizme listesinde üç A boncuğu'],
    [`[A ${second}]`, 'alttaki tek bir ilmeğe örülen iki ilmek: artırma'],
    ['( ) x 7', 'ayraç içinde yazan, 7 kez'],
    ['boş', 'boncuksuz ilmek'],
    // M: si; many patterns write x, which here means «times».
    ['si', 'sık iğne'],
  ],
  smallChart: (f) =>
    `Şemada o kadar çok ilmek var ki bu kâğıtta harfler küçük kalıyor. Şemayı ekranda büyüterek okuyun ya da o sayfayı ${f.paper} kâğıda bastırın. Sıra listesi aynı şeyi yazıyla söyler.`,
};
