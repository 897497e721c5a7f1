/** What the fake knows of pages and pictures. */
import { readBox } from './address.ts';
import type { ClassMembers, ValueMember } from './members.ts';
import { invalid } from './office-error.ts';
import type { FakeSheet, FakeShape } from './workbook-model.ts';

/** A PNG's first bytes, in base64. */
const PNG = 'iVBORw0KGgo';
const LONGEST_HEADER = 255;

const setting = (name: string, sound: (value: unknown) => boolean): ValueMember => ({
  since: 9,
  set: (sheet: FakeSheet, value: unknown) => {
    if (!sound(value)) throw invalid(`${name} can't be ${String(value)}`);
    sheet.page.values[name] = value;
  },
});
const points = (name: string): ValueMember =>
  setting(name, (value) => typeof value === 'number' && value >= 0);

/** Either a scale, 10 to 400 percent, or numbers of pages to fit on. */
function isZoom(value: unknown): boolean {
  const zoom = value as Excel.PageLayoutZoomOptions;
  const { scale, horizontalFitToPages: across, verticalFitToPages: down } = zoom;
  if (scale !== undefined) {
    return scale >= 10 && scale <= 400 && across === undefined && down === undefined;
  }
  return [across, down].every((pages) => pages === undefined || pages >= 1);
}

const headerText = (where: string): ValueMember => ({
  since: 9,
  set: ({ page }: FakeSheet, text: string) => {
    if (text.length > LONGEST_HEADER) throw invalid('a header of more than 255 characters');
    page.header[where] = text;
  },
});

const shapeValue = <Key extends keyof FakeShape>(
  key: Key,
  sound: (value: FakeShape[Key]) => boolean = () => true,
): ValueMember => ({
  since: 9,
  set: (shape: FakeShape, value: FakeShape[Key]) => {
    if (!sound(value)) throw invalid(`a shape's ${key} can't be ${String(value)}`);
    (shape as { -readonly [Name in keyof FakeShape]: FakeShape[Name] })[key] = value;
  },
});

/** With its proportions locked, one side of a picture pulls the other along. */
function side(one: 'width' | 'height', other: 'width' | 'height'): ValueMember {
  return {
    since: 9,
    set: (shape: FakeShape, value: number) => {
      if (!(value > 0)) throw invalid(`a ${one} of ${value}`);
      if (shape.lockAspectRatio) shape[other] *= value / shape[one];
      shape[one] = value;
    },
  };
}

export const PAGE_CLASSES = {
  PageLayout: {
    values: {
      paperSize: setting('paperSize', (value) => value === 'Letter' || value === 'A4'),
      orientation: setting('orientation', (v) => v === 'Portrait' || v === 'Landscape'),
      leftMargin: points('leftMargin'),
      rightMargin: points('rightMargin'),
      topMargin: points('topMargin'),
      bottomMargin: points('bottomMargin'),
      headerMargin: points('headerMargin'),
      footerMargin: points('footerMargin'),
      zoom: setting('zoom', isZoom),
    },
    parts: { headersFooters: { since: 9, gives: 'HeaderFooterGroup' } },
    methods: {
      setPrintTitleRows: {
        since: 9,
        run: (sheet: FakeSheet, [rows = '']: string[]) => {
          if (!/^\$\d+:\$\d+$/u.test(rows)) throw invalid(`no title rows "${rows}"`);
          sheet.page.titleRows = rows;
        },
      },
      setPrintArea: {
        since: 9,
        run: (sheet: FakeSheet, [area = '']: string[]) => {
          if (!/^[A-Z]+:[A-Z]+$/u.test(area)) throw invalid(`no whole columns "${area}"`);
          sheet.page.printArea = area;
        },
      },
    },
  },
  HeaderFooterGroup: { parts: { defaultForAllPages: { since: 9, gives: 'HeaderFooter' } } },
  HeaderFooter: {
    values: {
      centerHeader: headerText('centerHeader'),
      leftFooter: headerText('leftFooter'),
      rightFooter: headerText('rightFooter'),
    },
  },
  PageBreakCollection: {
    methods: {
      add: {
        since: 9,
        gives: 'PageBreak',
        run: (sheet: FakeSheet, [address = '']: string[]) => {
          const { top } = readBox(address);
          // Excel breaks above the cell; there is nothing above the first row.
          if (top === 0) throw invalid('a page break above the first row');
          sheet.page.breaks.push(top);
          return { top };
        },
      },
    },
  },
  PageBreak: {},
  ShapeCollection: {
    methods: {
      addImage: {
        since: 9,
        gives: 'Shape',
        run: (sheet: FakeSheet, [image = '']: string[]): FakeShape => {
          if (!image.startsWith(PNG)) throw invalid('a picture that is no PNG');
          const texts = { name: 'Picture', altTextTitle: '', altTextDescription: '' };
          const box = {
            width: 100,
            height: 100,
            left: 0,
            top: 0,
            lockAspectRatio: true,
            placement: 'TwoCell',
          };
          const shape = { image, ...texts, ...box };
          sheet.shapes.push(shape);
          return shape;
        },
      },
    },
  },
  Shape: {
    values: {
      name: shapeValue('name', (name) => name !== ''),
      altTextTitle: shapeValue('altTextTitle'),
      altTextDescription: shapeValue('altTextDescription'),
      lockAspectRatio: shapeValue('lockAspectRatio'),
      placement: {
        ...shapeValue('placement', (value) => value === 'OneCell' || value === 'TwoCell'),
        since: 10,
      },
      left: shapeValue('left', (value) => value >= 0),
      top: shapeValue('top', (value) => value >= 0),
      width: side('width', 'height'),
      height: side('height', 'width'),
    },
  },
} as const satisfies Readonly<Record<string, ClassMembers>>;
