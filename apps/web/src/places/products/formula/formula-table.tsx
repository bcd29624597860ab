import type { Formula, PlanContent } from '@larderbook/contracts';
import { percentFigure } from '../../../ui/percent-figure';
import { Columns, Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import { restrictedIn } from './restricted';
import { LimitBeside, PpmOf, Within } from './restricted-view';

import { useSay, useFigures } from '../../../ui/voice';

type Line = Formula['lines'][number];

/** The meats make the meat block; everything else is a percentage of it. */
export function FormulaTable({ formula: { lines }, plan }: { formula: Formula; plan: PlanContent | undefined }) {
  const say = useSay('formulas');
  const [meats, ingredients] = [lines.filter(({ part }) => part === 'meat'), lines.filter(({ part }) => part === 'ingredient')];
  const judged = ingredients.flatMap((line) => {
    const restricted = restrictedIn(line, lines, plan);
    return restricted ? [{ ...line, restricted }] : [];
  });
  return (
    <Stack>
      <Columns least={20}>
        <Shares caption={say('meats-caption')} head={say('meat')} lines={meats} />
        {ingredients.length > 0 && <Shares caption={say('ingredients')} head={say('ingredient')} lines={ingredients} />}
      </Columns>
      {judged.length > 0 && (
        <Table
          caption={say('restricted')}
          rows={judged}
          rowKey={({ itemId }) => itemId}
          columns={[
            { head: say('in'), cell: ({ itemName }) => itemName },
            { head: say('gives'), cell: (line) => <PpmOf restricted={line.restricted} holds={line.fractionPercent} /> },
            { head: say('limit'), cell: ({ restricted }) => <LimitBeside restricted={restricted} /> },
            { head: say('judged'), cell: ({ restricted }) => <Within restricted={restricted} /> },
          ]}
        />
      )}
    </Stack>
  );
}

function Shares({ caption, head, lines }: { caption: string; head: string; lines: Line[] }) {
  const say = useSay('formulas');
  const { quantity } = useFigures();
  return (
    <Table
      caption={caption}
      rows={lines}
      rowKey={({ itemId }) => itemId}
      columns={[
        { head, cell: ({ itemName }) => itemName },
        { head: say('of-the-meat-block'), figures: true, cell: ({ percent }) => quantity(percentFigure(percent)) },
      ]}
    />
  );
}
