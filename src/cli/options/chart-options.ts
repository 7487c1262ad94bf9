import type { Command } from 'commander';
import { defaultEdges } from '../../core/beads/edges/keep-edges.js';
import { wishLimits } from '../../core/pattern/wish-limits.js';
import { defaultDetail } from '../../core/picture/importance/stitch-importance.js';
import { usualDarkCover } from '../../core/picture/sampling/drawing.js';
import { defaultLift } from '../../core/picture/tone/lift.js';
import type { Words } from '../../words/index.js';
import { bookletTable } from './booklet-option.js';
import {
  choice,
  decimal,
  flag,
  inGroup,
  line,
  offset,
  optionsOf,
  several,
  text,
  usually,
  whole,
} from './described.js';
import type { ValuesOf } from './described.js';
import { frameTable } from './frame-options.js';
import { outputTable, printTable, writeTable } from './output-options.js';
import { shapeTable } from './shape-options.js';
import { threadTable } from './thread-options.js';

const places = ['subject', 'fill', 'fit', 'inside'] as const;

/** What is read besides the picture. */
const filesTable = inGroup('files', {
  beads: text('--beads <FILE>', { said: 'beadsDefault' }),
  from: text('--from <FILE>', { said: 'none' }),
});

const howManyTable = inGroup('colours', {
  colours: usually(
    whole('--colours <K>', wishLimits.colours, { from: ({ colours }) => colours }),
    8,
  ),
  colors: whole('--colors <K>', wishLimits.colours),
});

/** How the picture lies, and how it is taken. */
const pictureTable = inGroup('picture', {
  place: choice('--place <HOW>', places, {
    said: 'placeDefault',
    from: ({ place }) => place.place,
  }),
  zoom: usually(
    decimal('--zoom <FACTOR>', wishLimits.zoom, { from: ({ place }) => place.zoom }),
    1,
  ),
  shift: usually(
    offset('--shift <X,Y>', {
      said: () => '0,0',
      from: ({ place: { shiftXmm = 0, shiftYmm = 0 } }) => [shiftXmm, shiftYmm],
    }),
    [0, 0],
  ),
  rotate: usually(
    decimal('--rotate <DEGREES>', wishLimits.degrees, {
      from: ({ place }) => place.rotateDegrees,
    }),
    0,
  ),
  mirror: flag('--mirror', { from: ({ place }) => place.mirror || undefined }),
  repeat: flag('--repeat', { from: ({ place }) => place.repeat || undefined }),
  art: usually(
    choice('--art <KIND>', ['auto', 'photo', 'drawing'], { from: ({ art }) => art }),
    'auto',
  ),
  paper: flag('--paper', { from: ({ paper }) => paper || undefined }),
  ink: usually(
    decimal('--ink <PERCENT>', wishLimits.inkPercent, { from: ({ inkPercent }) => inkPercent }),
    100 * usualDarkCover,
  ),
});

/** What of the picture counts, and how much; absent in a wish means none, not the usual. */
const weightTable = {
  ...inGroup('colours', {
    detail: usually(
      decimal('--detail <AMOUNT>', wishLimits.detail, { from: ({ detail }) => detail }),
      defaultDetail,
    ),
    edges: usually(
      decimal('--edges <AMOUNT>', wishLimits.edges, { from: ({ edges = 0 }) => edges }),
      defaultEdges,
    ),
    lift: usually(
      decimal('--lift <AMOUNT>', wishLimits.lift, { from: ({ lift = 0 }) => lift }),
      defaultLift,
    ),
  }),
  ...inGroup('picture', {
    mask: text('--mask <FILE>', { said: 'none' }),
    subject: text('--subject <WHAT>', {
      said: 'none',
      from: ({ subject }) => (subject === 'plain' ? subject : undefined),
    }),
  }),
};

/** The second panel. */
const backTable = inGroup('picture', {
  back: text('--back <WHAT>', {
    said: 'none',
    from: ({ back }) =>
      back === 'same' ? back : back && 'plain' in back ? `plain:${back.plain}` : undefined,
  }),
  backPlace: choice('--back-place <HOW>', places, {
    said: 'asFront',
    from: ({ backPlace }) => backPlace?.place,
  }),
  backZoom: decimal('--back-zoom <FACTOR>', wishLimits.zoom, {
    said: 'asFront',
    from: ({ backPlace }) => backPlace?.zoom,
  }),
  backShift: offset('--back-shift <X,Y>', {
    said: 'asFront',
    from: ({ backPlace }) => backPlace && [backPlace.shiftXmm ?? 0, backPlace.shiftYmm ?? 0],
  }),
  backRotate: decimal('--back-rotate <DEGREES>', wishLimits.degrees, {
    said: 'asFront',
    from: ({ backPlace }) => backPlace?.rotateDegrees,
  }),
  backMirror: choice('--back-mirror <YES>', ['yes', 'no'], {
    said: 'asFront',
    from: ({ backPlace }) => backPlace && (backPlace.mirror ? 'yes' : 'no'),
  }),
});

/** Which beads, and what is done with them. */
const beadsTable = inGroup('colours', {
  background: usually(
    text('--background <WHAT>', {
      from: ({ background }) => (typeof background === 'object' ? background.bead : background),
    }),
    'auto',
  ),
  keep: several('--keep <BEADS>', { said: 'none', from: ({ keep }) => keep }),
  leaveOut: several('--leave-out <BEADS>', { said: 'none', from: ({ leaveOut }) => leaveOut }),
  proof: usually(
    choice('--proof <HOW>', ['off', 'normal', 'long'], { from: ({ proof }) => proof }),
    'normal',
  ),
  useStock: flag('--use-stock', { from: ({ useStock }) => useStock || undefined }),
  tidy: usually(
    decimal('--tidy <PERCENT>', wishLimits.tidyPercent, { from: ({ tidy = 0 }) => tidy }),
    2,
  ),
  dither: decimal('--dither <STRENGTH>', wishLimits.dither, {
    said: 'off',
    from: ({ dither }) => dither,
  }),
});

/** Every option of `chart`, in the order of help. */
export const chartTable = {
  ...outputTable,
  ...filesTable,
  ...howManyTable,
  ...shapeTable,
  ...pictureTable,
  ...weightTable,
  ...backTable,
  ...beadsTable,
  ...frameTable,
  ...inGroup('printing', { title: line('--title <TEXT>', { said: 'titleDefault' }) }),
  ...threadTable,
  ...bookletTable,
  ...printTable,
  ...writeTable,
};

/** The values of the options of `chart`. */
export interface ChartOptions extends ValuesOf<typeof chartTable> {}

/** Adds every option of `chart`, each with its default shown in help. */
export function addChartOptions(command: Command, words: Words): Command {
  for (const one of optionsOf(chartTable, words)) command.addOption(one);
  return command;
}
