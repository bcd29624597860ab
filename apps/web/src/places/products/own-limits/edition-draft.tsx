import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Section } from '../../../ui/section';
import { Row, Stack } from '../../../ui/stack';
import drafting from '../drafting/drafting.module.css';
import { errorsUnder } from '../drafting/plan-draft';
import { checkOwnLimits } from './check-own-limits';
import { draftOfRow, edited, emptyRow, type OwnDraft, type RowDraft } from './own-draft';
import { EditionFields } from './edition-fields';
import { OwnCaution } from './own-caution';
import { RowSlip } from './row-slip';
import { SaveEdition } from './save-edition';
import { TakeDialog } from './take-dialog';
import { useSay, useSpoken } from '../../../ui/voice';
import { codedText } from '@larderbook/messages';

type EditionDraftProps = { draft: OwnDraft; today: string; keep: (draft: OwnDraft | undefined) => void };

export function EditionDraft({ draft, today, keep }: EditionDraftProps) {
  const say = useSay('own-limits');
  const told = useSpoken('own-limits');
  const { data } = useQuery(ask(listLimitSets, {}));
  const [open, setOpen] = useState<string>();
  const [isTaking, setTaking] = useState(false);
  const { rows } = draft;
  const change = (next: Partial<OwnDraft>) => keep(edited(draft, next));
  const checked = checkOwnLimits(
    draft,
    say,
    data?.sets.find(({ setId }) => setId === draft.replaces),
  );
  const errors = draft.tried ? checked.errors : {};
  const faultsOf = (at: number) =>
    draft.tried ? checked.faults.filter(({ row }) => row === at).map(({ because }) => codedText(told, because)) : [];
  const add = (added: RowDraft[]) => change({ rows: [...rows, ...added] });
  const addEmpty = () => {
    const row = emptyRow(today);
    add([row]);
    setOpen(row.key);
  };
  return (
    <>
      <Stack>
        <p>{draft.after === undefined ? say('begun-from-nothing') : say('begun-from', { edition: draft.after })}</p>
        <EditionFields draft={draft} errors={errors} onChange={change} />
      </Stack>
      <Section title={say('figures')} aside={`${rows.length}`}>
        {rows.length === 0 && (
          <EmptyState title={say('no-figure')}>
            <p>{say('write-or-take')}</p>
          </EmptyState>
        )}
        <ul className={drafting.lines} aria-label={say('figures-of')}>
          {rows.map((row, i) => (
            <RowSlip
              key={row.key}
              row={row}
              number={i + 1}
              errors={errorsUnder(errors, `rows.${i}`)}
              faults={faultsOf(i)}
              isOpen={open === row.key}
              onOpen={(isOpen) => setOpen(isOpen ? row.key : undefined)}
              onChange={(next) => change({ rows: rows.with(i, next) })}
              onRemove={() => change({ rows: rows.toSpliced(i, 1) })}
            />
          ))}
        </ul>
        <Row>
          <Button onClick={addEmpty}>{say('add-figure')}</Button>
          <Button onClick={() => setTaking(true)}>{say('take-figures')}</Button>
        </Row>
      </Section>
      {isTaking && (
        <TakeDialog
          taken={new Set(rows.flatMap(({ rowId }) => rowId ?? []))}
          onClose={() => setTaking(false)}
          onTake={(taken) => {
            add(taken.map(draftOfRow));
            setTaking(false);
          }}
        />
      )}
      <OwnCaution />
      <SaveEdition draft={draft} checked={checked} keep={keep} />
    </>
  );
}
