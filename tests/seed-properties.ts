/** Properties draw the same cases on every machine; PROPERTY_SEED=… draws others. */
import fc from 'fast-check';

const SEED = 20_261_125;

fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? SEED) });
