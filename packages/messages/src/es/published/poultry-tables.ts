/** Titles of the rows of FSIS’s tables for poultry, by the words of the set. */
export const poultryTables = {
  'Cooked poultry or mixed species, fat unknown, 7-log Salmonella':
    'Ave cocida o especies mezcladas, grasa desconocida, 7 log de Salmonella',
  'Cooked chicken, 1 % fat, 7-log Salmonella': 'Pollo cocido, 1 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 2 % fat, 7-log Salmonella': 'Pollo cocido, 2 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 3 % fat, 7-log Salmonella': 'Pollo cocido, 3 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 4 % fat, 7-log Salmonella': 'Pollo cocido, 4 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 5 % fat, 7-log Salmonella': 'Pollo cocido, 5 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 6 % fat, 7-log Salmonella': 'Pollo cocido, 6 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 7 % fat, 7-log Salmonella': 'Pollo cocido, 7 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 8 % fat, 7-log Salmonella': 'Pollo cocido, 8 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 9 % fat, 7-log Salmonella': 'Pollo cocido, 9 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 10 % fat, 7-log Salmonella': 'Pollo cocido, 10 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 11 % fat, 7-log Salmonella': 'Pollo cocido, 11 % de grasa, 7 log de Salmonella',
  'Cooked chicken, 12 % fat, above 12 % or unknown, 7-log Salmonella':
    'Pollo cocido, 12 % de grasa, más de 12 % o desconocida, 7 log de Salmonella',
  'Cooked turkey, 1 % fat, 7-log Salmonella': 'Pavo cocido, 1 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 2 % fat, 7-log Salmonella': 'Pavo cocido, 2 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 3 % fat, 7-log Salmonella': 'Pavo cocido, 3 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 4 % fat, 7-log Salmonella': 'Pavo cocido, 4 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 5 % fat, 7-log Salmonella': 'Pavo cocido, 5 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 6 % fat, 7-log Salmonella': 'Pavo cocido, 6 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 7 % fat, 7-log Salmonella': 'Pavo cocido, 7 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 8 % fat, 7-log Salmonella': 'Pavo cocido, 8 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 9 % fat, 7-log Salmonella': 'Pavo cocido, 9 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 10 % fat, 7-log Salmonella': 'Pavo cocido, 10 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 11 % fat, 7-log Salmonella': 'Pavo cocido, 11 % de grasa, 7 log de Salmonella',
  'Cooked turkey, 12 % fat, above 12 % or unknown, 7-log Salmonella':
    'Pavo cocido, 12 % de grasa, más de 12 % o desconocida, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 1 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 1 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 2 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 2 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 3 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 3 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 4 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 4 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 5 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 5 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 6 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 6 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 7 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 7 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 8 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 8 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 9 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 9 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 10 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 10 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 11 % fat, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 11 % de grasa, 7 log de Salmonella',
  'Cooked poultry, other or mixed species, 12 % fat, above 12 % or unknown, 7-log Salmonella':
    'Ave cocida, otra o varias especies, 12 % de grasa, más de 12 % o desconocida, 7 log de Salmonella',
  'Cooked chicken, 12 % fat, 7-log Salmonella': 'Pollo cocido, 12 % de grasa, 7 log de Salmonella',
};
