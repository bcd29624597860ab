import { createElement, type ReactNode } from 'react';
import type { FieldsOf } from './fields-of';
import { editorOf } from './kinds/editors';
import type { LimitDraft } from './limit-draft';

export function fieldsOfDraft({ draft, errors, onChange }: FieldsOf<LimitDraft>): ReactNode {
  const { source } = draft;
  return createElement(editorOf(draft.kind).Fields, { draft, errors, onChange: (next) => onChange({ ...next, source }) });
}
