import { Controller, Get } from '@nestjs/common';
import { WithoutContract } from './contract-route';
import { openApi } from './openapi';

@Controller('api')
export class OpenApiController {
  private document?: object;

  /** Made on request: it takes longer than the rest of a start. */
  @WithoutContract()
  @Get('openapi.json')
  show() {
    return (this.document ??= openApi());
  }
}
