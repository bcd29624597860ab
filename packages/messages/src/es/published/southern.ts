/** Titles and notes of what holds in Australia and New Zealand, by the words of the set. */
export const southern = {
  'Australia and New Zealand': 'Australia y Nueva Zelanda',
  'Cooked meat, site of microbiological concern': 'Carne cocida, punto de interés microbiológico',
  'Poultry, mince, liver': 'Ave, carne molida, hígado',
  'Proved on three occasions, then checked weekly (template of 2011).':
    'Se demuestra en tres ocasiones y después se verifica cada semana (modelo de 2011).',
  'Poultry, mince, liver, before 2017': 'Ave, carne molida, hígado, antes de 2017',
  Cooling: 'Enfriamiento',
  'Printed as less than 2 h and less than 4 h.': 'Impreso como menos de 2 h y menos de 4 h.',
  'Uncured cooked meat, to 50 °C': 'Carne cocida sin curar, hasta 50 °C',
  'Uncured cooked meat, from 50 °C': 'Carne cocida sin curar, desde 50 °C',
  'The last stage is printed as 1.6 h and 1 h 36 min, 10 h 6 min in all; an older table totals 10 h.':
    'La última etapa está impresa como 1.6 h y 1 h 36 min, 10 h 6 min en total; una tabla anterior suma 10 h.',
  'Cured cooked meat, to 50 °C': 'Carne cocida curada, hasta 50 °C',
  'Cured cooked meat, from 50 °C': 'Carne cocida curada, desde 50 °C',
  'Salt on the water phase may be meant as salt ÷ water; judged here as salt ÷ (salt + water), which is less.':
    'La sal en la fase acuosa puede entenderse como sal ÷ agua; aquí se evalúa como sal ÷ (sal + agua), que es menos.',
  'Uncured cooked meat, good practice in all': 'Carne cocida sin curar, buena práctica, en total',
  'Cured cooked meat, good practice in all': 'Carne cocida curada, buena práctica, en total',
  'Uncured cooked meat, simplified': 'Carne cocida sin curar, simplificado',
  'Cured cooked meat, simplified': 'Carne cocida curada, simplificado',
  'And 5 °C within 24 h of cooking.': 'Y 5 °C dentro de 24 h desde la cocción.',
  'Potentially hazardous food, cold': 'Alimento potencialmente peligroso, frío',
  'Potentially hazardous food, hot': 'Alimento potencialmente peligroso, caliente',
  'Potentially hazardous food at receipt': 'Alimento potencialmente peligroso en la recepción',
  'Or at least 60 °C, unless the carrier shows that the time taken keeps it safe.':
    'O por lo menos 60 °C, salvo que el transportista demuestre que el tiempo tomado lo mantiene seguro.',
  Cold: 'Frío',
  'Between 5 and 60 °C in all: use or refrigerate': 'Entre 5 y 60 °C en total: usar o refrigerar',
  'Between 5 and 60 °C in all: discard after': 'Entre 5 y 60 °C en total: desechar después de',
  'Rapidly; 75 °C is common advice.': 'Rápidamente; 75 °C es el consejo común.',
  'Carcass and meat, surface': 'Canal y carne, superficie',
  Offal: 'Vísceras',
  'Frozen meat': 'Carne congelada',
  'Nitrite in cured, processed and comminuted meat': 'Nitrito en carne curada, procesada y molida',
  'Nitrite and nitrate together, calculated as sodium nitrite, in the food as sold.':
    'Nitrito y nitrato juntos, calculados como nitrito de sodio, en el alimento como se vende.',
  'Nitrite in slow-dried and uncooked fermented meat': 'Nitrito en carne secada lentamente y fermentada sin cocer',
  'Nitrate in slow-dried and uncooked fermented meat': 'Nitrato en carne secada lentamente y fermentada sin cocer',
  'Nitrite in commercially sterile canned cured meat': 'Nitrito en carne curada enlatada comercialmente estéril',
  'Not a fermented product for this rule: core held at': 'No es producto fermentado para esta norma: centro mantenido a',
  'Or an equal combination. As the New South Wales Food Authority restates it.':
    'O una combinación igual. Como lo repite la New South Wales Food Authority.',
  'E. coli, none of five above': 'E. coli, ninguna de cinco por encima de',
  'E. coli, at most one of five above': 'E. coli, como máximo una de cinco por encima de',
  'Coagulase-positive staphylococci, none of five above': 'Estafilococos coagulasa positivos, ninguna de cinco por encima de',
  'Coagulase-positive staphylococci, at most one of five above':
    'Estafilococos coagulasa positivos, como máximo una de cinco por encima de',
  'n = 5, c = 1, m = 3.6.': 'n = 5, c = 1, m = 3.6.',
  'n = 5, c = 1, m = 1000.': 'n = 5, c = 1, m = 1000.',
};
