import type { PointExplained } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import type { State } from '../../../ui/status';

type StandingCode = 'nothing-recorded' | 'met' | 'missed' | 'missed-still-cooling' | 'undetermined' | 'running';

export function standing({ stands, limits }: PointExplained, tell: Tell): { state: State; code: StandingCode; because?: string } {
  if (stands === 'not-started') return { state: 'undetermined', code: 'nothing-recorded' };
  const kind = stands === 'running' ? 'undetermined' : stands;
  const governing = limits.find(({ verdict }) => verdict.kind === kind) ?? limits[0];
  const isStillCooling = kind === 'missed' && limits.some(({ verdict }) => verdict.kind === kind && verdict.still);
  return {
    state: stands,
    code: isStillCooling ? 'missed-still-cooling' : stands,
    because: governing && tell(governing.verdict, governing.limit).because,
  };
}
