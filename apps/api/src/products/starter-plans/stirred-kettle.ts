import { cookChill } from './cook-chill';
import type { SayStarter, StarterPlan, StarterPoint } from './starter-plan';

/** Stirred food flows, so it has no core. */
export const stirredKettle = (say: SayStarter): StarterPlan => ({
  ...cookChill(say),
  title: say('soup-or-sauce-stirred-and'),
  about: say('a-soup-or-a-sauce'),
  controlPoints: cookChill(say).controlPoints.map((point) => (point.key === 'cooking' ? stirred(say, point) : point)),
});

function stirred(say: SayStarter, cooking: StarterPoint): StarterPoint {
  return {
    ...cooking,
    hazard: say('pathogens-that-survive-where-the'),
    piece: { shape: 'stirred' },
    monitoring: {
      ...cooking.monitoring,
      what: say('temperature-in-the-middle-of-the'),
      how: say('stir-or-pump-all-of'),
    },
  };
}
