import { recordOwnLimits } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { announce } from '../../../ui/announcer';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { KeepOrThrow } from '../drafting/keep-or-throw';
import { NotSaved } from '../not-saved';
import { useWriting } from '../use-writing';
import type { Checked } from './check-own-limits';
import type { OwnDraft } from './own-draft';
import { useSay, useSpoken } from '../../../ui/voice';
import { codedText } from '@larderbook/messages';

type SaveEditionProps = { draft: OwnDraft; checked: Checked; keep: (draft: OwnDraft | undefined) => void };

/** An edition changes no plan. */
export function SaveEdition({ draft, checked: { value, errors, faults }, keep }: SaveEditionProps) {
  const say = useSay('own-limits');
  const told = useSpoken('own-limits');
  const sayDrafts = useSay('plan-drafts');
  const navigate = useNavigate();
  const writing = useWriting(recordOwnLimits);
  const leave = async () => {
    await navigate({ to: '/calculators/own-limits' });
    keep(undefined);
  };
  const save = () => {
    keep({ ...draft, tried: true });
    if (!value) return;
    writing.mutate(
      { ownSetId: draft.ownSetId, ...value },
      {
        onSuccess: async ({ edition }) => {
          announce(say('saved', { edition }));
          await leave();
        },
      },
    );
  };
  const count = Object.keys(errors).length + faults.filter(({ row }) => row !== undefined).length;
  const ofSet = faults.filter(({ row }) => row === undefined).map(({ because }) => codedText(told, because));
  return (
    <Stack>
      {draft.tried && count + ofSet.length > 0 && (
        <Problem
          error={{
            title: say('not-saved-yet'),
            detail: [...ofSet, count > 0 && say('marked-above')].filter(Boolean).join(' '),
          }}
        />
      )}
      <NotSaved error={writing.error} />
      <KeepOrThrow
        saveLabel={say('save-edition')}
        busy={writing.isPending}
        onSave={save}
        onThrowAway={() => void leave()}
        afterwards={sayDrafts('edition-then-nowhere')}
      />
    </Stack>
  );
}
