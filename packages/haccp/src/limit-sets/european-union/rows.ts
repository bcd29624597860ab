import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { curedCooked, uncookedCured, bacon, type ProductClass } from '../product-class';
import { atLeast, atMost, celsius, figure, from, ingoingAtMost, type Work } from '../write-row';

const hygiene: Work = {
  citation: 'Regulation (EC) 853/2004, Annex III',
  edition: 'as read in 2026, partly through a national interpretation',
  validFrom: '2004',
  force: 'law',
  known: 'second hand',
};
const microbiology: Work = {
  citation: 'Regulation (EC) 2073/2005, Annex I',
  edition: 'with (EU) 2024/2895',
  validFrom: '2005',
  force: 'law',
  known: 'read in the source',
};
const additives = (edition: string, validFrom: string, known: Work['known']): Work => ({
  citation: 'Regulation (EC) 1333/2008, Annex II',
  edition,
  validFrom,
  force: 'law',
  known,
});
const before = additives('until 9 October 2025', '2008', 'read in the source');
const after = additives('as amended by (EU) 2023/2108', '2025-10-09', 'second hand');
const only = (...among: ProductClass[]): { conditions: Condition[] } => ({ conditions: [{ kind: 'product', among }] });
const heated = only(...curedCooked);
const uncooked = only(...uncookedCured, 'bacon, pumped', 'bacon, immersed');
const traditional = only('dry-cured ham', 'bacon, dry-cured');
const sterilised = only('sterilised cured meat');
const usual = { isDefault: true } as const;
const remembered = { known: 'from memory' } as const;
const ended = { validUntil: '2025-10-08' } as const;
const perBatch =
  'Whether per kg of meat or of the whole batch is left open; judged here on the meat block, the strict side.';

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
    { ...usual, note: 'n = 5, c = 0; through the shelf life. Not proven: not detected in 25 g.' },
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
    { known: 'second hand', note: 'Or pH ≤ 5.0 with water activity ≤ 0.94, or a life of less than 5 days.' },
  ),
  from(microbiology, 'keeping')(
    'listeria-aw',
    'Not supporting Listeria: water activity',
    '1.3',
    figure('water activity', 'aw', { max: 0.92 }),
    remembered,
  ),
  from(microbiology, 'keeping')(
    'listeria-ph-with-aw',
    'Not supporting Listeria: acidity with water activity ≤ 0.94',
    '1.3',
    figure('pH', 'pH', { max: 5 }),
    { known: 'second hand' },
  ),
  from(microbiology, 'keeping')(
    'listeria-aw-with-ph',
    'Not supporting Listeria: water activity with pH ≤ 5.0',
    '1.3',
    figure('water activity', 'aw', { max: 0.94 }),
    { known: 'second hand' },
  ),
  from(microbiology, 'keeping')(
    'listeria-short-life',
    'Not supporting Listeria: shelf life',
    '1.3',
    figure('shelf life', 'days', { max: 5, signs: { max: '<' } }),
    { known: 'second hand' },
  ),
];

