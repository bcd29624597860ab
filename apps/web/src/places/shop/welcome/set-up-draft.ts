import { establishmentFields, setUpShop, type EstablishmentFields } from '@larderbook/contracts';
import { check, type FieldErrors } from '../../../api/check';
import { deviceZone, usualHabits } from '../establishment/time-zones';

export type SetUpDraft = {
  establishment: EstablishmentFields;
  owner: { name: string; userName: string; password: string };
};
export type SetUpStep = 'shop' | 'habits' | 'owner' | 'look over';
export const setUpSteps: SetUpStep[] = ['shop', 'habits', 'owner', 'look over'];

/** Year, day of the year, number of the day: "26130-1". */
const usualPattern = '{YY}{DDD}-{n}';

export const emptyDraft = (language: string, zone = deviceZone()): SetUpDraft => ({
  establishment: { name: '', number: '', address: '', timeZone: zone, ...usualHabits(language), lotCodePattern: usualPattern },
  owner: { name: '', userName: '', password: '' },
});

const ofShop = establishmentFields.pick({ name: true, number: true, address: true, jurisdiction: true, place: true });
const ofHabits = establishmentFields.pick({ timeZone: true, units: true, paper: true });
const ofOwner = setUpShop.body.shape.owner.pick({ name: true, userName: true, password: true });

export function stepErrors(step: SetUpStep, { establishment, owner }: SetUpDraft): FieldErrors {
  if (step === 'shop') return check(ofShop, establishment).errors ?? {};
  if (step === 'habits') return check(ofHabits, establishment).errors ?? {};
  return step === 'owner' ? (check(ofOwner, owner).errors ?? {}) : {};
}

export function stepOf(errors: FieldErrors, code: string | undefined): SetUpStep | undefined {
  if (code === 'user-name-taken' || Object.keys(errors).some((field) => field.startsWith('owner'))) return 'owner';
  const [field] = Object.keys(errors).filter((each) => each.startsWith('establishment.'));
  if (!field) return undefined;
  return /\.(timeZone|units|paper)$/.test(field) ? 'habits' : 'shop';
}
