import type { Trace } from '@larderbook/contracts';
import { sayGrams } from '../../api/say-grams';
import { useShop, type Shop } from '../../api/use-shop';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';
import css from './trace-sheet.module.css';

type Balance = Trace['balance'][number];

/**
 * Of each delivery and lot: what went in, what became of it, and what no record explains, which is named and never
 * hidden.
 */
export function BalanceTable({ balance }: { balance: Balance[] }) {
  const { units } = useShop();
  return (
    <Table
      caption="Mass balance"
      captionUnseen
      rows={balance}
      rowKey={({ id }) => id}
      empty={<p>No delivery and no lot was reached.</p>}
      columns={[
        {
          head: 'Delivery or lot',
          cell: ({ code, what }) => (
            <>
              {code}
              <span className={css.under}>{what}</span>
            </>
          ),
        },
        { head: 'Went in', cell: ({ inGrams }) => sayGrams(inGrams, units), figures: true },
        { head: 'What became of it', cell: (row) => <Became row={row} units={units} /> },
        { head: 'Accounted for', cell: (row) => <Accounted row={row} units={units} /> },
      ]}
    />
  );
}

function Became({ row, units }: { row: Balance; units: Shop['units'] }) {
  const parts: [string, number][] = [
    ['went into lots', row.usedGrams],
    ['shipped', row.shippedGrams],
    [row.packedGrams > 0 ? 'in packages here' : 'here', row.onHandGrams],
    ['lost, taken out or sent back', row.removedGrams],
    ['condemned', row.condemnedGrams],
  ];
  const happened = parts.filter(([, grams]) => grams !== 0);
  if (happened.length === 0) return <>nothing yet</>;
  return (
    <ul className={css.plain}>
      {happened.map(([what, grams]) => (
        <li key={what} className={css.part}>
          <span>{sayGrams(grams, units)}</span> {what}
        </li>
      ))}
    </ul>
  );
}

function Accounted({ row: { accountedPercent, unexplainedGrams, fault }, units }: { row: Balance; units: Shop['units'] }) {
  if (accountedPercent === '') return <>–</>;
  if (!fault) return <Status state="met" word={`${accountedPercent} %`} />;
  return (
    <>
      <Status state="missed" word={`${accountedPercent} %`} />
      <span className={css.under}>{unexplainedGrams === 0 ? fault : sayUnexplained(unexplainedGrams, units)}</span>
    </>
  );
}

/** More than went in is as much a fault as less. */
const sayUnexplained = (grams: number, units: Shop['units']): string =>
  grams > 0 ? `${sayGrams(grams, units)} that no record explains` : `${sayGrams(-grams, units)} more than went in`;
