import type { entries as english } from '../en/entries';
import { translated } from '../translated';
import { humidityKept } from './humidity-kept';

export const entries = translated<typeof english>()({
  ...humidityKept,
  'kept-times': 'al horno {intoOven}, con humedad desde {from}',
  yes: 'sí',
  no: 'no',
  'yes-seen': 'sí: {seen}',
  'no-seen': 'no: {seen}',
  probe: 'sonda {number}',
  'in-the-future': 'con fecha futura',
  'before-the-lot': 'con fecha anterior al inicio del lote',
  'out-of-order': 'anotado fuera de orden',
  'recorded-late': 'anotado más de 15 minutos después de tomarlo',
  'instrument-overdue': 'instrumento con la verificación vencida',
  'instrument-checked-later': 'la verificación de su instrumento se anotó solo después',
  'instrument-failed-later': 'su instrumento no pasó la verificación siguiente',
  'instrument-unknown': 'sin instrumento indicado',
  'lot-shipped-already': 'anotado después del envío del lote',
  'unusual-value': 'fuera de lo creíble, confirmado por la persona',
  'not-in-formula': 'no está en la fórmula del lote',
  'word-not-of-the-core': 'No es del centro',
  'word-time-is-right': 'La hora es correcta',
  'word-as-recorded': 'Tal como se anotó',
  'removed-loss-in-cooking': 'Merma en la cocción',
  'removed-loss-in-chilling': 'Merma en el enfriamiento',
  'removed-loss-in-drying': 'Merma en el secado',
  'removed-sample': 'Muestra',
  'removed-waste': 'Desecho',
  'removed-returned-to-supplier': 'Devuelto al proveedor',
  'removed-counted-difference': 'Diferencia de conteo',
});
