import type { PlainPhrase } from '../limits/verdict';
import type { LethalitySet } from './lethality-set';
import {
  ecoliO157InBurgers,
  lethalitySets,
  listeria70For2,
  listeriaHeatedSlowly,
  listeriaInLiverSausage,
  salmonellaByTheMeatTable,
} from './sets';

const codes = new Map<string, string>([
  [salmonellaByTheMeatTable.name, 'set-salmonella-meat-table'],
  [listeria70For2.name, 'set-listeria-70-for-2'],
  [listeriaHeatedSlowly.name, 'set-listeria-heated-slowly'],
  [listeriaInLiverSausage.name, 'set-listeria-liver-sausage'],
  [ecoliO157InBurgers.name, 'set-ecoli-burgers'],
  ...lethalitySets.filter(({ use }) => use === 'mean').map(({ name }, index): [string, string] => [name, `set-mean-${index + 1}`]),
]);

/** As it is called where the book has no code. */
export function nameOfSet({ name }: Pick<LethalitySet, 'name'>): PlainPhrase | string {
  const code = codes.get(name);
  return code === undefined ? name : { code };
}
