import { signIn } from '@larderbook/contracts';
import { useQueryClient } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { enter } from '../../../api/session';
import { useSend } from '../../../api/use-send';
import { whereTo } from './where-to';

export function useSignIn() {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const then = useSearch({ from: '/sign-in', shouldThrow: false })?.then; // the first page signs in to the demonstration
  return useSend(signIn, (who) => {
    enter(queries, who);
    void navigate({ to: whereTo(then) });
  });
}
