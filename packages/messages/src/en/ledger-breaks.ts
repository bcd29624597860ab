/** Where the chain of the book breaks first, and how. */
export const ledgerBreaks = {
  'entry-out-of-place': 'Entry {seq} stands where entry {expected} belongs.',
  'entry-missing': 'Entry {seq} is missing.',
  'entries-missing': 'Entries {first} to {last} are missing.',
  'previous-hash-altered': 'The previous hash in entry {seq} was altered.',
  'entry-exchanged': 'Entry {seq} does not follow the entry before it: one was exchanged.',
  'hash-altered': 'The hash of entry {seq} was altered; its content is as written.',
  'content-altered': 'The content of entry {seq} does not give its hash: it was altered.',
  'hash-not-as-printed': 'The hash of entry {seq} is not the one printed on paper.',
  'ends-before-paper': 'The chain ends at entry {last}, but paper shows entry {latest}.',
  'records-list-altered': 'What entry {seq} says was added does not give its digest: it was altered.',
  'record-gone': 'The {table} {id} that entry {seq} recorded is gone.',
  'record-altered': 'The {table} {id} was altered after entry {seq} recorded it.',
  'ends-before-acknowledged': 'The chain ends at entry {last}, but writes were acknowledged up to entry {latest}.',
  'sign-in-altered': 'With what {person} signs in was changed after entry {seq} recorded it.',
  'sign-in-beside': '{person} can sign in, and no entry says so.',
  'record-beside': 'The {table} {id} was put in after entry {seq}, and no entry covers it.',
} as const;
