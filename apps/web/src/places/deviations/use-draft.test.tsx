import type { SignedIn } from '@larderbook/contracts';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, expect, test, vi } from 'vitest';
import { enter } from '../../api/session';
import { useDraft } from './use-draft';

afterEach(() => void vi.unstubAllGlobals());

test('what one person began to write does not stand in the fields of another', () => {
  const device = new Map([['larderbook.language', 'en']]);
  vi.stubGlobal('localStorage', {
    getItem: (place: string) => device.get(place) ?? null,
    setItem: (place: string, said: string) => device.set(place, said),
    removeItem: (place: string) => device.delete(place),
  });
  const draftOf = (personId: string, write?: string) => {
    const queries = new QueryClient();
    enter(queries, { personId, establishmentId: 'Wrenfold' } as SignedIn);
    let begun: ReturnType<typeof useDraft> | undefined;
    const Form = () => {
      begun = useDraft('deviation 5', undefined);
      return null;
    };
    renderToStaticMarkup(
      <QueryClientProvider client={queries}>
        <Form />
      </QueryClientProvider>,
    );
    if (write !== undefined) begun?.write({ cause: write });
    return begun?.draft;
  };
  draftOf('Ann', 'The door stood open.');
  expect(draftOf('Bo')).toEqual({});
  expect(draftOf('Ann')).toEqual({ cause: 'The door stood open.' });
});
