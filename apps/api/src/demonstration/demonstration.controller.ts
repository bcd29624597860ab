import { Controller } from '@nestjs/common';
import { demonstrationProgress, openDemonstration } from '@larderbook/contracts';
import { Route } from '../platform/contract-route';
import { OpenDemonstration } from './open-demonstration';

@Controller('api/v1')
export class DemonstrationController {
  constructor(private readonly openDemonstration: OpenDemonstration) {}

  @Route(openDemonstration)
  open() {
    return this.openDemonstration.run();
  }

  @Route(demonstrationProgress)
  howFar() {
    return this.openDemonstration.progress;
  }
}
