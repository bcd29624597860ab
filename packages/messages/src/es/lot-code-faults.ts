import type { lotCodeFaults as english } from '../en/lot-code-faults';
import { translated } from '../translated';

export const lotCodeFaults = translated<typeof english>()({
  'lot-code-character': '“{character}” no puede estar en un código de lote; use de A a Z, de 0 a 9 y -.',
  'lot-code-too-long': '{lot} tiene {length, number} caracteres; un código de lote tiene {most, number} como máximo.',
  'no-day-of-the-calendar': '“{date}” no es un día del calendario.',
  'no-number-of-a-lot': '{number} no es el número de un lote; se cuentan desde 1.',
  'number-not-apart': "Separe '{n}' con - o con una letra, para que dos lotes no puedan recibir el mismo código.",
  'pattern-needs-day': "El patrón necesita el año y el día, como '{YY}{DDD}', para que ningún código se repita.",
  'pattern-needs-number': "El patrón necesita '{n}', para que dos lotes de un día se distingan.",
  'placeholder-unknown': '{placeholder} no se conoce; use {known}.',
  'product-code-missing': 'El patrón pide un código de producto y no hay ninguno.',
});
