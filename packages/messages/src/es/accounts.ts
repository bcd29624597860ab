import type { accounts as english } from '../en/accounts';
import { translated } from '../translated';

export const accounts = translated<typeof english>()({
  'as-worded': '{said}',
  'of-point': '{point}: {said}',

  'delivery-accepted': 'Se aceptó la entrega {code} de {item}.',
  'delivery-corrected': 'Se corrigió la entrega {code}.',

  'deviation-open': 'La desviación {number} está abierta.',
  'next-record-action': 'Siguiente: anotar la acción correctiva.',
  'next-decide': 'Siguiente: decidir el destino de {undecided} de {atStake}.',
  'next-close': 'Siguiente: cerrarla.',
  'more-open': '{count, plural, one {Hay # más abierta.} other {Hay # más abiertas.}}',
  'packages-left-already': 'Ya salieron paquetes: considere un retiro del mercado.',

  'next-put-in-meat': 'Siguiente: agregar la carne.',
  'next-point': 'Siguiente: {point}. {what}',
  'missed-goes-on': '{point} no se cumplió y sigue en curso. Siguiente: terminarlo.',
  'point-stands': '{point} {stands, select, running {está en curso} missed {no se cumplió} other {está sin determinar}}.',
  'next-pack': 'Cada punto de control está cumplido o resuelto. Siguiente: empacarlo.',
  'all-to-rework': 'Se decidió reprocesar todo lo que queda de él. Siguiente: agregarlo a un lote posterior.',

  'packed-and-settled': 'Está empacado y cada punto de control está cumplido o resuelto.',
  'next-review': 'Siguiente: la revisión previa al envío.',
  'next-review-again': 'Siguiente: revisarlo de nuevo.',
  'so-many-may-ship':
    'La revisión previa al envío está firmada: se pueden enviar {left} de {count, plural, one {# paquete} other {# paquetes}}.',
  'so-much-may-ship':
    'La revisión previa al envío está firmada: se pueden enviar {weight} de él; lo demás que está empacado se decomisó o se va a reprocesar.',
  'not-met-by-now': 'Según las reglas actuales no se cumpliría {points}: revíselo de nuevo.',
  'packed-since':
    '{count, plural, one {# paquete se empacó después de firmarse la revisión y no se puede enviar.} other {# paquetes se empacaron después de firmarse la revisión y no se pueden enviar.}}',
  'signed-for-these': 'La revisión previa al envío está firmada para estos paquetes.',
  'rest-condemned': 'Lo que queda de él se decomisó.',
  'rest-condemned-or-to-rework': 'Lo que queda de él se decomisó o se va a reprocesar.',

  'all-left': '{count, plural, one {Ya salió el único paquete.} other {Ya salieron los # paquetes.}}',
  'nothing-left': 'No queda nada de él.',
  'all-condemned': 'Todo se decomisó y se mantiene separado. Siguiente: destruirlo y anotar cómo.',
  'all-destroyed': 'Todo se decomisó y se destruyó.',

  'review-taken-back': 'Se retiró la revisión: {reason}',
  'left-under-it':
    '{count, plural, one {Ya salió # paquete: considere un retiro del mercado.} other {Ya salieron # paquetes: considere un retiro del mercado.}}',
  'since-deviation': 'Se abrió la desviación {number} después de firmarse la revisión.',
  'since-reading':
    'Después de firmarse la revisión {did, select, recorded {se anotó} corrected {se corrigió} other {se anuló}} una lectura en {point}.',
  'since-stage-end': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} el término de {point}.',
  'since-clarification': 'Se aclararon lecturas en {point} después de firmarse la revisión.',
  'since-weighing': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} un pesaje.',
  'since-input': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} lo que entró al lote.',
  'since-packing': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} el empaque {code}.',
  'since-removal': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} lo sacado ({removed}).',
  'since-delivery': 'Después de firmarse la revisión {did, select, recorded {se anotó} other {se corrigió}} la entrega {code}.',
  'since-check': 'La verificación de {instrument} {did, select, failed {ha fallado} other {se corrigió}} después de firmarse la revisión.',
  'since-decision':
    'Después de firmarse la revisión {did, select, recorded {se anotó} corrected {se corrigió} other {se anuló}} la decisión sobre la desviación {number}.',
  'since-action':
    'Después de firmarse la revisión {did, select, corrected {se corrigió} other {se anuló}} la acción correctiva de la desviación {number}.',
  'since-closing': 'Se retiró el cierre de la desviación {number} después de firmarse la revisión.',
});
