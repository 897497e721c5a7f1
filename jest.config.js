import { availableParallelism } from 'node:os';

/** The tests run from the sources: swc takes the types off, and a file of React is read as any other. */
const swc = {
  jsc: {
    parser: { syntax: 'typescript', tsx: true },
    target: 'es2022',
    transform: { react: { runtime: 'automatic' } },
  },
  module: { type: 'es6' },
};

/** One more than there are cores: suites wait for browsers and LibreOffice much of their time. */
const workers = availableParallelism() + 1;

export default {
  roots: ['<rootDir>/tests'],
  testMatch: ['**/*.test.ts'],
  testEnvironment: '<rootDir>/tests/run/quick-globals.js',
  testTimeout: 60_000,
  maxWorkers: workers,
  testSequencer: '<rootDir>/tests/run/long-suites-first.js',
  reporters: ['default', '<rootDir>/tests/run/say-skipped.js'],
  setupFiles: ['<rootDir>/tests/seed-properties.ts'],
  extensionsToTreatAsEsm: ['.ts', '.tsx'],
  transform: { '^.+\\.tsx?$': ['@swc/jest', swc] },
};
