/** Help on files, workbooks, the page, the worksheet functions and calls. */
import { call, told } from './example.ts';

const BOOK = { name: 'job.xlsx' };

export const PROGRAM_HELP = {
  'function.fraction-unquoted': [
    'A spreadsheet reads 3 1/2 without quotes as something else.',
    told('width', 'an error'),
    'Write "3 1/2" in quotes, or 3.5.',
  ],
  'function.shape': [
    'Ranges of two sizes can’t go together.',
    told('depth', null, { rows: 3, columns: 1, wantedRows: 4, wantedColumns: 1 }),
    'Give ranges of one size, or single cells.',
  ],
  'function.one-column': [
    'The function takes one column there.',
    told({ name: 'Lengths' }, null, { rows: 3, columns: 2 }),
    'Give A2:A4.',
  ],
  'function.one-cell': [
    'The function takes a single cell there.',
    told('kerf', null, { rows: 3, columns: 1 }),
    'Give one cell.',
  ],
  'function.too-many-cells': [
    'The ranges ask for more answers than are given at once.',
    told({ name: 'The ranges' }, 300_000, {}, 100_000),
    'Choose smaller ranges.',
  ],
  'function.more-faults': [
    'More cells of the range are at fault, too.',
    told('width', 4),
    'Mend the first one, and look again.',
  ],
  'function.bug': [
    'A function failed by a fault of this program.',
    told({ name: 'COVE.TILT' }, 'an error'),
    'Report it, with the formula.',
  ],
  'grid.spill-blocked': [
    'A formula’s answers need cells that are taken.',
    told({ name: 'B2' }, null, { until: 'B2:B9', cell: 'B5' }),
    'Empty the cell of the message.',
  ],
  'grid.too-large': [
    'A workbook is larger than what the page opens.',
    told(BOOK, 40, {}, 20),
    'Keep the job’s tables by themselves.',
  ],
  'grid.too-many-rows': [
    'A sheet has more rows than the page works with.',
    told({ name: 'Runs' }, null, {}, 50_000),
    'Split it.',
  ],
  'grid.no-sheet': ['A workbook has no cells.', told(BOOK, 'job.xlsx'), 'Open another one.'],
  'grid.macros': [
    'Macros are never run here.',
    told(BOOK, 'job.xlsm'),
    'Nothing needs to be done.',
  ],
  'grid.other-workbooks': [
    'Formulas take values from other workbooks.',
    told(BOOK, 'job.xlsx', { count: 1, first: 'B4' }),
    'Type the values themselves.',
  ],
  'grid.table-columns': [
    'Formulas that name a table’s columns name their cells here.',
    told(BOOK, 'job.xlsx', { count: 1, first: 'B4' }),
    'Insert rows above the last one.',
  ],
  'grid.unknown-functions': [
    'The grid doesn’t know some functions.',
    told(BOOK, 'XLOOKUP', { first: 'B4' }),
    'Type the value, or use another function.',
  ],
  'grid.left-out': [
    'A part of the workbook isn’t shown.',
    told(BOOK, 'charts'),
    'Keep the original file for it.',
  ],
  'grid.dates-1904': [
    'A workbook counts its days from 1904.',
    told(BOOK, 'job.xlsx'),
    'Nothing needs to be done for dates alone.',
  ],
  'grid.paste-too-many': [
    'More cells were copied than are pasted at once.',
    told({ name: 'The grid' }, 900_000, {}, 200_000),
    'Open the file itself.',
  ],
  'grid.paste-merged': [
    'A paste would cover a part of joined cells.',
    told({ name: 'The grid' }, 'B2:C2'),
    'Choose another place.',
  ],
  'pane.file-unreadable': [
    'The browser couldn’t read a file.',
    told(BOOK, 'NotReadableError'),
    'Close it in other programs.',
  ],
  'pane.not-loaded': [
    'A part of the program didn’t come.',
    told({ name: 'The planner' }, 'network error'),
    'Check the connection.',
  ],
  'page.not-built': [
    'The page’s files aren’t there.',
    told({ name: 'serve' }, 'dist'),
    'Run npm run build.',
  ],
  'page.storage-full': [
    'The browser has no room to keep your work.',
    told({ name: 'work' }, null),
    'Download the workbook.',
  ],
  'page.not-kept': [
    'The browser doesn’t keep your work.',
    told({ name: 'work' }, 'SecurityError'),
    'Download the workbook.',
  ],
  'page.kept-newer': [
    'What is kept is of a newer page.',
    told({ name: 'work' }, null),
    'Load the page anew.',
  ],
  'page.kept-damaged': [
    'What is kept can’t be opened.',
    told({ name: 'work' }, null),
    'Save it as it is, or start over.',
  ],
  'page.open-elsewhere': [
    'Another tab keeps this work.',
    told({ name: 'work' }, null),
    'Go on in the other tab.',
  ],
  'page.no-port': [
    'Other programs have the ports.',
    told({ name: '--port' }, '3000'),
    'Give another: --port 8080.',
  ],
  'day.unreadable': [
    'A day is written year, month, day.',
    told({ name: '--date' }, '30.11.26'),
    'Write 2026-11-30.',
  ],
  'output.not-written': [
    'The terminal or the pipe took no more.',
    told({ name: 'output' }, null, { why: 'no space is left' }),
    'Send it elsewhere.',
  ],
  'call.unknown-command': [
    'A word after coveledger is no command.',
    told('command', 'plann', { may: 'plan', allowed: 'new, plan, client' }),
    'Type coveledger plan trim.xlsx --out shop.xlsx.',
  ],
  'call.unknown-code': [
    'A code behind help is none that there is.',
    told('command', 'job.no-stok', { may: 'job.no-stock' }),
    'Type coveledger help job.no-stock.',
  ],
  'call.unknown-option': [
    'An option is not one of that command.',
    call('plan trim.xlsx --ouput shop.xlsx', 'plan trim.xlsx --out shop.xlsx'),
  ],
  'call.argument-missing': [
    'A command needs a file.',
    call('plan --out shop.xlsx', 'plan trim.xlsx --out shop.xlsx'),
  ],
  'call.input-twice': [
    'The standard input can be read once.',
    told({ name: 'cut' }, '-'),
    'Name a file for one of the lists.',
  ],
  'call.input-no-job': [
    'A list came where a job is wanted.',
    told({ name: 'plan' }, null, { holds: 'a CSV list' }),
    'Name the workbook or the folder.',
  ],
  'call.argument-extra': [
    'A command has one file too many.',
    call('plan trim.xlsx more.xlsx --out shop.xlsx', 'plan trim.xlsx --out shop.xlsx'),
  ],
  'call.option-twice': [
    'An option stands twice.',
    call('plan trim.xlsx --out a.xlsx --out b.xlsx', 'plan trim.xlsx --out a.xlsx'),
  ],
  'call.options-exclude': [
    'Two options can’t be meant together.',
    told({ name: '--demo' }, null, { other: '--metric' }),
    'Leave one out.',
  ],
  'call.option-alone': [
    'An option says nothing without another.',
    told({ name: '--decimal-comma' }, null, { other: '--csv' }),
    'Give both.',
  ],
  'call.option-needs-value': [
    'An option needs a value behind it.',
    call('plan trim.xlsx --out', 'plan trim.xlsx --out shop.xlsx'),
  ],
  'call.option-takes-no-value': [
    'An option takes no value.',
    call('plan trim.xlsx --force=yes', 'plan trim.xlsx --force'),
  ],
  'call.job-twice': [
    'One job was named twice.',
    told({ name: 'rates' }, 'trim.xlsx'),
    'Name each job once.',
  ],
} as const;
