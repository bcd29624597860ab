/** What every page may say: the first words a device has. */
export const shared = {
  show: 'Show',
  hide: 'Hide',
  'show-what-is-written': 'Show what is written',
  'hide-what-is-written': 'Hide what is written',
  'try-again': 'Try again',
  'no-connection': 'No connection to the record book.',
  'kept-until-connected': 'Entries you make are kept on this device and sent when the connection is back.',
  'page-failed': 'Something went wrong on this page.',
  'still-kept': 'What was kept on this device is still there. Try again; if it stays, start the page afresh.',
} as const;
