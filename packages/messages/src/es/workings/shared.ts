import type { shared as english } from '../../en/workings/shared';
import { translated } from '../../translated';
import { limitsCaution } from '../limits-caution';
import { substances } from '../substances';
import { setNames } from '../set-names';
import { modelEstimates } from '../model-estimates';

export const shared = translated<typeof english>()({
  ...limitsCaution,
  ...substances,
  ...setNames,
  ...modelEstimates,
  'caution-curing':
    'Las sales de cura son tóxicas en exceso: péselas en una báscula lo bastante fina, nunca por cucharadas, y guárdelas aparte y teñidas.',
  'caution-model':
    'La estimación de un modelo apoya una decisión y nunca la toma. Si el producto puede usarse lo decide una autoridad de procesos.',
  'against-limit': 'Frente al límite',
  'row-at-once': '{at}, sin tiempo de mantenimiento',
  'row-for': '{at} durante {time}',
  'judged-by-printed-row': 'una fila impresa',
  'judged-by-no-holding-time-needed': 'una temperatura que no necesita tiempo de mantenimiento',
  'judged-by-nothing-yet': 'nada todavía',
  'line-within': '{figure} en {time}',
  'counted-from-figure': 'contado desde {figure}',
  'counted-over-figure': 'contado por encima de {figure}',
  'from-cooking': 'fin de la cocción → {to}',
  'coldest-point-of-moist-product':
    'Medido en el punto más frío de producto húmedo, con su opción de humedad; entre 50 y 130 °F como máximo 6 h.',
  'salmonella-is-not-listeria': 'Que muera Salmonella no dice nada de Listeria monocytogenes, que aguanta más calor.',
  'no-open-model': 'Para producto curado no hay un modelo de crecimiento público con parámetros confirmados.',
  'judge-by-stages-and-cure': 'Evalúe por las etapas del programa de curados y por el nitrito y eritorbato pesados; decide una persona.',
  'nothing-read-of-cooling': 'No hay ninguna lectura utilizable del enfriamiento.',
  'nothing-read-of-cooling+probe': 'No hay ninguna lectura utilizable del enfriamiento de la sonda {probe}.',
  'one-reading-of-cooling': 'Hay una sola lectura del enfriamiento: no muestra ningún tiempo en que algo creciera o no.',
  'one-reading-of-cooling+probe':
    'Hay una sola lectura del enfriamiento de la sonda {probe}: no muestra ningún tiempo en que algo creciera o no.',
  'add-readings-of-cooling': 'Agregue las lecturas del enfriamiento, desde el fin de la cocción.',
  'd-and-z-vary': 'D y z se midieron en otros productos; un factor de dos a tres es normal. Léalos en medios logaritmos.',
  'lethality.figures': 'D {d} a {reference}, z {z}, líneas rectas entre {count, plural, one {# lectura} other {# lecturas}}',
  'time-in-all': 'En total, aunque no sin interrupción, hubo tiempo para {row}.',
  'set-mean-listeria': 'Listeria monocytogenes, media de muchos estudios',
  'set-mean-listeria-in-salt': 'Listeria monocytogenes, media de muchos estudios, 10 % de sal',
  'set-mean-salmonella': 'Salmonella, media de muchos estudios',
  'set-mean-ecoli': 'Escherichia coli, media de muchos estudios',
  'set-mean-perfringens': 'Clostridium perfringens, vegetativo, media de muchos estudios; las esporas sobreviven a la cocción',
  'growth.rule': 'R = suma de b²(T − Tmin)²(1 − e^(c(T − Tmax))) × tiempo; con latencia lg((1 + q0·10^R) ÷ (1 + q0))',
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
