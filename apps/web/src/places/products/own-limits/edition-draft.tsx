import { listLimitSets } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { Button } from '../../../ui/button';
import { DateField } from '../../../ui/date-field';
import { EmptyState } from '../../../ui/empty-state';
import { Section } from '../../../ui/section';
import { Columns, Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import drafting from '../drafting/drafting.module.css';
import { errorsUnder } from '../drafting/plan-draft';
import { checkOwnLimits } from './check-own-limits';
import { draftOfRow, edited, emptyRow, type OwnDraft, type RowDraft } from './own-draft';
import { OwnCaution } from './own-caution';
import { RowSlip } from './row-slip';
import { SaveEdition } from './save-edition';
import { TakeDialog } from './take-dialog';

type EditionDraftProps = { draft: OwnDraft; today: string; keep: (draft: OwnDraft | undefined) => void };

/** An edition being written: its name and day, and every figure on its own slip. */
export function EditionDraft({ draft, today, keep }: EditionDraftProps) {
  const { data } = useQuery(ask(listLimitSets, {}));
  const [open, setOpen] = useState<string>();
  const [isTaking, setTaking] = useState(false);
  const { rows } = draft;
  const change = (next: Partial<OwnDraft>) => keep(edited(draft, next));
  const checked = checkOwnLimits(
    draft,
    data?.sets.find(({ setId }) => setId === draft.replaces),
  );
  const errors = draft.tried ? checked.errors : {};
  const faultsOf = (at: number) => (draft.tried ? checked.faults.filter(({ row }) => row === at).map(({ because }) => because) : []);
  const add = (added: RowDraft[]) => change({ rows: [...rows, ...added] });
  const addEmpty = () => {
    const row = emptyRow(today);
    add([row]);
    setOpen(row.key);
  };
  return (
    <>
      <Stack>
        <p>Begun from {draft.from}.</p>
        <Columns>
          <TextField
            label="Title of the set"
            hint="Such as “Our smokehouse”."
            value={draft.title}
            error={errors.title}
            maxLength={120}
            autoComplete="off"
            onChange={(title) => change({ title })}
          />
          <TextField
            label="Edition"
            hint="A name of its own, such as 2026-1."
            value={draft.edition}
            error={errors.edition}
            maxLength={40}
            autoComplete="off"
            onChange={(edition) => change({ edition })}
          />
          <DateField
            label="Counts from"
            hint="From this day plans built on an earlier edition are to be reassessed."
            value={draft.validFrom}
            error={errors.validFrom}
            onChange={(validFrom) => change({ validFrom })}
          />
        </Columns>
      </Stack>
      <Section title="Figures" aside={`${rows.length}`}>
        {rows.length === 0 && (
          <EmptyState title="No figure yet">
            <p>Write one of your own, with its source and where its support is filed; or take published ones to go on with.</p>
          </EmptyState>
        )}
        <ul className={drafting.lines} aria-label="Figures of the edition">
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
          <Button onClick={addEmpty}>Add a figure</Button>
          <Button onClick={() => setTaking(true)}>Take figures from a set</Button>
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
