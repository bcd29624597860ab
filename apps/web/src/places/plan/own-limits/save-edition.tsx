import { recordOwnLimits } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { NotSaved } from '../not-saved';
import { useWriting } from '../use-writing';
import type { Checked } from './check-own-limits';
import type { OwnDraft } from './own-draft';

type SaveEditionProps = { draft: OwnDraft; checked: Checked; keep: (draft: OwnDraft | undefined) => void };

/** Saving the draft as an edition, or throwing it away. An edition changes no plan. */
export function SaveEdition({ draft, checked: { value, errors, faults }, keep }: SaveEditionProps) {
  const navigate = useNavigate();
  const [isThrowing, setThrowing] = useState(false);
  const writing = useWriting(recordOwnLimits);
  const leave = async () => {
    await navigate({ to: '/figures/own-limits' });
    keep(undefined);
  };
  const save = () => {
    keep({ ...draft, tried: true });
    if (!value) return;
    writing.mutate({ ownSetId: draft.ownSetId, ...value }, {
      onSuccess: async ({ edition }) => {
        announce(`Edition ${edition} is in the book. Plans built on an earlier one say why to reassess them.`);
        await leave();
      },
    });
  };
  const count = Object.keys(errors).length + faults.filter(({ row }) => row !== undefined).length;
  const ofSet = faults.filter(({ row }) => row === undefined).map(({ because }) => because);
  return (
    <Stack>
      {draft.tried && count + ofSet.length > 0 && (
        <Problem
          error={{
            title: 'The edition cannot be saved yet.',
            detail: [...ofSet, count > 0 && 'What is wrong is marked above, beside its figure or field.']
              .filter(Boolean)
              .join(' '),
          }}
        />
      )}
      <NotSaved error={writing.error} />
      <Row>
        <Button look="primary" busy={writing.isPending && 'Writing it into the book…'} onClick={save}>
          Save the edition
        </Button>
        <Button look="quiet" onClick={() => setThrowing(true)}>Throw the draft away…</Button>
      </Row>
      {isThrowing && (
        <Dialog
          title="Throw the draft away?" closeLabel="Keep it" onClose={() => setThrowing(false)}
          actions={<Button onClick={() => void leave()}>Throw it away</Button>}
        >
          <p>What was written here since {draft.from} is then nowhere. The editions in the book stay as they are.</p>
        </Dialog>
      )}
    </Stack>
  );
}
