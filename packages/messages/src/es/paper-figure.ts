import type { paperFigure as english } from '../en/paper-figure';
import { translated } from '../translated';

export const paperFigure = translated<typeof english>()({
  'full-line': 'línea llena: {label}',
  dashed: 'línea de rayas: {label}',
  dotted: 'línea de puntos: {label}',
  'stage-missed': '{stage}: no cumplido',
  'bracket-means':
    'Un corchete sobre un límite abarca las dos lecturas entre las que se pasó; su rombo, el punto en que lo pasa una recta.',
  'cross-means': 'Una cruz: pasado como se enfría un centro.',
  'dotted-means': 'Puntos junto a un límite: el error posible del termómetro.',
  'dots-mean': 'Puntos finos: aquello en que está el producto.',
  'hatched-means': 'Rayado: {label} esperado, {state}; es un aviso, nunca una aceptación.',
  'reading-at': '{value} {unit} el {at}',
  'curve-runs': '{label}: {count, plural, one {# lectura} other {# lecturas}}, de {first} a {last}',
  'limits-are': 'Límites: {limits}',
  'passed-between': '{label} pasado entre el {after} y el {by}',
  'expected-from': '{label} esperado desde el {at}, {state}',
  'title-of-lines': '{title}: {lines}',
});
