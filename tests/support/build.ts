import { buildProgram } from './program';

/** Before the browsers open: what they look at is built from the present sources. */
export default buildProgram;
