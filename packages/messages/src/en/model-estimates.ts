/** A kill or a growth that a model gives, in a verdict and in a working: never without its set. */
export const modelEstimates = {
  'growth-set-beef': 'Juneja et al. 2011, cooked uncured beef',
  'growth-set-chicken': 'Juneja et al. 2011, cooked uncured chicken',
  'growth-set-pork': 'Juneja et al. 2011, cooked uncured pork',
  'killed-about': 'about {logs} ({set}; model estimate{standing, select, confirmed {} other {, figures not confirmed}})',
  'killed-more-than': 'more than {logs} ({set}; model estimate{standing, select, confirmed {} other {, figures not confirmed}})',
  grown: '{estimate} (model estimate; {set}, version {version}{standing, select, confirmed {} other {, figures not confirmed}})',
  'grown+most':
    '{estimate}, between the readings it may be {most} (model estimate; {set}, version {version}{standing, select, confirmed {} other {, figures not confirmed}})',
  'grown-at-least':
    'at least {estimate} (model estimate; {set}, version {version}{standing, select, confirmed {} other {, figures not confirmed}})',
  'grown-at-least+most':
    'at least {estimate}, between the readings it may be {most} (model estimate; {set}, version {version}{standing, select, confirmed {} other {, figures not confirmed}})',
  'grown-below-0.5-log': 'below 0.5 log₁₀',
  'grown-0.5-to-1-log': '0.5 to 1 log₁₀',
  'grown-1-to-2-log': '1 to 2 log₁₀',
  'grown-above-2-log': 'above 2 log₁₀',
  'growth-claim':
    'On the safe side in every uncured case compared, usually by 0 to 1.5 log, in one study by 2 to 5; no case on the unsafe side was found, but the sample is small and partly from the model’s own authors. A single figure is not better than ± 1 log. Salt, pH and cure are not in it.',
  'estimate-of-other-products': 'Model estimate: D and z were measured in other products; a factor of two to three is normal.',
} as const;
