/** Titles and notes of what holds in the United Kingdom and Ireland, by the words of the set. */
export const kingdom = {
  'United Kingdom and Ireland': 'Reino Unido e Irlanda',
  'Cooked through': 'Cocido por completo',
  'Beef burgers, z = 6 °C': 'Hamburguesas de res, z = 6 °C',
  'Reheated before service or sale': 'Recalentado antes de servir o vender',
  'Unless that would spoil the food. Read in the identical text of 1995.':
    'Salvo que eso eche a perder el alimento. Leído en el texto idéntico de 1995.',
  'Cook-chill, cooked': 'Cocido y enfriado (cook-chill), cocción',
  'Cook-chill, reheated': 'Cocido y enfriado (cook-chill), recalentamiento',
  'Cook-chill, from cooking to 3 °C': 'Cocido y enfriado (cook-chill), de la cocción a 3 °C',
  'Cook-chill, chilling begun': 'Cocido y enfriado (cook-chill), comienzo del enfriamiento',
  'To begin within 30 min and then to 0-3 °C within 90 min.': 'Debe comenzar dentro de 30 min y luego llegar a 0-3 °C en 90 min.',
  'Cook-chill, stored': 'Cocido y enfriado (cook-chill), almacenamiento',
  'Cook-chill, life': 'Cocido y enfriado (cook-chill), vida útil',
  'Cook-chill, warmer than 5 °C (41 °F): eat within': 'Cocido y enfriado (cook-chill), por encima de 5 °C (41 °F): consumir antes de',
  'Cook-chill, warmer than this: destroy': 'Cocido y enfriado (cook-chill), más caliente que esto: destruir',
  'Cook-freeze, to −5 °C (23 °F)': 'Cocido y congelado (cook-freeze), hasta −5 °C (23 °F)',
  'Cook-freeze, stored': 'Cocido y congelado (cook-freeze), almacenamiento',
  'Ready for the refrigerator': 'Listo para el refrigerador',
  'Household: into the refrigerator': 'Hogar: al refrigerador',
  Chilled: 'Refrigerado',
  'Not for a plant to which Regulation (EC) 853/2004 applies; its figures are in the set of the European Union.':
    'No es para una planta a la que se aplica el Reglamento (CE) 853/2004; sus cifras están en el conjunto de la Unión Europea.',
  'Out of the cold on display or service, once': 'Fuera del frío en exhibición o servicio, una vez',
  'Read in the regulations of Northern Ireland alone, for all three nations.':
    'Leído solo en el reglamento de Irlanda del Norte, para las tres naciones.',
  'Below 63 °C (145.4 °F) on display, once': 'Por debajo de 63 °C (145.4 °F) en exhibición, una vez',
  'Else in a refrigerator or a cool ventilated place; no figure for cold.':
    'Si no, en un refrigerador o un lugar fresco y ventilado; no hay cifra para el frío.',
  'Refrigerator, good practice': 'Refrigerador, buena práctica',
  'Vacuum or modified atmosphere, 3 to 8 °C, no other control': 'Vacío o atmósfera modificada, de 3 a 8 °C, sin otro control',
  'Plain cuts of fresh beef, lamb, pork in vacuum': 'Cortes simples de res, cordero o cerdo frescos al vacío',
  'Whether it covers mince, cured or seasoned meat was not stated.': 'No se indicó si abarca carne molida, curada o sazonada.',
  'More than 10 days: heated': 'Más de 10 días: con calor',
  'At the slowest-heating point; 90 °C for 10 min and equal lethality.':
    'En el punto que más tarda en calentarse; 90 °C durante 10 min y letalidad igual.',
  'More than 10 days: acid': 'Más de 10 días: con acidez',
  'More than 10 days: salt': 'Más de 10 días: con sal',
  'More than 10 days: water activity': 'Más de 10 días: por actividad de agua',
  'Nitrite added, heat-treated meat products': 'Nitrito agregado, productos cárnicos con tratamiento térmico',
  'Nitrite added, meat products not heat-treated': 'Nitrito agregado, productos cárnicos sin tratamiento térmico',
  'Nitrite added, sterilised meat products': 'Nitrito agregado, productos cárnicos esterilizados',
  'Nitrate added, meat products not heat-treated': 'Nitrato agregado, productos cárnicos sin tratamiento térmico',
  'Inferred: the change of 2023 came after the United Kingdom had left. Check before use.':
    'Deducido: el cambio de 2023 llegó después de la salida del Reino Unido. Revíselo antes de usarlo.',
  'Nitrite left in dry-cured bacon': 'Nitrito que queda en tocino curado en seco',
  'Printed so in 2012; whether Great Britain has changed it since was not read.':
    'Impreso así en 2012; no se leyó si Gran Bretaña lo ha cambiado desde entonces.',
  'Nitrate left in dry-cured bacon': 'Nitrato que queda en tocino curado en seco',
  'May come of nitrite by conversion. Printed so in 2012; whether Great Britain has changed it since was not read.':
    'Puede venir de nitrito por conversión. Impreso así en 2012; no se leyó si Gran Bretaña lo ha cambiado desde entonces.',
  'Nitrite left in Wiltshire bacon': 'Nitrito que queda en tocino Wiltshire',
  'Nitrite left in dry-cured and Wiltshire ham': 'Nitrito que queda en jamón curado en seco y Wiltshire',
  'Nitrate left in dry-cured ham': 'Nitrato que queda en jamón curado en seco',
  'Nitrite left in dry-cured ham': 'Nitrito que queda en jamón curado en seco',
};
