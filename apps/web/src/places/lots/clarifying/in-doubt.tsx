import type { ControlPointOnLot } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { Section } from '../../../ui/section';
import { StateMark } from '../../../ui/status';
import { useLines } from '../../../ui/use-lines';
import { useSay } from '../../../ui/voice';
import css from './clarifying.module.css';
import { toClarify, type ToClarify } from './to-clarify';

type InDoubtProps = { points: ControlPointOnLot[]; onClarify?: (of: ToClarify) => void };

/** A finding prevents a met verdict until somebody clarifies its readings. */
export function InDoubt({ points, onClarify }: InDoubtProps) {
  const say = useSay('judging');
  const line = useLines(['findings']);
  const doubts = points.flatMap(({ controlPoint: { controlPointId, name }, doubts: found = [] }) =>
    found.map((finding) => ({ controlPointId, name, finding, said: line(finding.found) })),
  );
  if (doubts.length === 0) return null;
  return (
    <Section title={say('in-doubt')}>
      <ul className={css.list}>
        {doubts.map(({ controlPointId, name, finding, said }) => (
          <li key={`${controlPointId} ${finding.kind} ${finding.from} ${said}`} className={css.doubt}>
            <StateMark state="undetermined" />
            <div>
              <p>
                <strong>{name}.</strong> {said}.
              </p>
              <p>{line(finding.whatToDo)}</p>
              {onClarify && finding.readingIds && (
                <Button onClick={() => onClarify(toClarify(controlPointId, finding, said))}>
                  {say('say-what-one-was', { count: finding.readingIds.length })}
                </Button>
              )}
            </div>
          </li>
        ))}
      </ul>
    </Section>
  );
}
