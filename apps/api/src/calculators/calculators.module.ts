import { Module } from '@nestjs/common';
import { CalculatorsController } from './calculators.controller';
import { FormulaCalculatorsController } from './formula-calculators.controller';

@Module({ controllers: [CalculatorsController, FormulaCalculatorsController] })
export class CalculatorsModule {}
