/** The few looks that the pane's parts share: Fluent's tokens only, so that every theme fits. */
import { makeStyles, tokens } from '@fluentui/react-components';

export const useSharedStyles = makeStyles({
  page: {
    minHeight: '100vh',
    backgroundColor: tokens.colorNeutralBackground1,
    color: tokens.colorNeutralForeground1,
    fontFamily: tokens.fontFamilyBase,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    // A phone's whole screen is the pane: a finger needs more room than the mouse beside Excel.
    '@media (pointer: coarse), (min-width: 360px) and (max-width: 760px)': {
      '& button': { minHeight: '44px' },
      '& summary': { paddingBlock: '12px' },
      '& select': { minHeight: '44px' },
    },
  },
  column: {
    maxWidth: '560px',
    marginInline: 'auto',
    paddingInline: '12px',
    boxSizing: 'border-box',
  },
  header: {
    position: 'sticky',
    top: 0,
    // Where letters are so large that the tabs take two lines, there is no room to spare for them.
    '@media (max-width: 240px), (max-height: 300px)': { position: 'static' },
    zIndex: 2,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  titleRow: {
    // The top right is kept clear for the program's own menu.
    minHeight: '34px',
    paddingInlineEnd: '36px',
    display: 'flex',
    alignItems: 'center',
    columnGap: '8px',
  },
  title: {
    margin: 0,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  main: { paddingBlock: '12px 32px' },
  section: { marginBlockEnd: '20px' },
  heading: {
    margin: 0,
    marginBlockEnd: '6px',
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  minorHeading: {
    margin: 0,
    marginBlock: '10px 4px',
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  text: { margin: 0, marginBlockEnd: '8px', overflowWrap: 'anywhere' },
  quiet: {
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: 'anywhere',
  },
  strong: { fontWeight: tokens.fontWeightSemibold },
  buttons: { display: 'flex', flexWrap: 'wrap', gap: '8px', marginBlock: '8px' },
  plainList: { listStyleType: 'none', margin: 0, padding: 0 },
  row: {
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingBlock: '4px',
  },
  spread: {
    display: 'flex',
    alignItems: 'baseline',
    justifyContent: 'space-between',
    flexWrap: 'wrap',
    columnGap: '8px',
    '& > button': { flexShrink: 0 },
  },
  select: { width: '100%', minWidth: 0 },
  field: { display: 'block', marginBlockEnd: '8px' },
  hidden: {
    position: 'absolute',
    width: '1px',
    height: '1px',
    overflow: 'hidden',
    clipPath: 'inset(50%)',
    whiteSpace: 'nowrap',
  },
  code: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: 'anywhere',
  },
});
