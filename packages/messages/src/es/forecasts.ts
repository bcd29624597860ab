import type { forecasts as english } from '../en/forecasts';
import { translated } from '../translated';

export const forecasts = translated<typeof english>()({
  'less-than-a-minute': 'menos de 1 min',
  'about-time': 'unos {time}',
  'in-less-than-a-minute': 'en menos de 1 min',
  'in-about-time': 'en unos {time}',
  'perhaps-never': 'quizá nunca',
  'expected-in': 'Se espera {target} {best}, lo más temprano {earliest}, lo más tarde {latest}.',
  'never-in-this-medium': 'Con esta temperatura del medio nunca se alcanza {target}.',
  'must-be-there': 'Debe llegar {when}.',
  'must-be-there-already': 'Ya tiene que haber llegado.',
  'cool-faster': 'Enfríe más rápido: medio más frío, más aire, piezas más chicas.',
  'check-heat-and-load': 'Revise el calor y la carga.',
  'take-more-readings': 'Tome más lecturas.',
  'medium-unusable': 'La temperatura del medio no es un número utilizable.',
  'target-no-temperature': 'El objetivo no es una temperatura utilizable.',
  'enter-it-again': 'Anótelo de nuevo.',
  'nothing-usable-read': 'No hay ninguna lectura utilizable.',
  'read-core-and-medium': 'Lea el centro y el medio, y otra vez diez minutos después.',
  'target-was-reached': 'Se alcanzó {target} en la última lectura.',
  'medium-unknown': 'No se leyó el medio que lo rodea, y las lecturas no dicen qué tan frío o caliente está.',
  'read-the-medium': 'Lea el aire o el agua que lo rodea.',
  'name-the-medium': 'Nombre en el plan el medio que lo rodea: así se podrá leer.',
  'few-falling-readings':
    'Hay {count, plural, one {# lectura que baja} other {# lecturas que bajan}} después del primer décimo del camino; hacen falta tres en 20 min.',
  'few-rising-readings':
    'Hay {count, plural, one {# lectura que sube} other {# lecturas que suben}} después del primer décimo del camino; hacen falta tres en 20 min.',
  'not-falling-to-medium': 'Las lecturas no bajan hacia el medio, o ya están demasiado cerca de él.',
  'not-rising-to-medium': 'Las lecturas no suben hacia el medio, o ya están demasiado cerca de él.',
  'medium-changed': 'El medio cambió: lo leído antes no cuenta.',
  'should-have-been-reached': '{target} debía alcanzarse hace {time}, y nadie lo ha leído desde entonces.',
  'read-core-now': 'Lea ahora la temperatura interna.',
});
