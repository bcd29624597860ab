import type { setNames as english } from '../en/set-names';
import { translated } from '../translated';

export const setNames = translated<typeof english>()({
  'set-salmonella-meat-table': 'Salmonella, según la tabla de carnes',
  'set-listeria-70-for-2': 'Listeria monocytogenes, 70 °C durante 2 min',
  'set-listeria-heated-slowly': 'Listeria monocytogenes, calentada despacio en una emulsión de carne',
  'set-listeria-liver-sausage': 'Listeria monocytogenes, en pasta de embutido de hígado',
  'set-ecoli-burgers': 'Escherichia coli O157, en hamburguesas, 70 °C durante 2 min',
});
