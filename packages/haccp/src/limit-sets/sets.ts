import type { Jurisdiction, LimitRow, LimitSet } from './limit-set';
import southern from './published/australia-new-zealand-2026.json';
import canada from './published/canada-2026.json';
import commonPractice from './published/common-practice.json';
import european2008 from './published/european-union-2008.json';
import european2025 from './published/european-union-2025.json';
import { chicken, meat, turkey } from './published/fsis-cooking-tables.json';
import kingdom from './published/united-kingdom-2026.json';
import inspected1999 from './published/us-inspected-1999.json';
import inspected2017 from './published/us-inspected-2017.json';
import inspected2021 from './published/us-inspected-2021.json';
import retail2013 from './published/us-retail-2013.json';
import retail2017 from './published/us-retail-2017.json';
import retail2022 from './published/us-retail-2022.json';
import retail2026 from './published/us-retail-2026.json';
import { readSet } from './read-set';
import type { SetFile } from './set-file';

const cookingTables = { meat, chicken, turkey };
const withCookingTables = (file: SetFile): SetFile => ({
  ...file,
  set: { ...file.set, holds: { ...file.set.holds, ...cookingTables } },
});

const files: readonly SetFile[] = [
  withCookingTables(inspected1999),
  inspected2017,
  withCookingTables(inspected2021),
  retail2013,
  retail2017,
  retail2022,
  retail2026,
  canada,
  kingdom,
  european2008,
  european2025,
  southern,
];

/** Older editions included: what a plan was built on stays readable. */
export const limitSets: readonly LimitSet[] = files.map((file) => readSet(file, [...files, commonPractice]));

export const limitSetById = (id: string): LimitSet | undefined => limitSets.find((set) => set.id === id);

/**
 * For retail, Food Code 2022: the establishment says which edition is adopted, and of the one of 2026 only two figures
 * are known.
 */
export const usualSetOf: Record<Exclude<Jurisdiction, 'own'>, string> = {
  'US, inspected establishment': 'us-inspected-2021',
  'US, retail and catering': 'us-retail-2022',
  Canada: 'canada-2026',
  'United Kingdom and Ireland': 'united-kingdom-2026',
  'European Union': 'european-union-2025',
  'Australia and New Zealand': 'australia-new-zealand-2026',
};

/** Confirmed, and marked so by their set. */
export const defaultsOf = ({ rows }: LimitSet): LimitRow[] =>
  rows.filter(({ isDefault, limit }) => isDefault === true && limit.source.confirmed);
