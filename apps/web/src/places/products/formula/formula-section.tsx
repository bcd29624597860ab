import type { Formula, PlanContent, Product } from '@larderbook/contracts';
import { sayPercent } from '@larderbook/haccp';
import { useState } from 'react';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { Moment } from '../../../ui/moment';
import { Section } from '../../../ui/section';
import { SelectField } from '../../../ui/select-field';
import { Row, Stack } from '../../../ui/stack';
import { useShop } from '../../../api/use-shop';
import { CuringCaution } from './curing-caution';
import { FormulaTable } from './formula-table';
import { limitFor } from './restricted';

/** The formula of a product, the latest version first; earlier ones can be looked at. */
export function FormulaSection({ product, plan }: { product: Product; plan: PlanContent | undefined }) {
  const { isOwner, zone } = useShop();
  const { productId, formulas } = product;
  const [chosenId, setChosenId] = useState<string>();
  const formula = formulas.find(({ formulaId }) => formulaId === chosenId) ?? formulas[0];
  const write = isOwner && (
    <LinkButton to="/products/$productId/formula" params={{ productId }} look={formula ? 'plain' : 'primary'}>
      {formula ? 'Write the next version' : 'Write the formula'}
    </LinkButton>
  );
  if (!formula) {
    return (
      <Section title="Formula">
        <EmptyState title="No formula yet" action={write}>
          <p>The formula says which meats make the meat block and what goes in as a percentage of it. Targets on the scale come from it.</p>
        </EmptyState>
      </Section>
    );
  }
  const isLatest = formula === formulas[0];
  return (
    <Section
      title={`Formula ${formula.version}`}
      aside={
        <Row>
          {isLatest && (
            <LinkButton look="primary" to="/products/$productId/batch" params={{ productId }}>
              Work out a batch
            </LinkButton>
          )}
          {write}
        </Row>
      }
    >
      <Stack>
        <p>
          Written by {formula.recordedBy}, <Moment at={formula.recordedAt} zone={zone} />. Expected yield{' '}
          {sayPercent(formula.expectedYieldPercent)} of everything that goes in. {sayUse(formula.usedByLots)}{' '}
          {!isLatest && <strong>A newer version is in use.</strong>}
        </p>
        <FormulaTable formula={formula} plan={plan} />
        <JudgedAgainst formula={formula} plan={plan} />
        {formula.lines.some(({ substance }) => substance) && <CuringCaution />}
        {formulas.length > 1 && (
          <SelectField
            label="Look at another version"
            value={formula.formulaId}
            onChange={setChosenId}
            choices={formulas.map(({ formulaId, version, usedByLots }) => ({
              value: formulaId,
              name: `Formula ${version}: ${sayUse(usedByLots)}`,
            }))}
          />
        )}
      </Stack>
    </Section>
  );
}

function JudgedAgainst({ formula, plan }: { formula: Formula; plan: PlanContent | undefined }) {
  const substances = [...new Set(formula.lines.flatMap(({ substance }) => substance ?? []))];
  const unplanned = substances.filter((substance) => !limitFor(substance, plan).isPlanned);
  if (unplanned.length === 0) return null;
  const what = unplanned.join(' and ');
  return <p>The plan in force sets no limit for {what}; the published one for chopped meat stands here instead.</p>;
}

/** "Used by 4 lots: frozen." */
function sayUse(lots: number): string {
  if (lots === 0) return 'Used by no lot yet.';
  return `Used by ${lots} ${lots === 1 ? 'lot' : 'lots'}: frozen.`;
}
