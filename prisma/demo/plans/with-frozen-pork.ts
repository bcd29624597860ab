import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { frozenByCentre } from '@larderbook/haccp';
import { v7 } from 'uuid';

type Step = PlanContent['steps'][number];
const name = 'Frozen pork';

/** The shop buys pork from anybody, so that it freezes it against trichinae before it is cured. */
export function withFrozenPork(plan: PlanContent): PlanContent {
  const trimming = plan.steps.findIndex(({ name }) => name.startsWith('Trimming'));
  const freezing: Step = { stepId: v7(), name: 'Freezing', hazards: [] };
  const steps = plan.steps.map(trichinaeLikely).toSpliced(trimming + 1, 0, freezing);
  return { ...plan, steps, controlPoints: [frozenPork(freezing.stepId), ...plan.controlPoints] };
}

const trichinaeLikely = (step: Step): Step => ({
  ...step,
  hazards: step.hazards.map((hazard) =>
    hazard.what.startsWith('Trichinae')
      ? {
          ...hazard,
          likely: true,
          because: 'Our pigs come from several farms, some with a run outdoors, and the product is never heated.',
          control: `${name}: frozen at the centre before it is cured.`,
        }
      : hazard,
  ),
});

const frozenPork = (stepId: string): ControlPoint => ({
  controlPointId: v7(),
  stepId,
  name,
  kind: 'critical',
  hazard: 'Trichinae that live in pork which is never heated.',
  takenAs: 'curve',
  limits: [{ limitId: v7(), limit: frozenByCentre }],
  probes: ['centre'],
  frequency: { everyMinutes: 120 },
  plausible: { '°F': [-5000, 5000], '°C': [-4600, 1000] },
  monitoring: {
    what: 'Temperature at the centre of the thickest block of trimmed pork.',
    how: 'Probe of the logger frozen into the block; blocks a hand apart on racks.',
    howOften: 'Every two hours, by the logger, until a row of the table is met.',
    who: 'The sausage maker starts the logger and reads it before the pork is cut.',
  },
  correctiveAction:
    'Freeze on until a row is there without a break. Pork that was taken out too early is cooked, or held. Find out why, and write what keeps it from being cured.',
  verification:
    'Logger compared with a checked thermometer. The table is no longer prescribed and was read in a copy: our own support is in folder 4.',
});
