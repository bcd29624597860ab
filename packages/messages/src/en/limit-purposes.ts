/** What a published limit is about. */
export const limitPurposes = {
  'purpose-receiving': 'Receiving',
  'purpose-cold-holding': 'Cold holding',
  'purpose-frozen-holding': 'Frozen holding',
  'purpose-hot-holding': 'Hot holding',
  'purpose-cooking': 'Cooking',
  'purpose-reheating': 'Reheating',
  'purpose-come-up': 'Come-up',
  'purpose-humidity': 'Humidity',
  'purpose-cooling': 'Cooling',
  'purpose-curing': 'Curing',
  'purpose-additive': 'Additive',
  'purpose-composition': 'Composition',
  'purpose-fermenting': 'Fermenting',
  'purpose-drying': 'Drying',
  'purpose-keeping': 'Keeping',
  'purpose-instruments': 'Instruments',
} as const;
