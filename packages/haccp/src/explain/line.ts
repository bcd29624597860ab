import type { PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import { drawnFigure } from './drawn-degrees';
import type { LineDrawn } from './drawing';

export const lineAt = (at: PrintedTemperature, unit: TemperatureUnit, label: LineDrawn['label']): LineDrawn => ({
  value: drawnFigure(at, unit),
  label,
});
