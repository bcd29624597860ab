import { forecasts } from './forecasts';
import { shared } from './workings/shared';

/** What a calculation and the explanation of a verdict both say. */
export const workings = { ...forecasts, ...shared };
