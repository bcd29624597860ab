import type { limitFaults as english } from '../en/limit-faults';
import { translated } from '../translated';

export const limitFaults = translated<typeof english>()({
  'band-not-warmer': 'El intervalo no termina más caliente de lo que empieza.',
  'bound-in-degrees': 'Solo una temperatura lleva °F o °C.',
  'bound-not-in-degrees': 'Un intervalo de temperaturas necesita sus cifras en °F o °C.',
  'bound-unusable': 'Una cifra del límite no es un número utilizable.',
  'degree-hours-base-unusable': 'La base o el pH no es un número utilizable.',
  'degree-hours-classes-unusable': 'Las clases no suben hasta una sin tope.',
  'degree-hours-unusable': 'Una cantidad de grados-hora no es un número entero mayor que cero.',
  'gap-unusable': 'Falta el hueco más largo que se tolera entre lecturas.',
  'growth-bound-unusable': 'El crecimiento permitido no es un número entero de centésimas de log mayor que cero.',
  'holding-times-unusable': 'La tabla de tiempos de mantenimiento está vacía o sus filas se contradicen.',
  'ion-not-held': 'La sustancia del límite no contiene {ion} que contar.',
  'kill-authority-missing': 'Nombre la autoridad de procesos que lo respalda y dónde está archivada la carta.',
  'kill-by-mean': 'Un promedio de muchos estudios no es base para decidir: la mitad de los casos resiste más.',
  'kill-floor-unusable': 'La temperatura desde la que se cuenta la letalidad no es un número utilizable.',
  'kill-law-slipped': 'D es menor que {d} o z menor que {z}: busque un punto decimal corrido.',
  'kill-law-unusable': 'D, z o la temperatura de referencia no es un número utilizable.',
  'kill-target-unusable': 'La meta no es un número entero de centésimas de log mayor que cero.',
  'least-above-most': 'El mínimo es mayor que el máximo.',
  'loss-no-percentage': 'La pérdida pedida no es un porcentaje mayor que 0.',
  'neither-least-nor-most': 'No hay ni mínimo ni máximo.',
  'stage-not-colder': 'Una etapa del enfriamiento no termina más fría de lo que empieza.',
  'thickness-unprinted': 'No hay ninguna fila impresa para {thickness}: el mayor grosor es 27 in (69 cm).',
  'thickness-unusable': 'El grosor no es un número utilizable.',
});
