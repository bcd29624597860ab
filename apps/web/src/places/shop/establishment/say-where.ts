import type { Where } from './where-fields';

/** "Canada, Québec" */
export const sayWhere = ({ jurisdiction, place }: Pick<Where, 'jurisdiction' | 'place'>): string =>
  [jurisdiction, place].filter(Boolean).join(', ');
