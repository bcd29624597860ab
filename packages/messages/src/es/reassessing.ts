import type { reassessing as english } from '../en/reassessing';
import { translated } from '../translated';

export const reassessing = translated<typeof english>()({
  edition: '{title}, edición {edition}',
  'edition-here': '{edition}, en uso aquí',
  reassess: '{point}: se basa en {built}. {otherwise} Reevalúe el plan.',
  'other-conditions': '{edition}, pide otras condiciones.',
  'other-conditions-doubt': '{edition}, pide otras condiciones, hasta donde se sabe.',
  'other-figure': '{edition}, imprime {there} en lugar de {here}.',
  'other-figure-doubt': '{edition}, imprime {there} en lugar de {here}, hasta donde se sabe.',
  'other-time': '{edition}, imprime {there} para {at} en lugar de {here}.',
  'other-time-doubt': '{edition}, imprime {there} para {at} en lugar de {here}, hasta donde se sabe.',
  'no-row': '{edition}, no tiene ninguna fila para {at}.',
  'no-row-doubt': '{edition}, no tiene ninguna fila para {at}, hasta donde se sabe.',
  'row-added': '{edition}, tiene además una fila para {at}: {there}.',
  'row-added-doubt': '{edition}, tiene además una fila para {at}, hasta donde se sabe: {there}.',
  'held-no-more': '{edition}, ya no la tiene.',
  elsewhere: 'Cifras de otros conjuntos: {points}. {edition}, no tiene ninguna cifra sobre ellas. Tenga archivado su respaldo.',
  'not-read':
    'Cifras de otros conjuntos: {points}. {edition}, se leyó en parte, y no sobre ellas: aquí no se sabe si las imprime de otra manera. Reevalúe el plan.',
  'no-holding-time': 'sin tiempo de mantenimiento',
  absent: 'no está',
  'what-figure': 'cifra',
  'what-conditions': 'condiciones',
  'what-force': 'peso',
  'what-known': 'conocida',
});
