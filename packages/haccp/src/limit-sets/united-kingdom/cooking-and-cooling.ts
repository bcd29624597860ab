import type { Condition } from '../condition';
import type { LimitRow } from '../limit-set';
import { cookedProducts } from '../product-class';
import { atMost, celsius, cooled, figure, from, held, sinceCooking } from '../write-row';
import { burgers, cookChill1989, cookingAdvice, irishCookChill, scotland } from './works';

const at = (...among: string[]): Condition => ({ kind: 'place', among });
const cookChill: Condition = {
  kind: 'product',
  among: ['cook-chill dish', 'cooked whole muscle', 'cooked poultry', 'roast beef'],
};
const usual = { isDefault: true } as const;

const advice = from(cookingAdvice, 'cooking');
const irish = (purpose: 'cooking' | 'reheating' | 'cooling') => from(irishCookChill, purpose);
const old = (purpose: 'cooking' | 'reheating' | 'cooling' | 'cold holding' | 'keeping' | 'frozen holding') =>
  from(cookChill1989, purpose);

export const cookingAndCoolingRows: readonly LimitRow[] = [
  advice(
    'cook-equivalents',
    'Cooked through',
    'cooking your food',
    held([
      [celsius(60), '45m'],
      [celsius(65), '10m'],
      [celsius(70), '2m'],
      [celsius(75), '30s'],
      [celsius(80), '6s'],
    ]),
    { conditions: [{ kind: 'product', among: [...cookedProducts, 'patties'] }] },
  ),
  from(burgers, 'cooking')(
    'cook-burgers',
    'Beef burgers, z = 6 °C',
    'report',
    held([
      [celsius(65), '13.6m'],
      [celsius(70), '2m'],
      [celsius(75), '18s'],
    ]),
    { conditions: [{ kind: 'product', among: ['patties'] }] },
  ),
  from(scotland, 'reheating')(
    'reheat-scotland',
    'Reheated before service or sale',
    'Sch. 4, para. 3',
    held([[celsius(82), '0s']]),
    {
      conditions: [at('Scotland')],
      known: 'second hand',
      note: 'Unless that would spoil the food. Read in the identical text of 1995.',
    },
  ),
  irish('cooking')('cook-chill-cook', 'Cook-chill, cooked', 'Guidance Note 15', held([[celsius(75), '0s']]), {
    ...usual,
    conditions: [at('Ireland'), cookChill],
  }),
  irish('reheating')('cook-chill-reheat', 'Cook-chill, reheated', 'Guidance Note 15', held([[celsius(70), '0s']]), {
    ...usual,
    conditions: [at('Ireland'), cookChill],
  }),
  irish('cooling')(
    'cook-chill-cooling',
    'Cook-chill, from cooking to 3 °C',
    'Guidance Note 15',
    cooled(sinceCooking(celsius(3), 150)),
    { ...usual, conditions: [at('Ireland'), cookChill] },
  ),

  old('cooking')('cook-chill-1989-cook', 'Cook-chill, cooked', 'cook-chill', held([[celsius(70), '2m']]), {
    conditions: [cookChill],
  }),
  old('cooling')(
    'cook-chill-1989-start',
    'Cook-chill, chilling begun',
    'cook-chill',
    figure('time from the end of cooking to the start of chilling', 'min', { max: 30 }),
    { known: 'second hand', conditions: [cookChill] },
  ),
  old('cooling')(
    'cook-chill-1989-cooling',
    'Cook-chill, from cooking to 3 °C',
    'cook-chill',
    { ...cooled(sinceCooking(celsius(3), 120)), startWithinSeconds: 30 * 60 },
    { conditions: [cookChill], note: 'To begin within 30 min and then to 0-3 °C within 90 min.' },
  ),
  old('cold holding')(
    'cook-chill-1989-store-most',
    'Cook-chill, stored',
    'cook-chill',
    { ...atMost(celsius(3)), min: celsius(0) },
    { conditions: [cookChill] },
  ),
  old('keeping')(
    'cook-chill-1989-life',
    'Cook-chill, life',
    'cook-chill',
    figure('days, cooking and eating day counted', 'days', { max: 5 }),
    { conditions: [cookChill] },
  ),
  old('keeping')(
    'cook-chill-1989-excursion',
    'Cook-chill, warmer than 5 °C (41 °F): eat within',
    'cook-chill',
    figure('time to eat it', 'h', { max: 12 }),
    { conditions: [cookChill] },
  ),
  old('cold holding')(
    'cook-chill-1989-destroy',
    'Cook-chill, warmer than this: destroy',
    'cook-chill',
    atMost(celsius(10)),
    { conditions: [cookChill] },
  ),
  old('reheating')('cook-chill-1989-reheat', 'Cook-chill, reheated', 'cook-chill', held([[celsius(70), '2m']]), {
    conditions: [cookChill],
  }),
  old('frozen holding')(
    'cook-freeze-time',
    'Cook-freeze, to −5 °C (23 °F)',
    'cook-freeze',
    figure('time from entering the freezer to −5 °C', 'min', { max: 90 }),
    { conditions: [cookChill] },
  ),
  old('frozen holding')('frozen-holding', 'Cook-freeze, stored', 'cook-freeze', atMost(celsius(-18)), {
    conditions: [cookChill],
  }),
];
