import { jest } from '@jest/globals';
import { testAppending } from '../hosts/appending-suite.ts';
import { inGrid } from '../hosts/grid/persons-in-grid.ts';
import { testGridAnswers } from '../hosts/grid/answers-suite.ts';
import { testGridKept } from '../hosts/grid/metadata-suite.ts';
import { testGridPerson } from '../hosts/grid/person-suite.ts';
import { testGridPlans } from '../hosts/grid/plans-suite.ts';
import { testGridSpills } from '../hosts/grid/spills-suite.ts';
import { testGridUndo } from '../hosts/grid/undo-suite.ts';
import { testGridWriting } from '../hosts/grid/writing-suite.ts';
import { testHost } from '../hosts/host-suite.ts';
import { valueOf } from '../hosts/excel-workbooks.ts';
import { readGrid } from '../hosts/read-grid.ts';
import { testLayout } from '../hosts/layout-suite.ts';
import { testReading, type ReadingHost } from '../hosts/reading-suite.ts';
import { gridSuite } from './grid-host-page.ts';

jest.setTimeout(60_000);

gridSuite('The grid', (grid) => {
  const { host, open, saved } = grid;
  testHost({
    name: 'grid',
    differs: {
      title: "the workbook is the person's own, and so is its title",
      kept: 'the grid shows none of it, and keeps it for whoever prints or saves',
    },
    async write(description) {
      await open(inGrid([{ name: 'Notes', rows: [["the person's own"]] }]));
      return valueOf(await host.write(description, { owner: 'tool', replace: [] })).sheets;
    },
    readBack: async (names) => readGrid(await saved(), names),
  });
  const reading: ReadingHost = {
    name: 'grid',
    growsTables: true,
    open: async (sheets) => {
      // A workbook has a sheet at least.
      await open(inGrid(sheets.length === 0 ? [{ name: 'Empty', rows: [] }] : sheets));
      return host;
    },
  };
  testReading(reading);
  testLayout(reading);
  testAppending({
    name: 'grid',
    open: async (sheets) => {
      await open(inGrid(sheets));
      return host;
    },
    makesRoom: false,
  });
  testGridWriting(grid);
  testGridUndo(grid);
  testGridPerson(grid);
  testGridKept(grid);
  testGridAnswers(grid);
  testGridPlans(grid);
  testGridSpills(grid);
});
