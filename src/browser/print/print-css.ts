/** The look of printed blocks, wherever they stand. */
export const PRINTED_CSS = `
.printed { color: #000000; line-height: 1.2; print-color-adjust: exact; }
.printed:not(:last-child) { break-after: page; }
.printed table { border-collapse: collapse; table-layout: fixed; }
.printed thead { display: table-header-group; }
.printed tbody, .printed tr { break-inside: avoid; }
.printed td {
  box-sizing: border-box;
  padding: 0 calc(1pt * var(--print-scale));
  font: 10pt Arial, 'Liberation Sans', sans-serif;
  line-height: inherit;
}
.printed td > div { max-width: 100%; }
.printed .wrapped { overflow-wrap: anywhere; white-space: pre-wrap; }
.printed .one-line { white-space: pre; }
.printed .with-picture { position: relative; }
.printed .with-picture > .picture { position: absolute; top: 0; left: 0; max-width: none; }
.printed .picture svg { display: block; width: 100%; height: 100%; }
`;
