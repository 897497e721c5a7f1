/** The program's version, as package.json has it: workbooks say by which they were made. */
export const VERSION = '0.6.0';
