import { clarifyReadings, type ClarificationWord, type Lot } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useRecording } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { previewClarified } from '../preview/preview-clarified';
import { Preview } from '../recording/preview';
import { SavedDialog } from '../recording/saved-dialog';
import { ReadingsToClarify } from './readings-to-clarify';
import { ReasonOfWord } from './reason-of-word';
import type { ToClarify } from './to-clarify';

const detailOf = {
  'time is right': 'time-is-right-detail',
  'not of the core': 'not-of-the-core-detail',
  'as recorded': 'as-recorded-detail',
} as const satisfies Record<ClarificationWord, string>;

type ClarifyProps = { lot: Lot; of: ToClarify; onClose: () => void };

/** The readings stay on the sheet; the control point is judged again. */
export function Clarify({ lot, of, onClose }: ClarifyProps) {
  const say = useSay('judging');
  const sayShared = useSay('shared');
  const sayEntry = useSay('entries');
  const recording = useRecording(clarifyReadings);
  const [chosen, setChosen] = useState(of.readingIds);
  const [word, setWord] = useState<ClarificationWord | undefined>(of.words.length === 1 ? of.words[0] : undefined);
  const [reason, setReason] = useState('');
  const [isAsked, setAsked] = useState(false);
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === of.controlPointId);
  if (!point) return null;

  const { controlPointId, name, correctiveAction } = point.controlPoint;
  const about = { count: chosen.length, point: name };
  const what = word ? say('point-readings-word', { ...about, word: sayEntry(codeOf('word', word)) }) : say('point-readings', about);
  const verdicts = word && chosen.length > 0 ? previewClarified(point, lot, chosen, word) : [];
  const save = () => {
    setAsked(true);
    if (!word || !reason.trim() || chosen.length === 0) return;
    const said = { lotId: lot.lotId, controlPointId, readingIds: chosen, word, reason };
    void recording.save(
      { clarificationId: recording.id, ...said, takenAt: new Date().toISOString() },
      say('in-lot', { what, lot: lot.code }),
    );
  };
  if (recording.saved) {
    const shown = { what, saved: recording.saved, preview: verdicts, limits: point.controlPoint.limits, correctiveAction };
    return <SavedDialog title={name} {...shown} onClose={onClose} />;
  }
  return (
    <Dialog
      title={say('what-were-these', { point: name })}
      onClose={onClose}
      actions={
        <Button look="primary" busy={recording.busy} onClick={save}>
          {sayShared('save')}
        </Button>
      }
    >
      <Stack>
        <p>{of.said}</p>
        <ReadingsToClarify
          point={point}
          inDoubt={of.readingIds}
          chosen={chosen}
          onChoose={setChosen}
          error={isAsked && chosen.length === 0 ? say('choose-readings') : undefined}
        />
        <ChoiceField
          label={say('what-were-they')}
          choices={of.words.map((value) => ({ value, name: sayEntry(codeOf('word', value)), detail: say(detailOf[value]) }))}
          value={word}
          onChange={setWord}
          error={isAsked && !word ? say('say-what-they-were') : undefined}
        />
        {word && (
          <ReasonOfWord word={word} value={reason} onChange={setReason} error={isAsked && !reason.trim() ? say('say-why') : undefined} />
        )}
        <Preview verdicts={verdicts} />
        {recording.refused && <Problem error={{ title: recording.refused.words }} />}
      </Stack>
    </Dialog>
  );
}