const old = from(before, 'curing');
export const nitriteBefore: readonly LimitRow[] = [
  old(
    'nitrite-preparations',
    'Nitrite added, named meat preparations',
    '08.2',
    figure('nitrite as NaNO₂, added', 'ppm', { max: 150 }),
    { ...usual, ...ended },
  ),
  old(
    'nitrite-uncooked',
    'Nitrite added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { ...uncooked, ...usual, ...ended, note: perBatch },
  ),
  old(
    'nitrate-uncooked',
    'Nitrate added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrate', 150, '150 mg/kg as NaNO₃'),
    { ...uncooked, ...usual, ...ended, note: perBatch },
  ),
  old(
    'nitrite-heat-treated',
    'Nitrite added, heat-treated',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 150, '150 mg/kg as NaNO₂'),
    { ...heated, ...usual, ...ended, note: perBatch },
  ),
  old(
    'nitrite-sterilised',
    'Nitrite added, sterilised (F₀ above 3.00)',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 100, '100 mg/kg as NaNO₂'),
    { ...sterilised, ...usual, ...ended, note: perBatch },
  ),
  old(
    'nitrite-dry-cured-residual',
    'Nitrite residual, dry-cured ham type',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 100 }),
    { ...only('dry-cured ham'), ...usual, ...ended },
  ),
  old(
    'nitrate-dry-cured-residual',
    'Nitrate residual, dry-cured ham type',
    '08.3.4',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 250 }),
    { ...only('dry-cured ham'), ...usual, ...ended },
  ),
  old(
    'nitrite-bacon-residual',
    'Nitrite residual, Wiltshire and dry-cured bacon',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 175 }),
    { ...only(...bacon), ...usual, ...ended },
  ),
  old(
    'nitrite-traditional',
    'Nitrite added, Vysočina, Lovecký salám and the like',
    '08.3.4.3',
    figure('nitrite as NaNO₂, added', 'ppm', { max: 180 }),
    { ...only('dry sausage'), ...usual, ...ended },
  ),
  old(
    'nitrate-rohwurst',
    'Nitrate alone, Rohwürste',
    '08.3.4.3',
    figure('nitrate as NaNO₃, added', 'ppm', { max: 300 }),
    { ...only('dry sausage'), ...usual, ...ended },
  ),
  old(
    'nitrate-long-cured',
    'Nitrate alone, long-cured salchichón, chorizo, saucisson sec',
    '08.3.4.3',
    figure('nitrate as NaNO₃, added', 'ppm', { max: 250 }),
    { ...only('dry sausage'), ...usual, ...ended },
  ),
  old(
    'nitrite-tongue-residual',
    'Nitrite residual, cured tongue',
    '08.3.4.1',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 50 }),
    { ...usual, ...ended },
  ),
  old(
    'nitrate-tongue-residual',
    'Nitrate residual, cured tongue',
    '08.3.4.1',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 10 }),
    { ...usual, ...ended },
  ),
  old(
    'nitrite-rohschinken-residual',
    'Nitrite residual, Rohschinken',
    '08.3.4',
    figure('nitrite as NaNO₂, residual', 'ppm', { max: 50 }),
    { ...traditional, ...usual, ...ended },
  ),
  old(
    'nitrate-rohschinken-residual',
    'Nitrate residual, Rohschinken',
    '08.3.4',
    figure('nitrate as NaNO₃, residual', 'ppm', { max: 250 }),
    { ...traditional, ...usual, ...ended },
  ),
];

const now = from(after, 'curing');
export const nitriteAfter: readonly LimitRow[] = [
  now(
    'nitrite-preparations',
    'Nitrite added, named meat preparations',
    '08.2',
    figure('nitrite as NO₂ ion, added', 'ppm', { max: 80 }),
    remembered,
  ),
  now(
    'nitrite-uncooked',
    'Nitrite added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { ...uncooked, note: perBatch },
  ),
  now(
    'nitrate-uncooked',
    'Nitrate added, not heat-treated',
    '08.3.1',
    ingoingAtMost('sodium nitrate', 90, '90 mg/kg as NO₃ ion', 'NO₃'),
    { ...uncooked, note: perBatch },
  ),
  now(
    'nitrite-heat-treated',
    'Nitrite added, heat-treated',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 80, '80 mg/kg as NO₂ ion', 'NO₂'),
    { ...heated, note: perBatch },
  ),
  now(
    'nitrite-sterilised',
    'Nitrite added, sterilised (F₀ above 3.00)',
    '08.3.2',
    ingoingAtMost('sodium nitrite', 55, '55 mg/kg as NO₂ ion', 'NO₂'),
    { ...sterilised, note: perBatch },
  ),
  now(
    'nitrite-residual',
    'Nitrite residual, from all sources, through the shelf life',
    '08.3.1, 08.3.2',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 45 }),
    { ...only(...curedCooked, ...uncookedCured), ...remembered },
  ),
  now(
    'nitrite-sterilised-residual',
    'Nitrite residual, sterilised',
    '08.3.2',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 25 }),
    { ...sterilised, ...remembered },
  ),
  now(
    'nitrite-dry-cured-residual',
    'Nitrite residual, dry-cured ham type',
    '08.3.4',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 65 }),
    only('dry-cured ham'),
  ),
  now(
    'nitrate-dry-cured-residual',
    'Nitrate residual, dry-cured ham type',
    '08.3.4',
    figure('nitrate as NO₃ ion, residual', 'ppm', { max: 150 }),
    only('dry-cured ham'),
  ),
  now(
    'nitrite-bacon-residual',
    'Nitrite residual, Wiltshire and dry-cured bacon',
    '08.3.4',
    figure('nitrite as NO₂ ion, residual', 'ppm', { max: 105 }),
    { ...only(...bacon), ...remembered },
  ),
  from({ ...after, citation: 'Commission Decision (EU) 2024/1225', edition: '30 April 2024' }, 'curing')(
    'nitrite-denmark',
    'Nitrite added, Denmark',
    'general figure',
    ingoingAtMost('sodium nitrite', 60, '60 mg/kg as NaNO₂'),
    { conditions: [{ kind: 'place', among: ['Denmark'] }, ...heated.conditions], ...remembered },
  ),
];
