import { AttestationFields } from './attestation-fields';
import { BandTimeFields } from './band-time-fields';
import { ConcentrationFields } from './concentration-fields';
import { CoolingFields } from './cooling-fields';
import { DwellFields } from './dwell-fields';
import type { FieldsOf } from './fields-of';
import type { LimitDraft } from './limit-draft';
import { ProcessFields } from './process-fields';
import { RangeFields } from './range-fields';

/** The fields of the kind of limit that is being written. */
export function FigureFields({ draft, errors, onChange }: FieldsOf<LimitDraft>) {
  const { source } = draft;
  switch (draft.kind) {
    case 'range':
      return <RangeFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    case 'concentration':
      return <ConcentrationFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    case 'dwell':
      return <DwellFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    case 'cooling':
      return <CoolingFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    case 'bandTime':
      return <BandTimeFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    case 'attestation':
      return <AttestationFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
    default:
      return <ProcessFields draft={draft} errors={errors} onChange={(next) => onChange({ ...next, source })} />;
  }
}
