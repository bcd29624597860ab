/** Titles of the least water activity and pH at which organisms grow, by the words of the set. */
export const leastForGrowth = {
  'No growth at a lower water activity: campylobacter': 'Sin crecimiento con menos actividad de agua: Campylobacter',
  'No growth at a lower water activity: botulinum-non-proteolytic':
    'Sin crecimiento con menos actividad de agua: C. botulinum no proteolítico',
  'No growth at a lower water activity: o157': 'Sin crecimiento con menos actividad de agua: E. coli O157',
  'No growth at a lower water activity: salmonella': 'Sin crecimiento con menos actividad de agua: Salmonella',
  'No growth at a lower water activity: botulinum-proteolytic': 'Sin crecimiento con menos actividad de agua: C. botulinum proteolítico',
  'No growth at a lower water activity: perfringens': 'Sin crecimiento con menos actividad de agua: C. perfringens',
  'No growth at a lower water activity: listeria': 'Sin crecimiento con menos actividad de agua: L. monocytogenes',
  'No growth at a lower water activity: aureus-without-air': 'Sin crecimiento con menos actividad de agua: S. aureus sin aire',
  'No growth at a lower water activity: aureus': 'Sin crecimiento con menos actividad de agua: S. aureus',
  'No growth at a lower water activity: aspergillus-flavus': 'Sin crecimiento con menos actividad de agua: Aspergillus flavus',
  'No growth at a lower pH: perfringens': 'Sin crecimiento con un pH más bajo: C. perfringens',
  'No growth at a lower pH: campylobacter': 'Sin crecimiento con un pH más bajo: Campylobacter',
  'No growth at a lower pH: botulinum-proteolytic': 'Sin crecimiento con un pH más bajo: C. botulinum proteolítico',
  'No growth at a lower pH: o157': 'Sin crecimiento con un pH más bajo: E. coli O157',
  'No growth at a lower pH: listeria': 'Sin crecimiento con un pH más bajo: L. monocytogenes',
  'No growth at a lower pH: aureus': 'Sin crecimiento con un pH más bajo: S. aureus',
  'No growth at a lower pH: salmonella': 'Sin crecimiento con un pH más bajo: Salmonella',
  'Printed as 4.0 to 4.4.': 'Impreso como 4.0 a 4.4.',
};
