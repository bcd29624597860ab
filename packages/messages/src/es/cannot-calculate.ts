import type { cannotCalculate as english } from '../en/cannot-calculate';
import { translated } from '../translated';

export const cannotCalculate = translated<typeof english>()({
  'ask-for-the-certificate': 'Pida al proveedor el certificado de este lote.',
  'below-coldest-row': '{core} está por debajo de la fila más fría de esta tabla, {coldest}: no cuenta ningún tiempo de mantenimiento.',
  'below-coldest-row-authority':
    '{core} está por debajo de la fila impresa más fría, {coldest}: consulte a una autoridad de procesos para mantener así.',
  'binders-outweigh': 'Los ligantes pesan más que el producto terminado: revise los pesos.',
  'certificate-limit-on-another': 'El límite es de otra sustancia: elija uno de nitrito de sodio.',
  'content-unusable': 'Un contenido de {content} no se puede usar: indique un porcentaje mayor que 0 y de 100 como máximo.',
  'fat-too': 'Aquí la grasa y el agua agregada se juzgan juntas: indique también la grasa.',
  'humid-longer-than-cooked': 'No puede haber {humid} con humedad en {cooking} de cocción: cuente la humedad dentro del tiempo de cocción.',
  'meat-weighs-nothing': 'El bloque de carne no pesa nada: pese primero la carne recortada.',
  'meat-too': 'En inmersión hasta el equilibrio la carne también cuenta: indique su peso.',
  'no-binder': 'No se indica ningún ligante: pese por lo menos uno.',
  'no-first-weight': 'Falta el peso inicial: pese la pieza cuando se cuelga.',
  'no-holding-table': 'Este límite no tiene una tabla utilizable de tiempos de mantenimiento.',
  'no-reading-given': 'No hay ninguna lectura: indique por lo menos una.',
  'percent-or-weight': 'Indique el porcentaje o el peso, uno de los dos.',
  'percentages-above-zero': 'Indique porcentajes mayores que 0 y de 100 como máximo.',
  'picked-up-in-percent': 'Indique cuánta salmuera se absorbió, en porcentaje del peso verde.',
  'pumped-in-percent': 'Indique cuánto se inyectó, en porcentaje del peso verde.',
  'salt-unusable': 'Una sal de cura de {strength} no se puede usar: indique un porcentaje mayor que 0 y de 100 como máximo.',
  'target-unusable': '{target} no es un objetivo con dos decimales como máximo.',
  'too-much-for-the-pickle': '{aimed} con {pumped} pediría {salt} en {pickle} de salmuera: inyecte más o use una sal con más contenido.',
  'two-readings-at-least': 'Una cocción necesita por lo menos dos lecturas: fuera de ellas no se sabe nada.',
  'weigh-both': 'Pese ambos.',
  'weigh-them-first': 'Péselos primero.',
  'which-weight-is-which': 'Revise cuál peso es cuál.',
});
