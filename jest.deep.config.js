/** The same tests, and all that they draw by chance: see tests/deep.ts. */
import config from './jest.config.js';

process.env.TESTS_DEEP = 'yes';

export default config;
