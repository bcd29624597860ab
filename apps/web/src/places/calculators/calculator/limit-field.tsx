import { listPublishedLimits } from '@larderbook/contracts';
import type { CriticalLimit } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import type { FieldFrame } from '../../../ui/field';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { FindField } from '../../../ui/find-field';
import { useSay } from '../../../ui/voice';

type LimitFieldProps = FieldFrame & {
  kinds: readonly CriticalLimit['kind'][];
  value: string;
  onChange: (key: string) => void;
};

/** A limit that nobody has confirmed says so. */
export function LimitField({ kinds, value, onChange, ...frame }: LimitFieldProps) {
  const say = useSay('calculators');
  const { data, error, refetch } = useQuery(ask(listPublishedLimits, {}));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const offered = data.limits.filter(({ limit }) => kinds.includes(limit.kind));
  const chosen = offered.find(({ key }) => key === value);
  const choices = offered.map(({ key, title, limit }) => ({
    value: key,
    name: limit.source.confirmed ? title : say('not-confirmed-title', { title }),
  }));
  const hint = chosen ? say('limit-hint', { limit: chosen.said, citation: chosen.limit.source.citation }) : frame.hint;
  return <FindField {...frame} hint={hint} choices={choices} value={value} onChange={onChange} />;
}
