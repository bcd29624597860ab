import { Controller, Get } from '@nestjs/common';
import { openApi } from './openapi';

@Controller('api')
export class OpenApiController {
  private readonly document = openApi();

  @Get('openapi.json')
  show() {
    return this.document;
  }
}
