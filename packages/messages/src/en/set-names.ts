/** Sets of figures by which kill is worked out, where a limit, a verdict or a working names one. */
export const setNames = {
  'set-salmonella-meat-table': 'Salmonella, by the meat table',
  'set-listeria-70-for-2': 'Listeria monocytogenes, 70 °C for 2 min',
  'set-listeria-heated-slowly': 'Listeria monocytogenes, heated slowly in a meat emulsion',
  'set-listeria-liver-sausage': 'Listeria monocytogenes, in liver sausage slurry',
  'set-ecoli-burgers': 'Escherichia coli O157, in burgers, 70 °C for 2 min',
} as const;
