import type { InputOf, ReplyOf, RouteShape } from '@larderbook/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { check, fieldErrors, type FieldErrors } from './check';
import { call } from './client';
import { refreshAfter } from './refresh-after';

export type Send<R extends RouteShape> = {
  /** Nothing is half-sent: what is wrong stands in `errors`. */
  send(draft: object): void;
  busy: boolean;
  errors: FieldErrors;
  /** What stood in the way when it was no field. */
  problem: unknown;
  reply?: ReplyOf<R>;
};

/** Needs the network, unlike what is recorded on the floor. */
export function useSend<R extends RouteShape>(route: R, onSent?: (reply: ReplyOf<R>) => void): Send<R> {
  const queries = useQueryClient();
  const [wrong, setWrong] = useState<FieldErrors>({});
  const sending = useMutation({
    mutationFn: (input: InputOf<R>) => call(route, input),
    onSuccess: (reply) => {
      void refreshAfter(queries, route.path);
      onSent?.(reply);
    },
  });
  const send = (draft: object) => {
    const { value, errors } = route.body ? check(route.body, draft) : { value: {}, errors: undefined };
    setWrong(errors ?? {});
    if (errors) sending.reset();
    else sending.mutate({ ...draft, ...(value as object) } as InputOf<R>);
  };
  const refused = fieldErrors(sending.error);
  const isOfFields = Object.keys(refused).length > 0;
  return {
    send,
    busy: sending.isPending,
    errors: { ...refused, ...wrong },
    problem: isOfFields ? undefined : (sending.error ?? undefined),
    reply: sending.data,
  };
}
