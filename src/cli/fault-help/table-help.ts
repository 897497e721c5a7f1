/** Help on tables: their headings, rows and cells. */
import { job, told } from './example.ts';

const R = 'Room,Profile,Length\nHall,Base,100';

export const TABLE_HELP = {
  'table.missing': [
    'A table that every job has isn’t there.',
    told({ name: 'Stock' }, 'job.xlsx'),
    'Add a sheet of that name; coveledger new makes one.',
  ],
  'table.no-sheet': [
    'The sheet that was named behind a file isn’t in it.',
    told({ name: 'Cuts' }, 'list.xlsx', { sheets: 'Pieces, Sticks' }),
    'Name one that it has: list.xlsx#Pieces.',
  ],
  'table.first-sheet': [
    'A workbook has several sheets, and its first was read.',
    told({ name: 'Pieces' }, 'list.xlsx', { name: 'list.xlsx#Sticks', sheets: 'Pieces, Sticks' }),
    'Name the sheet behind the file: list.xlsx#Sticks.',
  ],
  'table.twice': [
    'Two sheets can both be one table.',
    told({ name: 'Runs' }, 'job.xlsx'),
    'Keep one, or give the other a name of its own.',
  ],
  'table.heading-missing': [
    'A table has no column of a heading that it needs.',
    job('runs', 'Room,Profile\nHall,Base', R),
  ],
  'table.heading-twice': [
    'Two columns have one heading.',
    job('runs', 'Room,Profile,Length,LENGTH\nHall,Base,100,200', R),
  ],
  'table.heading-two': [
    'Two headings mean the same.',
    job(
      'runs',
      'Room,Profile,Length,Quantity,Qty\nHall,Base,100,1,2',
      'Room,Profile,Length,Quantity\nHall,Base,100,2',
    ),
  ],
  'table.heading-near': [
    'A heading is a slip of one that is used here.',
    job(
      'runs',
      'Room,Profile,Length,Quantitty\nHall,Base,100,2',
      'Room,Profile,Length,Quantity\nHall,Base,100,2',
    ),
  ],
  'table.column-unused': [
    'A filled column stands for nothing here, though it may be meant for something.',
    told({ name: 'The column' }, 'Size', { may: 'Length', notUsed: 'Size (not used)' }),
    'Head it as what it is; or “Size (not used)”.',
  ],
  'table.heading-merged': [
    'A column under merged headings has none of its own.',
    told({ name: 'Column D of Runs' }, null),
    'Take the merge apart, and head each column.',
  ],
  'table.merged-down': [
    'One value is merged over several rows.',
    told({ name: 'Length' }, 'A2', { range: 'C2:C4' }, 3),
    'Take the merge apart, and fill in each row.',
  ],
  'table.merged-across': [
    'One value is merged over several columns.',
    told({ name: 'Length' }, '100', { range: 'C2:D2' }),
    'Take the merge apart, and fill in each.',
  ],
  'table.merged-taken': [
    'A merged name is read for each of its rows.',
    told({ name: 'Room' }, 1, { rows: 3, range: 'A2:A4' }),
    'Nothing needs to be changed where it is meant so.',
  ],
  'table.heading-none': [
    'A column has cells and no heading.',
    job('runs', 'Room,Profile,Length,\nHall,Base,100,x', R),
  ],
  'table.heading-unit': [
    'A heading says another unit than the shop, and its column is read so.',
    job(
      'runs',
      'Room,Profile,Length (mm)\nHall,Base,2500',
      'Room,Profile,Length\nHall,Base,2500 mm',
    ),
  ],
  'table.heading-unknown': [
    'A column is not one that is used here.',
    job('runs', 'Room,Profile,Length,Mood\nHall,Base,100,fine', R),
  ],
  'table.choice-unread': [
    'Which columns were chosen for a table is kept with the workbook, and can’t be read any more.',
    told({ name: 'Runs' }, 'Coveledger columns of Runs'),
    'Choose the table and its columns again, under Job.',
  ],
  'table.choice-gone': [
    'The sheet or table that was chosen isn’t there any more.',
    told({ name: 'Runs' }, 'Takeoff'),
    'Choose another under Job, or give the sheet its name again.',
  ],
  'table.column-gone': [
    'A column that was chosen isn’t there any more.',
    told({ name: 'Length' }, 'Len', { table: 'Takeoff' }),
    'Choose anew under Job, or give the column its heading again.',
  ],
  'table.empty': [
    'A table has its headings and nothing below.',
    job('stock', 'For,Length,Price', "For,Length,Price\nBase,16',30"),
  ],
  'table.too-many-rows': [
    'A table has more rows than are read.',
    told({ name: 'Runs' }, 60_000, {}, 50_000),
    'Plan a large building floor by floor.',
  ],
  'table.error-cell': [
    'A cell shows an error of the spreadsheet.',
    told({ name: 'Length' }, '#REF!'),
    'Mend the cell’s formula, or type the length.',
  ],
  'table.date-cell': [
    'A spreadsheet has turned a fraction into a date.',
    told({ name: 'Length' }, '4 March', { fraction: '3/4' }),
    'Format the cell as text, and type 0 3/4.',
  ],
  'table.hidden-rows': [
    'Hidden and filtered rows are planned too.',
    told({ name: 'Runs' }, 2),
    'Delete the rows that aren’t meant.',
  ],
  'table.hidden-columns': [
    'Hidden columns are read too.',
    told({ name: 'Runs' }, 1, { columns: 'F' }),
    'Clear the column where it isn’t meant.',
  ],
  'table.rows-below': [
    'Rows stand right under a table without being part of it.',
    told({ name: 'Runs' }, 2, { table: 'RunsTable' }),
    'Stretch the table over them, or leave a blank row between.',
  ],
  'table.total-row': [
    'A row looks like the total of the others.',
    job(
      'runs',
      'Room,Run,Profile,Length\nHall,North,Base,100\nHall,South,Base,60\nTotal,,Base,160',
      'Room,Run,Profile,Length\nHall,North,Base,100\nHall,South,Base,60',
    ),
  ],
  'table.total-ignored': [
    'A row is taken for the total of the others, and left out.',
    told({ name: 'Row 9 of Runs' }, 'Total'),
    'Nothing needs to be changed.',
  ],
  'table.rows-again': [
    'A block of rows stands twice, as where it was pasted twice.',
    told({ name: 'Runs' }, 12, { at: 'A2' }),
    'Delete the second block.',
  ],
  'table.total-length': [
    'A run is as long as the rows above it together.',
    told({ name: 'Length' }, '160', {}, 2),
    'Delete the row where it is their total.',
  ],
  'table.veiled-number': [
    'A number format shows something else than the cell holds.',
    told({ name: 'Length' }, 0.5, { seen: '50%' }),
    'Choose a format that shows the number itself.',
  ],
  'table.uncalculated': [
    'A formula’s value isn’t in the file.',
    told({ name: 'Length' }, null),
    'Open the workbook in a spreadsheet, and save it.',
  ],
} as const;
