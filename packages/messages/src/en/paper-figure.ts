/** The figure of a curve on paper. */
export const paperFigure = {
  'full-line': 'full line: {label}',
  dashed: 'dashed: {label}',
  dotted: 'dotted: {label}',
  'stage-missed': '{stage}: missed',
  'bracket-means': 'A bracket on a limit spans the two readings between which it was passed; its diamond, where a line does.',
  'cross-means': 'A cross: passed as a core cools.',
  'dotted-means': 'Dotted about a limit: what the thermometer may be wrong by.',
  'dots-mean': 'Fine dots: what the product lies in.',
  'hatched-means': 'Hatched: {label} expected, {state}; advice, never acceptance.',
  'reading-at': '{value} {unit} at {at}',
  'curve-runs': '{label}: {count, plural, one {# reading} other {# readings}}, from {first} to {last}',
  'limits-are': 'Limits: {limits}',
  'passed-between': '{label} passed between {after} and {by}',
  'expected-from': '{label} expected from {at}, {state}',
  'title-of-lines': '{title}: {lines}',
} as const;
