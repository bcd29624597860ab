import { allergens } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { CheckField } from '../../../ui/check-field';
import { useSay } from '../../../ui/voice';
import css from './items.module.css';
import type { Allergen } from './item-draft';

/** The nine major food allergens (21 U.S.C. 321(qq)). */
export function AllergensField({ chosen, onChange }: { chosen: Allergen[]; onChange: (chosen: Allergen[]) => void }) {
  const say = useSay('items');
  return (
    <fieldset>
      <legend className={css.legend}>{say('allergens-in-it')}</legend>
      <div className={css.allergens}>
        {allergens.map((each) => (
          <CheckField
            key={each}
            label={say(codeOf('allergen', each))}
            checked={chosen.includes(each)}
            onChange={(isIn) => onChange(allergens.filter((other) => (other === each ? isIn : chosen.includes(other))))}
          />
        ))}
      </div>
    </fieldset>
  );
}
