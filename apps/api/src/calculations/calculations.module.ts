import { Module } from '@nestjs/common';
import { CalculationsController } from './calculations.controller';
import { FormulaCalculationsController } from './formula-calculations.controller';

@Module({ controllers: [CalculationsController, FormulaCalculationsController] })
export class CalculationsModule {}
