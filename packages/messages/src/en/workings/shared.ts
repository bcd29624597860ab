import { limitsCaution } from '../limits-caution';
import { substances } from '../substances';
import { setNames } from '../set-names';
import { modelEstimates } from '../model-estimates';

/** What a calculation and the explanation of a verdict both say: cautions, estimates, substances, sets of figures. */
export const shared = {
  ...limitsCaution,
  ...substances,
  ...setNames,
  ...modelEstimates,
  'caution-curing': 'Curing salts are toxic in excess: weigh on a scale fine enough, never by spoon, and keep them apart and dyed.',
  'caution-model': 'A model estimate supports a decision and never makes it. Whether product may be used is for a process authority.',
  'against-limit': 'Against the limit',
  'row-at-once': '{at}, no holding time',
  'row-for': '{at} for {time}',
  'judged-by-printed-row': 'a printed row',
  'judged-by-no-holding-time-needed': 'a temperature that needs no holding time',
  'judged-by-nothing-yet': 'nothing yet',
  'line-within': '{figure} within {time}',
  'counted-from-figure': 'counted from {figure}',
  'counted-over-figure': 'counted over {figure}',
  'from-cooking': 'end of cooking → {to}',
  'coldest-point-of-moist-product':
    'Measured at the coldest point of moist product, with its humidity option; between 50 and 130 °F for at most 6 h.',
  'salmonella-is-not-listeria': 'Salmonella killed says nothing of Listeria monocytogenes, which stands more heat.',
  'no-open-model': 'No growth model with confirmed parameters is published in the open for cured product.',
  'judge-by-stages-and-cure': 'Judge by the stages of the cured schedule and by the nitrite and erythorbate weighed; a person decides.',
  'nothing-read-of-cooling': 'There is no usable reading of the cooling.',
  'nothing-read-of-cooling+probe': 'There is no usable reading of the cooling from probe {probe}.',
  'one-reading-of-cooling': 'There is one reading of the cooling: it shows no time in which anything grew or did not.',
  'one-reading-of-cooling+probe':
    'There is one reading of the cooling from probe {probe}: it shows no time in which anything grew or did not.',
  'add-readings-of-cooling': 'Add the readings of the cooling, from the end of cooking on.',
  'd-and-z-vary': 'D and z were measured in other products; a factor of two to three is normal. Read them in half logs.',
  'lethality.figures': 'D {d} at {reference}, z {z}, straight lines between {count, plural, one {# reading} other {# readings}}',
  'time-in-all': 'In all, though not without a break, there was time for {row}.',
  'set-mean-listeria': 'Listeria monocytogenes, mean of many studies',
  'set-mean-listeria-in-salt': 'Listeria monocytogenes, mean of many studies, 10 % salt',
  'set-mean-salmonella': 'Salmonella, mean of many studies',
  'set-mean-ecoli': 'Escherichia coli, mean of many studies',
  'set-mean-perfringens': 'Clostridium perfringens, vegetative, mean of many studies; spores survive cooking',
  'growth.rule': 'R = sum of b²(T − Tmin)²(1 − e^(c(T − Tmax))) × time; with lag lg((1 + q0·10^R) ÷ (1 + q0))',
  'growth-goes-on-before-the-first-reading': 'Growth may go on before the first reading: the figure is at least.',
  'growth-goes-on-after-the-last-reading': 'Growth may go on after the last reading: the figure is at least.',
  'ham-with': 'Ham with {nitrite} nitrite and {erythorbate} erythorbate, {cooling}',
  'cooled-in-any-of-nine': 'first stage 5, 7.5 or 10 h, second 10, 12.5 or 15 h',
  'cooled-in-ten-and-fifteen': '54.4 to 26.7 °C in 10 h, then 15 h',
  'seen-no-growth': 'no growth in any',
  'seen-below-one-log': 'below 1 log₁₀ over 25 h',
  'seen-early': '{logs} at 7.5 h',
  'seen-logs': '{logs}',
} as const;
