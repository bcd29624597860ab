import { useShop } from '../../../api/use-shop';
import type { Refused } from '../../../outbox/refused';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { Form } from '../../../ui/form';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Columns, Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import type { Customer } from '../customers/customer';
import { lineProblems, type LoadLine } from './load';
import { LoadList } from './load-list';

/** `leftAt` is ISO 8601 with offset, empty for now. */
export type Papers = { document: string; leftAt: string };

type SendOffProps = {
  customer: Customer;
  load: LoadLine[];
  papers: Papers;
  onChange: (papers: Papers) => void;
  busy: boolean;
  refused?: Refused;
  onShip: () => void;
  onBack: () => void;
};

export function SendOff({ customer, load, papers, onChange, busy, refused, onShip, onBack }: SendOffProps) {
  const say = useSay('shipping');
  const { zone } = useShop();
  const problems = lineProblems(load, refused?.fields ?? {});
  return (
    <Question title={say('ship-to', { name: customer.name })} hint={customer.address}>
      <Form errors={refused?.fields ?? {}} busy={busy} onSubmit={onShip}>
        <Stack>
          <LoadList load={load} problems={problems} />
          <Columns>
            <TextField
              label={say('document')}
              optional
              hint={say('document-hint')}
              maxLength={80}
              autoComplete="off"
              value={papers.document}
              onChange={(document) => onChange({ ...papers, document })}
              error={refused?.fields.document}
            />
            <DateTimeField
              label={say('when-left')}
              optional
              hint={say('empty-is-now')}
              zone={zone}
              value={papers.leftAt}
              onChange={(leftAt) => onChange({ ...papers, leftAt })}
              error={refused?.fields.takenAt}
            />
          </Columns>
          {refused && problems.size === 0 && <Problem error={{ title: refused.words }} />}
          {problems.size > 0 && (
            <p role="status">
              <strong>{say('nothing-shipped')}</strong>
            </p>
          )}
          <Row>
            <Button type="submit" look="primary" busy={busy && say('shipping-now')}>
              {say('ship-now')}
            </Button>
            <Button onClick={onBack}>{say('change-packages')}</Button>
          </Row>
        </Stack>
      </Form>
    </Question>
  );
}
