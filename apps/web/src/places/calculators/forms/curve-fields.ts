import type { FormField } from './form';

export const unit: FormField = { kind: 'unit', key: 'unit', label: 'unit' };
export const readings: FormField = {
  kind: 'series',
  key: 'readings',
  label: 'readings',
  hint: 'readings-hint',
  columns: [{ key: 'minutes' }, { key: 'value' }],
};
