import type { shared as english } from '../../en/workings/shared';
import { translated } from '../../translated';

export const shared = translated<typeof english>()({
  'caution-curing':
    'Las sales de cura son tóxicas en exceso: péselas en una báscula lo bastante fina, nunca por cucharadas, y guárdelas aparte y teñidas.',
  'caution-limits':
    'Un límite publicado es una referencia. Su plan debe validarse; deciden los códigos locales, el inspector y una autoridad de procesos con licencia.',
  'caution-model':
    'La estimación de un modelo apoya una decisión y nunca la toma. Si el producto puede usarse lo decide una autoridad de procesos.',
  'against-limit': 'Frente al límite',
  'substance-sodium-nitrite': 'nitrito de sodio',
  'substance-sodium-nitrate': 'nitrato de sodio',
  'substance-sodium-erythorbate': 'eritorbato de sodio',
  'substance-phosphate': 'fosfato',
  'row-at-once': '{at}, sin tiempo de mantenimiento',
  'row-for': '{at} durante {time}',
  'judged-by-printed-row': 'una fila impresa',
  'judged-by-no-holding-time-needed': 'una temperatura que no necesita tiempo de mantenimiento',
  'judged-by-nothing-yet': 'nada todavía',
  'd-and-z-vary': 'D y z se midieron en otros productos; un factor de dos a tres es normal. Léalos en medios logaritmos.',
  'lethality.figures': 'D {d} a {reference}, z {z}, líneas rectas entre {count, plural, one {# lectura} other {# lecturas}}',
  'time-in-all': 'En total, aunque no sin interrupción, hubo tiempo para {row}.',
  'killed-about': 'unos {logs} ({set}; estimación de un modelo{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'killed-more-than': 'más de {logs} ({set}; estimación de un modelo{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'set-salmonella-meat-table': 'Salmonella, según la tabla de carnes',
  'set-listeria-70-for-2': 'Listeria monocytogenes, 70 °C durante 2 min',
  'set-listeria-heated-slowly': 'Listeria monocytogenes, calentada despacio en una emulsión de carne',
  'set-listeria-liver-sausage': 'Listeria monocytogenes, en pasta de embutido de hígado',
  'set-ecoli-burgers': 'Escherichia coli O157, en hamburguesas, 70 °C durante 2 min',
  'set-mean-1': 'Listeria monocytogenes, media de muchos estudios',
  'set-mean-2': 'Listeria monocytogenes, media de muchos estudios, 10 % de sal',
  'set-mean-3': 'Salmonella, media de muchos estudios',
  'set-mean-4': 'Escherichia coli, media de muchos estudios',
  'set-mean-5': 'Clostridium perfringens, vegetativo, media de muchos estudios; las esporas sobreviven a la cocción',
  'growth-set-beef': 'Juneja et al. 2011, res cocida sin curar',
  'growth-set-chicken': 'Juneja et al. 2011, pollo cocido sin curar',
  'growth-set-pork': 'Juneja et al. 2011, cerdo cocido sin curar',
  'growth.rule': 'R = suma de b²(T − Tmin)²(1 − e^(c(T − Tmax))) × tiempo; con latencia lg((1 + q0·10^R) ÷ (1 + q0))',
  grown: '{estimate} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown+most':
    '{estimate}; a través de los huecos puede ser {most} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-at-least':
    'como mínimo {estimate} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-at-least+most':
    'como mínimo {estimate}; a través de los huecos puede ser {most} (estimación de un modelo; {set}, versión {version}{standing, select, confirmed {} other {, cifras sin confirmar}})',
  'grown-below-0.5-log': 'menos de 0.5 log₁₀',
  'grown-0.5-to-1-log': 'de 0.5 a 1 log₁₀',
  'grown-1-to-2-log': 'de 1 a 2 log₁₀',
  'grown-above-2-log': 'más de 2 log₁₀',
  'growth-claim':
    'Del lado seguro en todos los casos sin curar que se compararon, por lo general de 0 a 1.5 log, en un estudio de 2 a 5; no se halló ningún caso del lado inseguro, pero la muestra es pequeña y en parte de los propios autores del modelo. Una sola cifra no es mejor que ± 1 log. No toma en cuenta sal, pH ni cura.',
  'growth-goes-on-before-the-first-reading': 'Puede haber crecimiento antes de la primera lectura: la cifra es un mínimo.',
  'growth-goes-on-after-the-last-reading': 'Puede haber crecimiento después de la última lectura: la cifra es un mínimo.',
  'ham-with': 'Jamón con {nitrite} de nitrito y {erythorbate} de eritorbato, {cooling}',
  'cooled-in-any-of-nine': 'primera etapa de 5, 7.5 o 10 h, segunda de 10, 12.5 o 15 h',
  'cooled-in-ten-and-fifteen': 'de 54.4 a 26.7 °C en 10 h, luego 15 h',
  'seen-no-growth': 'sin crecimiento en ninguno',
  'seen-below-one-log': 'menos de 1 log₁₀ en 25 h',
  'seen-early': '{logs} a las 7.5 h',
  'seen-logs': '{logs}',
});
