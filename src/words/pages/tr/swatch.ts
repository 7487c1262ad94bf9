import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, short } = numbersIn('tr');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Kendi ilmeğinizi ölçün',
    describe:
      'Deneme parçası nasıl örülür ve ölçülür; üzerine konduğu dönme göstergesiyle birlikte, %100 ölçekte yazdırılır.',
    intro:
      'Her el başka bir ilmek örer. Küçük bir deneme parçası, sizinkinin ne kadar yüksek, geniş ve eğik olduğunu söyler; böylece şema da bitmiş boy da elinize uyar.',
    steps: (f) => [
      {
        head: 'Örün.',
        text: `Yumağın ipliğine tek renkte ${count(f.beads)} boncuk (${f.size}) dizin; cüzdanın ipliği ve tığıyla ${f.wedges} dilimli ${f.rounds} sıra örün, her ilmekte bir boncuk olsun (ilmeğin nasıl örüldüğünü son yaprak söyler), artırma her dilimin ${{ first: 'ilk', middle: 'ortadaki', last: 'son' }[f.increase]} ilmeğinde, ${f.construction === 'spiral' ? 'spiral olarak' : 'her sıra kapatılarak'}, ${f.hand === 'right' ? 'sağ' : 'sol'} elle. ${f.fromRound}. sıradan sonra ipliği tığdan 1 m uzakta işaretleyin.`,
      },
      {
        head: 'İşaretleyin.',
        text: `${f.fromRound}. sırada ve ${f.toRound}. sırada ${f.markedWedge}. dilimin ilk ilmeğine parlak renkli iplikten bir halka takın${f.markedWedge === 1 ? ' (sıranın ilk ilmeği)' : ''}.`,
      },
      {
        head: 'Bakın.',
        text: 'Nemlendirin, elinizle düzleyin, kurumaya bırakın. Düz duruyor mu? Kâse gibi kalkıyorsa ya da kenarı dalgalanıyorsa bunu yazın ve 4. adımı atlayın.',
      },
      {
        head: 'En.',
        text: 'En geniş yer, boncukların dış kenarından, kumpasla ya da dik duran iki takoz arasında.',
      },
      {
        head: 'Kenar boyunca.',
        text: `${f.rimWedge}. dilimin ortasında son sıra boyunca, boncukların ortasından geçecek biçimde 50 mm iplik yatırın ve boncuk ortasından boncuk ortasına ilmekleri sayın. Yarımlar da sayılır.`,
      },
      {
        head: 'Dönme.',
        text: `Parçayı göstergeye koyun: boncuklar üstte, delik artının üzerinde, ${f.fromRound}. sıranın işaretli ilmeği 0 çizgisinde. Cetveli artıdan ${f.toRound}. sıranın işaretli ilmeğinin üzerinden geçirin: dereceyi ve örme yönünde mi, karşı yönde mi olduğunu okuyun.`,
      },
      {
        head: 'İplik.',
        text: `${f.fromRound}. sıranın sonundan işaret tığa gelene kadar bu bir metre kaç ilmek verdi?`,
      },
      { head: 'Boncuk.', text: '50 boncuk dizin, birbirine yaslayın, diziyi ölçün.' },
    ],
    write: 'Yazın',
    blanks: (f) => [
      'düz, kâse ya da dalgalı',
      'en, mm',
      '50 mm kenarda ilmek',
      `dönme, ${f.fromRound}–${f.toRound}. sıra, derece`,
      'örme yönünde ya da karşı',
      '1 m iplikten ilmek',
      '50 boncuk, mm',
      'ilmek 1–3 (son yaprak)',
    ],
    then: 'Sonra bu sayıları, 1. adımda yazanlarla birlikte, şemanın yapıldığı yere girin: programda “Panel”, “Benim ilmeğim”.',
    stitchTitle: 'İlmek',
    stitchIntro:
      'Cüzdanı hangisiyle örecekseniz onu alın ve ondan ayrılmayın: boyu iplik, tığ, altından geçilen iplikler ve el belirler. Biriyle örülen deneme parçası öbürleri için bir şey söylemez. Numarasını ilk yaprağa yazın.',
    ways: {
      'both-loops': 'Sık iğne, iki ipliğin de altından',
      'bead-side-loop': 'Aynısı tek ipliğin altından, boncukların tarafındaki iplik',
      slip: 'Kaydırma ilmek',
    },
    gaugeTitle: 'Dönme göstergesi',
    gaugeAlt:
      'Dereceli bir daire, üstte 0, altta 180, örme yönünde ve karşı yönde; ortasında deneme parçasının konduğu sıralar ve dilimler.',
    round: (r) => `${r}. sıra`,
    lean: (lean) => `kayma ${short(lean, 2)}`,
    with: 'örme yönünde',
    against: 'örme yönüne karşı',
    scale:
      '%100 ölçekte yazdırın, sığdırma kapalı olsun. Kareleri ölçün: yarım milimetreden fazla yanlışsa ölçeklemeden yeniden yazdırın.',
    read: `Gri: parçayı ortalamak için olağan bir ilmeğin sıraları ve dilimleri. Derecelerin dışında: 0, ${short(0.25, 2)} ve ${short(0.5, 1)} ilmeklik kaymada işaretli ilmeğin geldiği yer.`,
  },
};
