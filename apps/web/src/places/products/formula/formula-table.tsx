import type { Formula, PlanContent } from '@larderbook/contracts';
import { sayPercent } from '@larderbook/haccp';
import { Columns, Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import { restrictedIn } from './restricted';
import { LimitBeside, PpmOf, Within } from './restricted-view';

type Line = Formula['lines'][number];

/** A formula as it is weighed: the meats make the meat block, everything else is a percentage of it. */
export function FormulaTable({ formula: { lines }, plan }: { formula: Formula; plan: PlanContent | undefined }) {
  const [meats, ingredients] = [lines.filter(({ part }) => part === 'meat'), lines.filter(({ part }) => part === 'ingredient')];
  const judged = ingredients.flatMap((line) => {
    const restricted = restrictedIn(line, lines, plan);
    return restricted ? [{ ...line, restricted }] : [];
  });
  return (
    <Stack>
      <Columns least={20}>
        <Shares caption="Meats, together the meat block" head="Meat" lines={meats} />
        {ingredients.length > 0 && <Shares caption="Ingredients" head="Ingredient" lines={ingredients} />}
      </Columns>
      {judged.length > 0 && (
        <Table
          caption="Restricted substances in it"
          rows={judged}
          rowKey={({ itemId }) => itemId}
          columns={[
            { head: 'In', cell: ({ itemName }) => itemName },
            { head: 'Gives', cell: (line) => <PpmOf restricted={line.restricted} holds={line.fractionPercent} /> },
            { head: 'Limit', cell: ({ restricted }) => <LimitBeside restricted={restricted} /> },
            { head: 'Judged', cell: ({ restricted }) => <Within restricted={restricted} /> },
          ]}
        />
      )}
    </Stack>
  );
}

function Shares({ caption, head, lines }: { caption: string; head: string; lines: Line[] }) {
  return (
    <Table
      caption={caption}
      rows={lines}
      rowKey={({ itemId }) => itemId}
      columns={[
        { head, cell: ({ itemName }) => itemName },
        { head: 'Of the meat block', figures: true, cell: ({ percent }) => sayPercent(percent) },
      ]}
    />
  );
}
