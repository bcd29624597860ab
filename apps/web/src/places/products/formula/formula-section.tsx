import type { Formula, PlanContent, Product } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { percentFigure } from '../../../ui/percent-figure';
import { useState } from 'react';
import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';

import { Section } from '../../../ui/section';
import { SelectField } from '../../../ui/select-field';
import { Row, Stack } from '../../../ui/stack';
import { useShop } from '../../../api/use-shop';
import { CuringCaution } from './curing-caution';
import { FormulaTable } from './formula-table';
import { limitFor } from './restricted';
import { useSay } from '../../../ui/voice';

export function FormulaSection({ product, plan }: { product: Product; plan: PlanContent | undefined }) {
  const say = useSay('formulas');
  const { isOwner } = useShop();
  const { productId, formulas } = product;
  const [chosenId, setChosenId] = useState<string>();
  const formula = formulas.find(({ formulaId }) => formulaId === chosenId) ?? formulas[0];
  const write = isOwner && (
    <LinkButton to="/products/$productId/formula" params={{ productId }} look={formula ? 'plain' : 'primary'}>
      {say(formula ? 'write-next' : 'write')}
    </LinkButton>
  );
  if (!formula) {
    return (
      <Section title={say('formula')}>
        <EmptyState title={say('none-yet')} action={write}>
          <p>{say('what-it-says')}</p>
        </EmptyState>
      </Section>
    );
  }
  const isLatest = formula === formulas[0];
  return (
    <Section
      title={say('numbered', { version: formula.version })}
      aside={
        <Row>
          {isLatest && (
            <LinkButton look="primary" to="/products/$productId/batch" params={{ productId }}>
              {say('calculate-a-batch')}
            </LinkButton>
          )}
          {write}
        </Row>
      }
    >
      <Stack>
        <p>
          {say('written-by', {
            who: formula.recordedBy,
            at: { at: formula.recordedAt },
            percent: percentFigure(formula.expectedYieldPercent),
          })}{' '}
          {formula.usedByLots === 0 ? say('not-used') : say('used', { lots: formula.usedByLots })}{' '}
          {!isLatest && <strong>{say('newer-in-use')}</strong>}
        </p>
        <FormulaTable formula={formula} plan={plan} />
        <JudgedAgainst formula={formula} plan={plan} />
        {formula.lines.some(({ substance }) => substance) && <CuringCaution />}
        {formulas.length > 1 && (
          <SelectField
            label={say('another-version')}
            value={formula.formulaId}
            onChange={setChosenId}
            choices={formulas.map(({ formulaId, version, usedByLots }) => ({
              value: formulaId,
              name: usedByLots === 0 ? say('version-not-used', { version }) : say('version-used', { version, lots: usedByLots }),
            }))}
          />
        )}
      </Stack>
    </Section>
  );
}

function JudgedAgainst({ formula, plan }: { formula: Formula; plan: PlanContent | undefined }) {
  const say = useSay('formulas');
  const sayLimits = useSay('limits');
  const substances = [...new Set(formula.lines.flatMap(({ substance }) => substance ?? []))];
  const unplanned = substances.filter((substance) => !limitFor(substance, plan).isPlanned);
  if (unplanned.length === 0) return null;
  return <p>{say('not-planned', { substances: unplanned.map((each) => sayLimits(codeOf('substance', each))) })}</p>;
}
