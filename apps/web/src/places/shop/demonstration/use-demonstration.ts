import { openDemonstration } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { allOf } from '../../../api/ask';
import { call } from '../../../api/client';

/** Makes the demonstration where there is none, which takes a while; asking twice finds the same one. */
export const useDemonstration = () =>
  useQuery({ queryKey: allOf(openDemonstration), queryFn: () => call(openDemonstration, {}), staleTime: Infinity, retry: false });
