import type { AskedFor, AttestationLimit } from '@larderbook/haccp';
import type { Editor } from '../editor';
import { AttestationFields } from './attestation-fields';

export type AttestationDraft = { kind: 'attestation'; statement: string; asks?: AskedFor };

export const attestationEditor: Editor<AttestationLimit, AttestationDraft> = {
  empty: () => ({ kind: 'attestation', statement: '' }),
  draftOf: ({ kind, statement, asks }) => ({ kind, statement, asks }),
  figuresOf: ({ statement, asks }) => ({ statement: statement.trim(), asks }),
  Fields: AttestationFields,
};
