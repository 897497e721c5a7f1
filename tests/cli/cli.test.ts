import { afterAll, beforeAll, jest } from '@jest/globals';
import { callSuite } from './call-suite.ts';
import { clientSuite } from './client-suite.ts';
import { cutListSuite } from './cut-list-suite.ts';
import { cutSuite } from './cut-suite.ts';
import { effortSuite } from './effort-suite.ts';
import { exportSuite } from './export-suite.ts';
import { filesSuite } from './files-suite.ts';
import { hostileSuite } from './hostile-suite.ts';
import { limitSuite } from './limit-suite.ts';
import { mannersSuite } from './manners-suite.ts';
import { planSuite } from './plan-suite.ts';
import { processSuite } from './process-suite.ts';
import { startProgram, stopProgram } from './program.ts';
import { serveSuite } from './serve-suite.ts';
import { setUpSuite } from './set-up-suite.ts';
import { terminalSuite } from './terminal-suite.ts';

// One file, so that the program is built once and never while it runs.
jest.setTimeout(60_000);
beforeAll(startProgram);
afterAll(stopProgram);

processSuite();
callSuite();
setUpSuite();
cutSuite();
cutListSuite();
effortSuite();
planSuite();
clientSuite();
exportSuite();
filesSuite();
serveSuite();
hostileSuite();
limitSuite();
mannersSuite();
terminalSuite();
