/** Help on files and workbooks. */
import { told } from './example.ts';

const BOOK = { name: 'job.xlsx' };

export const FILE_HELP = {
  'file.missing': ['A file isn’t there.', told(BOOK, 'jub.xlsx'), 'Check its name and its folder.'],
  'file.is-folder': [
    'A folder was named where a file is wanted.',
    told(BOOK, 'jobs', { wanted: 'the workbook in it' }),
    'Name the file.',
  ],
  'file.other-workbook': [
    'The workbook is of another program.',
    told(BOOK, 'job.numbers'),
    'Save it as .xlsx there.',
  ],
  'file.not-folder-or-workbook': [
    'A job is an .xlsx workbook, or a folder of CSV files.',
    told(BOOK, 'runs.csv'),
    'Name the workbook, or the folder.',
  ],
  'file.unreadable': [
    'The disk or the system refused to read a file.',
    told(BOOK, 'job.xlsx', { why: 'permission denied' }),
    'See to what the message names.',
  ],
  'file.too-large': [
    'A file is larger than what is read.',
    told(BOOK, 300, {}, 100),
    'Keep the job’s tables in a workbook of their own.',
  ],
  'file.not-workbook': [
    'A file ends in .xlsx and is none.',
    told(BOOK, 'job.xlsx', { why: '' }),
    'Save it as .xlsx from a spreadsheet.',
  ],
  'file.torn': [
    'A workbook was cut short on its way.',
    told(BOOK, 'job.xlsx'),
    'Get the file once more.',
  ],
  'file.lost-text': [
    'A workbook lost a part of its texts.',
    told(BOOK, 'job.xlsx', { cell: 'B4' }),
    'Get the file once more.',
  ],
  'file.opendocument': [
    'An OpenDocument file is saved as .xlsx first.',
    told(BOOK, 'job.ods'),
    'In its spreadsheet: File, Save As, .xlsx.',
  ],
  'file.too-many-cells': [
    'A workbook has more cells than are read.',
    told(BOOK, 'job.xlsx', { what: 'cells' }, 2_000_000),
    'Delete empty rows with formats.',
  ],
  'file.too-many-lines': [
    'A CSV file has more lines than are read.',
    told(BOOK, 'runs.csv', {}, 100_000),
    'Delete the blank ones.',
  ],
  'file.protected': [
    'A workbook is locked by a password.',
    told(BOOK, 'job.xlsx'),
    'Save it without one.',
  ],
  'file.old-workbook': [
    'An .xls workbook is of the old kind.',
    told(BOOK, 'job.xls'),
    'Save it as .xlsx.',
  ],
  'file.not-text': [
    'A file ends in .csv and holds no text.',
    told(BOOK, 'runs.csv'),
    'Save the sheet as CSV.',
  ],
  'file.not-csv': [
    'A CSV file can’t be parted into cells.',
    told(BOOK, 'runs.csv', { why: 'a quote is not closed in line 3' }),
    'See to the line of the message.',
  ],
  'file.exists': [
    'A file is there already, and nothing is written over it unasked.',
    told(BOOK, 'shop.xlsx'),
    'Give --force, or another name.',
  ],
  'file.not-written': [
    'The disk or the system refused to write a file.',
    told(BOOK, 'shop.xlsx', { why: 'no space is left' }),
    'See to what the message names.',
  ],
  'file.not-put-back': [
    'Of several files one was written and another not.',
    told(BOOK, 'shop.xlsx', { why: 'no space is left' }),
    'Run the call again.',
  ],
  'file.ending': [
    'A file’s name ends otherwise than its kind.',
    told({ name: '--out' }, 'shop.csv', {}, '.xlsx'),
    'Write shop.xlsx.',
  ],
  'file.same': [
    'Two outputs would be one file.',
    told({ name: '--client' }, 'shop.xlsx', { other: '--out' }),
    'Give each a name of its own.',
  ],
  'file.same-letters': [
    'Two names differ in capital letters alone.',
    told({ name: '--client' }, 'Shop.xlsx', { other: 'shop.xlsx' }),
    'Give each a name of its own.',
  ],
  'file.is-input': [
    'The output would be written over the input.',
    told({ name: '--out' }, 'trim.xlsx'),
    'Choose another name.',
  ],
  'host.manual-calculation': [
    'A workbook calculates only when it is asked to.',
    told(BOOK, null),
    'Press F9 in it.',
  ],
  'host.still-calculating': [
    'A workbook was still calculating.',
    told(BOOK, null),
    'Read it again.',
  ],
  'host.sheet-not-ours': [
    'A sheet of yours has the name of one that would be written.',
    told(BOOK, 'Cutting'),
    'Rename yours.',
  ],
  'host.sheet-exists': [
    'A sheet of that name is there already.',
    told(BOOK, 'Cutting'),
    'Say that it may be replaced.',
  ],
  'host.sheet-protected': ['A sheet is protected.', told(BOOK, 'Runs'), 'Take the protection off.'],
  'host.workbook-protected': [
    'A workbook takes no new sheets.',
    told(BOOK, 'job.xlsx'),
    'Take the protection off.',
  ],
  'host.editing-cell': [
    'A cell is being typed in, so nothing can be read.',
    told(BOOK, null),
    'Press Enter.',
  ],
  'host.too-old': [
    'This Excel lacks what is needed.',
    told({ name: 'Excel' }, 'ExcelApi 1.7', {}, 'ExcelApi 1.9'),
    'Update it, or use the page.',
  ],
  'host.refused': [
    'The spreadsheet refused what was asked of it.',
    told({ name: 'Write the sheets' }, 'InvalidOperation'),
    'Try again; else save and open the workbook anew.',
  ],
  'host.gone': ['A sheet or a cell isn’t there any more.', told(BOOK, 'Runs'), 'Look again.'],
  'host.cell-not-blank': [
    'The chosen cell holds something.',
    told(BOOK, 'B4'),
    'Select a blank one.',
  ],
  'host.no-room': [
    'Rows below a table are taken.',
    told({ name: 'Runs' }, 4, { cell: 'A30' }),
    'Insert blank rows above that cell.',
  ],
  'host.cannot': [
    'That is done by the spreadsheet itself.',
    told({ name: 'Showing a cell' }, null),
    'Open the workbook there.',
  ],
} as const;
