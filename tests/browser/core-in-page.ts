/** The catalogue's functions by themselves, to be asked in the same browser as the grid. */
import { CATALOGUE } from '../../src/functions/catalogue.ts';

Object.assign(globalThis, { catalogue: CATALOGUE });
