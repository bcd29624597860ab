import { useVoiding } from '../../../outbox/use-voiding';
import { VoidDialog } from '../../../ui/why-dialog';
import { useSay } from '../../../ui/voice';
import type { LineKind, SheetLine } from '../sheet/sheet-line';
import { SavedDialog } from './saved-dialog';

const kinds: Partial<Record<LineKind, Parameters<typeof useVoiding>[0]>> = {
  'stage end': 'stage-end',
  input: 'input',
  weighing: 'weighing',
  packing: 'packing',
  removal: 'removal',
};

/** The entry stays on the sheet, struck through, and counts for nothing. */
export function VoidEntry({ line, onClose }: { line: SheetLine; onClose: () => void }) {
  const say = useSay('lot-forms');
  const said = `${line.what} ${line.value ?? ''}`.trim();
  const voiding = useVoiding(kinds[line.kind] ?? 'reading', line.rowId ?? line.id, said);
  if (voiding.saved) return <SavedDialog title={say('voided')} what={said} saved={voiding.saved} onClose={onClose} />;
  return (
    <VoidDialog title={say('void-what', { what: said })} voiding={voiding} onClose={onClose}>
      <p>{say('why-voided')}</p>
    </VoidDialog>
  );
}
