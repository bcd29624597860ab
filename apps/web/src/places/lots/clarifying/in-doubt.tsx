import type { ControlPointOnLot } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { Section } from '../../../ui/section';
import { StateMark } from '../../../ui/status';
import { useSay } from '../../../ui/voice';
import css from './clarifying.module.css';
import { toClarify, type ToClarify } from './to-clarify';

type InDoubtProps = { points: ControlPointOnLot[]; onClarify?: (of: ToClarify) => void };

/** What was found in the readings of a lot and keeps them from being met, until somebody says what they were. */
export function InDoubt({ points, onClarify }: InDoubtProps) {
  const say = useSay('judging');
  const doubts = points.flatMap(({ controlPoint: { controlPointId, name }, doubts: found = [] }) =>
    found.map((finding) => ({ controlPointId, name, finding })),
  );
  if (doubts.length === 0) return null;
  return (
    <Section title={say('in-doubt')}>
      <ul className={css.list}>
        {doubts.map(({ controlPointId, name, finding }) => (
          <li key={`${controlPointId} ${finding.kind} ${finding.from} ${finding.said}`} className={css.doubt}>
            <StateMark state="undetermined" />
            <div>
              <p>
                <strong>{name}.</strong> {finding.said}.
              </p>
              <p>{finding.whatToDo}</p>
              {onClarify && finding.readingIds && (
                <Button onClick={() => onClarify(toClarify(controlPointId, finding))}>
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
