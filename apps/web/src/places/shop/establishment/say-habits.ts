import type { EstablishmentFields } from '@larderbook/contracts';

export const unitsWords: Record<EstablishmentFields['units'], string> = { US: '°F and lb', metric: '°C and kg' };
export const paperWords: Record<EstablishmentFields['paper'], string> = { Letter: 'Letter, 8½ × 11 in', A4: 'A4, 210 × 297 mm' };
