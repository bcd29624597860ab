import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { coldHolding, cookedMeat65Log, coolingUncured, nitriteComminuted, type CriticalLimit } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { withSupport } from './with-support';

/** What is read around the product, and the option it is chilled by where it is not the one for any product. */
export type SausageOptions = Pick<ControlPoint, 'surroundings'> & { chilledBy?: CriticalLimit };
export type SausagePoints = Record<'cure' | 'cook' | 'chill' | 'coldRoom' | 'label', string>;

/** A plan for a cured, smoked and cooked sausage: each way of recording once, limits from the published sets. */
export function aSausagePlan({ surroundings, chilledBy = coolingUncured }: SausageOptions = {}): {
  content: PlanContent;
  points: SausagePoints;
} {
  const stepId = v7();
  const points: SausagePoints = { cure: v7(), cook: v7(), chill: v7(), coldRoom: v7(), label: v7() };
  const plausible = { '°F': [1400, 10000] as [number, number], '°C': [-1000, 3700] as [number, number] };
  const content: PlanContent = {
    title: 'Smoked sausage',
    process: 'cured smoked cooked',
    intendedUse: 'Eaten as it is by anyone.',
    steps: [
      {
        stepId,
        name: 'Making',
        hazards: [{ kind: 'biological', what: 'Growth', likely: true, because: '', control: '' }],
      },
    ],
    controlPoints: [
      aPoint({
        controlPointId: points.cure,
        stepId,
        name: 'Cure',
        takenAs: 'weighings',
        limits: [limitOf(nitriteComminuted)],
      }),
      aPoint({
        controlPointId: points.cook,
        stepId,
        name: 'Cook',
        takenAs: 'curve',
        frequency: { everyMinutes: 30 },
        limits: [limitOf(cookedMeat65Log)],
        probes: ['core'],
      }),
      aPoint({
        controlPointId: points.chill,
        stepId,
        name: 'Chill',
        takenAs: 'curve',
        limits: [limitOf(chilledBy)],
        follows: points.cook,
        probes: ['core'],
        surroundings,
      }),
      aPoint({
        controlPointId: points.coldRoom,
        stepId,
        name: 'Cold room',
        takenAs: 'value',
        limits: [limitOf(coldHolding)],
        plausible,
      }),
      aPoint({
        controlPointId: points.label,
        kind: 'prerequisite',
        stepId,
        name: 'Label',
        takenAs: 'attestation',
        limits: [limitOf(rightLabel)],
      }),
    ],
    notes: '',
  };
  return { content, points };
}

const rightLabel = {
  kind: 'attestation' as const,
  statement: 'The label is the one approved for this product.',
  source: { citation: 'Plan of the establishment', edition: '', confirmed: true },
};

const limitOf = (limit: CriticalLimit) => ({ limitId: v7(), limit: withSupport(limit) });

function aPoint(
  point: Pick<ControlPoint, 'controlPointId' | 'stepId' | 'name' | 'takenAs' | 'limits'> & Partial<ControlPoint>,
): ControlPoint {
  return {
    kind: 'critical',
    hazard: 'Growth of pathogens',
    probes: [],
    monitoring: {
      what: `${point.name} is looked at.`,
      how: 'With the instrument named.',
      howOften: 'Every lot.',
      who: 'The operator.',
    },
    correctiveAction: 'Hold the lot and call the owner.',
    verification: '',
    ...point,
  };
}
