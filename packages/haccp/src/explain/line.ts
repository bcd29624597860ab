import type { PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import { drawnFigure } from './drawn-degrees';
import type { LineDrawn } from './drawing';

/** A printed figure ruled across a curve. */
export const lineAt = (at: PrintedTemperature, unit: TemperatureUnit, label: LineDrawn['label']): LineDrawn => ({
  value: drawnFigure(at, unit),
  label,
});
