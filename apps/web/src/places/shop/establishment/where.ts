import type { Where } from './where-fields';

/** "Canada, Québec" */
export const whereOf = ({ jurisdiction, place }: Pick<Where, 'jurisdiction' | 'place'>): string =>
  [jurisdiction, place].filter(Boolean).join(', ');
