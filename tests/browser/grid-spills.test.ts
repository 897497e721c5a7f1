import { jest } from '@jest/globals';
import { testGridSpills } from '../hosts/grid/spills-suite.ts';
import { gridSuite } from './grid-host-page.ts';

jest.setTimeout(60_000);

gridSuite('The grid', testGridSpills);
