import type { LimitRow } from '../limit-set';
import { atLeast, atMost, celsius, figure, from } from '../write-row';
import { hygiene, microbiology } from './works';

const usual = { isDefault: true } as const;
const remembered = { known: 'from memory' } as const;

export const hygieneRows: readonly LimitRow[] = [
  from(hygiene, 'receiving')(
    'received-chilled',
    'Fresh meat of hoofed animals, throughout',
    's. I, ch. VII',
    atMost(celsius(7)),
  ),
  from(hygiene, 'receiving')('received-offal', 'Offal', 's. I, ch. VII', atMost(celsius(3))),
  from(hygiene, 'receiving')('received-poultry', 'Poultry', 's. II', atMost(celsius(4))),
  from(hygiene, 'receiving')('mince-raw-poultry', 'Poultry going into mince', 's. V, ch. III(1)', atMost(celsius(4))),
  from(hygiene, 'receiving')('mince-raw-offal', 'Offal going into mince', 's. V, ch. III(1)', atMost(celsius(3))),
  from(hygiene, 'receiving')('mince-raw-other', 'Other meat going into mince', 's. V, ch. III(1)', atMost(celsius(7))),
  from(hygiene, 'cold holding')(
    'cold-holding-mince',
    'Minced and mechanically separated meat',
    's. V, ch. III(2)(c)',
    atMost(celsius(2)),
  ),
  from(hygiene, 'cold holding')(
    'cold-holding-preparations',
    'Meat preparations',
    's. V, ch. III(2)(c)',
    atMost(celsius(4)),
  ),
  from(hygiene, 'frozen holding')(
    'frozen-holding',
    'Frozen mince and preparations',
    's. V, ch. III(2)(c)',
    atMost(celsius(-18)),
  ),
  from(hygiene, 'receiving')(
    'mince-age-poultry',
    'Poultry for mince, after slaughter',
    's. V, ch. III(2)(b)',
    figure('days after slaughter', 'days', { max: 3 }),
  ),
  from(hygiene, 'receiving')(
    'mince-age-other',
    'Other meat for mince, after slaughter',
    's. V, ch. III(2)(b)',
    figure('days after slaughter', 'days', { max: 6 }),
  ),
  from(hygiene, 'receiving')(
    'mince-age-boned-beef',
    'Boned vacuum-packed beef and veal for mince',
    's. V, ch. III(2)(b)',
    figure('days after slaughter', 'days', { max: 15 }),
  ),
  from(hygiene, 'cold holding')(
    'cutting-room',
    'Air of the cutting room',
    's. I, ch. V',
    atMost(celsius(12)),
    remembered,
  ),
  from(hygiene, 'instruments')('knife-water', 'Water for disinfecting knives', 's. V, ch. I(5)', atLeast(celsius(82)), {
    ...usual,
    known: 'read in the source',
  }),
  from(microbiology, 'keeping')(
    'listeria-growth',
    'Listeria, supports growth, ≤ 100 proven',
    '1.2',
    figure('L. monocytogenes', 'cfu/g', { max: 100 }),
    {
      ...usual,
      note:
        'n = 5, c = 0; through the shelf life. Not proven: not detected in 25 g before it leaves the producer, and since ' +
        '1 July 2026 through the shelf life too (Regulation (EU) 2024/2895, second hand).',
    },
  ),
  from(microbiology, 'keeping')(
    'listeria-no-growth',
    'Listeria, does not support growth',
    '1.3',
    figure('L. monocytogenes', 'cfu/g', { max: 100 }),
    { ...usual, note: 'n = 5, c = 0.' },
  ),
  from(microbiology, 'keeping')(
    'listeria-ph',
    'Not supporting Listeria: acidity',
    '1.3',
    figure('pH', 'pH', { max: 4.4 }),
    { note: 'Or pH ≤ 5.0 with water activity ≤ 0.94, or a life of less than 5 days.' },
  ),
  from(microbiology, 'keeping')(
    'listeria-aw',
    'Not supporting Listeria: water activity',
    '1.3',
    figure('water activity', 'aw', { max: 0.92 }),
  ),
  from(microbiology, 'keeping')(
    'listeria-ph-with-aw',
    'Not supporting Listeria: acidity with water activity ≤ 0.94',
    '1.3',
    figure('pH', 'pH', { max: 5 }),
  ),
  from(microbiology, 'keeping')(
    'listeria-aw-with-ph',
    'Not supporting Listeria: water activity with pH ≤ 5.0',
    '1.3',
    figure('water activity', 'aw', { max: 0.94 }),
  ),
  from(microbiology, 'keeping')(
    'listeria-short-life',
    'Not supporting Listeria: shelf life',
    '1.3',
    figure('shelf life', 'days', { max: 5, signs: { max: '<' } }),
    { known: 'second hand' },
  ),
];
