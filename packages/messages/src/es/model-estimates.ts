import type { modelEstimates as english } from '../en/model-estimates';
import { translated } from '../translated';

export const modelEstimates = translated<typeof english>()({
  'growth-set-beef': 'Juneja et al. 2011, res cocida sin curar',
  'growth-set-chicken': 'Juneja et al. 2011, pollo cocido sin curar',
  'growth-set-pork': 'Juneja et al. 2011, cerdo cocido sin curar',
  'killed-about': 'unos {logs} ({set}; estimación de un modelo{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'killed-more-than': 'más de {logs} ({set}; estimación de un modelo{standing, select, confirmed {} other {, cifras sin confirmar}})',
  grown: '{estimate} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown+most':
    '{estimate}; entre las lecturas puede ser {most} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-at-least':
    'como mínimo {estimate} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-at-least+most':
    'como mínimo {estimate}; entre las lecturas puede ser {most} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-below-0.5-log': 'menos de 0.5 log₁₀',
  'grown-0.5-to-1-log': 'de 0.5 a 1 log₁₀',
  'grown-1-to-2-log': 'de 1 a 2 log₁₀',
  'grown-above-2-log': 'más de 2 log₁₀',
  'growth-claim':
    'Del lado seguro en todos los casos sin curar que se compararon, por lo general de 0 a 1.5 log, en un estudio de 2 a 5; no se halló ningún caso del lado inseguro, pero la muestra es pequeña y en parte de los propios autores del modelo. Una sola cifra no es mejor que ± 1 log. No toma en cuenta sal, pH ni cura.',
  'estimate-of-other-products': 'Estimación de un modelo: D y z se midieron en otros productos; un factor de dos a tres es normal.',
});
