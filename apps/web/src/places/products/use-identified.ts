import { useState } from 'react';
import { newId } from '../../outbox/new-id';

/** The same words sent again land once; other words are another record, so each change takes a new id. */
export function useIdentified<D>(initial: () => D) {
  const [form, setForm] = useState(() => ({ id: newId(), draft: initial() }));
  return { ...form, change: (draft: D) => setForm({ id: newId(), draft }) };
}
