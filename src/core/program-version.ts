/** As package.json has it; a test holds them together. */
export const PROGRAM_VERSION = '0.3.0';
