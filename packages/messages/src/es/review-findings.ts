import type { reviewFindings as english } from '../en/review-findings';
import { translated } from '../translated';

export const reviewFindings = translated<typeof english>()({
  'nothing-put-in': 'No se ha agregado nada a este lote.',
  'put-in-the-meat': 'Agregue la carne desde su entrega.',
  'nothing-packed': 'No se ha empacado nada de este lote.',
  'pack-it': 'Empáquelo: se revisa lo que va a salir.',

  'point-met': '{point}: cada límite está cumplido.',
  'point-not-recorded': '{point}: no se anotó nada.',
  'point-running': '{point}: sigue en curso.',
  'point-missed': '{point}: no cumplido.',
  'point-undetermined': '{point}: sin determinar.',
  'point-missed-settled': '{point}: no cumplido, y resuelto.',
  'point-undetermined-settled': '{point}: sin determinar, y resuelto.',
  'finish-then-review': 'Termínelo y después revise.',
  'settle-its-deviation': 'Resuelva su desviación y ciérrela.',
  'open-a-deviation': 'Abra una desviación, resuélvala y ciérrela.',
  'open-about-substance': 'Abra una desviación sobre {substance}, resuélvala y ciérrela.',

  'too-few-in-time':
    '{point}: {count, plural, one {# lectura} other {# lecturas}}, con un máximo de {longest} sin ninguna; el plan pide por lo menos una cada {every}: faltan {missing}.',
  'too-few-in-lot':
    '{point}: {count, plural, one {# lectura} other {# lecturas}}; el plan pide {times, plural, one {por lo menos una} other {por lo menos #}} por lote: faltan {missing}.',
  'probes-not-read': '{point}: el plan nombra {probes}, y nadie la leyó.',
  'look-for-readings': 'Vea si se midió y no se anotó, o indique en la declaración por qué bastan menos.',

  'closed-decided': 'La desviación {number} está cerrada: {decided}.',
  'closed-without-product': 'La desviación {number} está cerrada; no había producto sobre el cual decidir.',
  'decided-release': '{weight} liberados',
  'decided-rework': '{weight} por reprocesar',
  'decided-condemn': '{weight} decomisados',
  'decided-return': '{weight} devueltos',
  'decided-recall': '{weight} retirados del mercado',
  'record-the-action': 'Anote la acción correctiva.',
  'decide-what-becomes': 'Decida el destino de {weight}.',
  'close-it': 'Ciérrela.',

  'meat-not-put-in': '{item} está en la fórmula y no se agregó.',
  'put-it-in': 'Agréguela, o indique en la declaración por qué se omitió.',
  'ingredient-not-weighed-in': '{item} está en la fórmula y no se pesó.',
  'weigh-it-in': 'Péselo, o indique en la declaración por qué se omitió.',
  'too-little-weighed-in': '{item}: se pesaron {weighed} para un objetivo de {target}, {off} de menos.',
  'too-much-weighed-in': '{item}: se pesaron {weighed} para un objetivo de {target}, {off} de más.',
  'too-little-in-parts': '{item}: se pesaron {weighed} para un objetivo de {target}, en {count} pesajes ({parts}), {off} de menos.',
  'too-much-in-parts': '{item}: se pesaron {weighed} para un objetivo de {target}, en {count} pesajes ({parts}), {off} de más.',
  'void-or-correct-weighing': 'Anule o corrija el pesaje si está mal. Si entró tanto, indique en la declaración que está permitido.',
  'allergens-beside': '{item} entró fuera de la fórmula y aporta {allergens}, que nada en la fórmula contiene.',
  'look-at-the-label': 'Asegúrese de que la etiqueta de estos paquetes lo indique, o no los deje salir.',

  'so-much-lost': 'Se perdieron {lost} de {wentIn}.',
  'so-much-lost-recorded': 'Se perdieron {lost} de {wentIn}, de los cuales {weighed} están anotados como pérdida.',
  'so-little-lost': 'Solo se perdieron {lost} de los {wentIn} que entraron.',
  'so-little-lost-recorded': 'Solo se perdieron {lost} de los {wentIn} que entraron, de los cuales {weighed} están anotados como pérdida.',
  'more-than-went-in': 'Salieron {more} más que los {wentIn} que entraron.',
  'more-than-went-in-recorded': 'Salieron {more} más que los {wentIn} que entraron, y {weighed} están anotados como pérdida.',
  'more-gone-than-expected': 'La fórmula espera que quede {yield}, una pérdida de {least} a {most}: faltan {beyond} más de lo que explica.',
  'more-left-than-expected':
    'La fórmula espera que quede {yield}, una pérdida de {least} a {most}: salieron {beyond} más de lo que explica.',
  'count-and-weigh-again': 'Cuente y pese los paquetes de nuevo, anote lo que se sacó o indique en la declaración qué fue de ello.',
  'weigh-again': 'Pese los paquetes de nuevo y busque lo que entró sin anotarse.',
  'left-under-review':
    '{count} de {code} salieron con el envío {number} para {customer} bajo la revisión de {who}, que se retiró: {reason}',
  'consider-a-recall': 'Considere retirarlos del mercado.',

  'entry-flagged': '{entry}, por {who}: {flags}.',
  'entry-corrects': '{entry}, por {who}: corrige una entrada anterior ({reason}).',
  'entry-corrects-flagged': '{entry}, por {who}: {flags}; corrige una entrada anterior ({reason}).',
  'entry-voided': '{entry}, por {who}: la anuló {by} ({reason}).',
  'thing-corrected': '{thing}: corregido por {who} ({reason}).',
  'thing-voided': '{thing}: anulado por {who} ({reason}).',
  'entry-clarified': '{entry}: {word}. {reason} ({who})',
});
