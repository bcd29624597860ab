import { cookChill } from './cook-chill';
import type { StarterPlan, StarterPoint } from './starter-plan';

/** As the dish that is cooked and chilled, but of one that flows: it has no core while it is stirred. */
export const stirredKettle: StarterPlan = {
  ...cookChill,
  title: 'Soup or sauce, stirred and chilled',
  about:
    'A soup or a sauce without pieces, stirred or pumped while it cooks in its kettle, chilled in shallow trays, packed cold. For a kitchen or caterer under the Food Code. With pieces of meat in it, take the cooked and chilled dish.',
  controlPoints: cookChill.controlPoints.map((point) => (point.key === 'cooking' ? stirred(point) : point)),
};

function stirred(cooking: StarterPoint): StarterPoint {
  return {
    ...cooking,
    hazard: 'Pathogens that survive where the kettle is coldest.',
    piece: { shape: 'stirred' },
    monitoring: {
      ...cooking.monitoring,
      what: 'Temperature in the middle of the kettle, and at its wall where no steam heats it.',
      how: 'Stir or pump all of it, then hold the probe in it until it is steady; the coldest place counts.',
    },
  };
}
