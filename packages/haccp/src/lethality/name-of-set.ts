import type { PlainPhrase } from '../limits/verdict';
import type { LethalitySet } from './lethality-set';
import { ecoliO157InBurgers, listeria70For2, listeriaHeatedSlowly, listeriaInLiverSausage, salmonellaByTheMeatTable } from './sets';

const codes = new Map<string, string>([
  [salmonellaByTheMeatTable.name, 'set-salmonella-meat-table'],
  [listeria70For2.name, 'set-listeria-70-for-2'],
  [listeriaHeatedSlowly.name, 'set-listeria-heated-slowly'],
  [listeriaInLiverSausage.name, 'set-listeria-liver-sausage'],
  [ecoliO157InBurgers.name, 'set-ecoli-burgers'],
  ['Listeria monocytogenes, mean of many studies', 'set-mean-listeria'],
  ['Listeria monocytogenes, mean of many studies, 10 % salt', 'set-mean-listeria-in-salt'],
  ['Salmonella, mean of many studies', 'set-mean-salmonella'],
  ['Escherichia coli, mean of many studies', 'set-mean-ecoli'],
  ['Clostridium perfringens, vegetative, mean of many studies; spores survive cooking', 'set-mean-perfringens'],
]);

/** As it is called where the book has no code. */
export function nameOfSet({ name }: Pick<LethalitySet, 'name'>): PlainPhrase | string {
  const code = codes.get(name);
  return code === undefined ? name : { code };
}
