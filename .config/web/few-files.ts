const table = /packages[\\/]messages[\\/]src[\\/](en|es)[\\/]/;
/** What any page waits for: see ofBlocks and ofAccounts in apps/web/src/app/routes.tsx. */
const ofMostPages =
  /packages[\\/]messages[\\/]src[\\/](en|es)[\\/](shell|shared|faults|recording|explaining|accounts|entries|verdicts|limits)\.ts$/;

/** It waits for words while it is read, and these wait for what they share with it: it stands alone. */
const isEntry = (id: string) => /index\.html|[\\/]app[\\/]main\.tsx$/.test(id);
const isCode = (id: string) => !table.test(id);

/**
 * What many pages share stands in a few files: a tablet asks for a third as many before it shows a page, and for about as
 * many bytes. What one page alone needs, and the words of one place, is still fetched with it.
 */
export const fewFiles = [
  { name: 'first', test: (id: string) => !isEntry(id), tags: ['$initial' as const], priority: 4 },
  { name: (id: string) => ofMostPages.exec(id)?.[1] ?? null, priority: 3 },
  { name: 'most', test: isCode, minShareCount: 20, priority: 2 },
  { name: 'often', test: isCode, minShareCount: 4, priority: 1 },
];
