import type { Trace } from '@larderbook/contracts';
import { massIn } from '@larderbook/haccp';
import { useShop, type Shop } from '../../api/use-shop';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';
import { useFigures, useSay } from '../../ui/voice';
import { Weight } from '../../ui/weight';
import { describe } from './describe';
import css from './trace-sheet.module.css';

type Balance = Trace['balance'][number];

/** What no record explains is named and never hidden. */
export function BalanceTable({ balance }: { balance: Balance[] }) {
  const say = useSay('trace');
  const { units } = useShop();
  return (
    <Table
      caption={say('mass-balance')}
      captionUnseen
      rows={balance}
      rowKey={({ id }) => id}
      empty={<p>{say('nothing-reached')}</p>}
      columns={[
        {
          head: say('delivery-or-lot'),
          cell: (row) => (
            <>
              {row.code}
              <span className={css.under}>{describe(row, say)}</span>
            </>
          ),
        },
        { head: say('went-in'), cell: ({ inGrams }) => <Weight grams={inGrams} units={units} />, figures: true },
        { head: say('what-became'), cell: (row) => <Became row={row} units={units} /> },
        { head: say('accounted-for'), cell: (row) => <Accounted row={row} units={units} /> },
      ]}
    />
  );
}

function Became({ row, units }: { row: Balance; units: Shop['units'] }) {
  const say = useSay('trace');
  const parts = [
    [say('became-used'), row.usedGrams],
    [say('became-shipped'), row.shippedGrams],
    [say(row.packedGrams > 0 ? 'became-packed-here' : 'became-here'), row.onHandGrams],
    [say('became-removed'), row.removedGrams],
    [say('became-condemned'), row.condemnedGrams],
  ] as const;
  const happened = parts.filter(([, grams]) => grams !== 0);
  if (happened.length === 0) return <>{say('nothing-yet')}</>;
  return (
    <ul className={css.plain}>
      {happened.map(([what, grams]) => (
        <li key={what} className={css.part}>
          <span>
            <Weight grams={grams} units={units} />
          </span>{' '}
          {what}
        </li>
      ))}
    </ul>
  );
}

function Accounted({ row, units }: { row: Balance; units: Shop['units'] }) {
  const say = useSay('trace');
  const figures = useFigures();
  const { accountedPercent, unexplainedGrams, packedGrams, shippedGrams, fault } = row;
  if (accountedPercent === '') return <>–</>;
  const share = figures.quantity({ value: accountedPercent, unit: '%' });
  if (!fault) return <Status state="met" word={share} />;
  const weight = massIn(units, fault === 'more-shipped-than-packed' ? shippedGrams - packedGrams : Math.abs(unexplainedGrams));
  return (
    <>
      <Status state="missed" word={share} />
      <span className={css.under}>{fault === 'below-zero' ? say('fault-below-zero') : say(`fault-${fault}`, { weight })}</span>
    </>
  );
}
