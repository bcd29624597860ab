import type { formulaConditions as english } from '../en/formula-conditions';
import { translated } from '../translated';

export const formulaConditions = translated<typeof english>()({
  'asks-nitrite-on-meat-block': 'por lo menos {least} de nitrito de sodio agregado sobre el bloque de carne',
  'asks-nitrite-on-batch': 'por lo menos {least} de nitrito de sodio agregado sobre la tanda',
  'asks-accelerator-on-meat-block': 'por lo menos {least} de eritorbato o ascorbato agregado sobre el bloque de carne',
  'asks-accelerator-on-batch': 'por lo menos {least} de eritorbato o ascorbato agregado sobre la tanda',
  'asks-salt-in-water-phase': 'por lo menos {least} de sal en la fase acuosa, {formula}',
});
