/** How the shop view looks: large figures, large boxes for gloves, dark where the device is. */
import {
  DARK_PALETTE,
  HIGH_CONTRAST_PALETTE,
  LIGHT_PALETTE,
  paletteCss,
} from '../../drawings/palette.ts';

/** Screens are paged once the script runs; else they stand one below the other, as on paper. */
export const STYLE = `
:root { ${paletteCss(LIGHT_PALETTE)} --accent: #1B5A84; --on-accent: #FFFFFF; --amber: #FFF3D6; color-scheme: light dark; }
@media (prefers-color-scheme: dark) { :root { ${paletteCss(DARK_PALETTE)} --accent: #9CCBEE; --on-accent: #10202B; --amber: #4A3A12; } }
@media (forced-colors: active) { :root { ${paletteCss(HIGH_CONTRAST_PALETTE)} --accent: ButtonText; --on-accent: ButtonFace; --amber: Canvas; } }
* { box-sizing: border-box; }
html { font-family: system-ui, -apple-system, 'Segoe UI', Roboto, 'Liberation Sans', sans-serif; -webkit-text-size-adjust: 100%; }
body { margin: 0; padding: 0 1rem 1rem; background: var(--cl-paper); color: var(--cl-ink); line-height: 1.35; overflow-wrap: anywhere; }
main, header { max-width: 44rem; margin: 0 auto; }
h1 { font-size: 1.25rem; margin: 1rem 0 0.25rem; }
h2 { font-size: 1.5rem; margin: 1rem 0 0.5rem; }
h3 { font-size: 1.15rem; margin: 1.5rem 0 0.5rem; }
h4 { font-size: 1rem; margin: 1rem 0 0.25rem; }
p { margin: 0.5rem 0; }
.note, dt { color: var(--cl-faint); font-size: 1rem; }
.strong { font-weight: 600; }
.caution { background: var(--amber); border-left: 0.4rem solid var(--cl-feed); padding: 0.5rem 0.75rem; }
.big { font-size: 2.5rem; line-height: 1.1; font-weight: 600; font-variant-numeric: tabular-nums; margin: 0; }
.big.long { font-size: 1.75rem; }
.ticks.words .big { font-size: 1.25rem; text-decoration: none !important; }
dl { margin: 0; }
dl > div { padding: 0.5rem 0; border-bottom: 1px solid var(--cl-rail); }
dd { margin: 0; }
figure { margin: 0.75rem 0; }
figure svg { display: block; width: 100%; height: auto; max-height: 80vh; }
.bar { overflow-x: auto; }
.bar svg { min-width: 40rem; }
ul, ol { margin: 0; padding: 0; list-style: none; }
.cautions { list-style: decimal; padding-left: 1.5rem; }
.cautions li { margin: 0.5rem 0; }
.tick { display: flex; gap: 1rem; align-items: center; width: 100%; min-height: 5rem; padding: 0.75rem; margin: 0.5rem 0; border: 2px solid var(--cl-metal); border-radius: 0.5rem; cursor: pointer; }
.tick input { flex: none; width: 2.5rem; height: 2.5rem; margin: 0; accent-color: var(--accent); }
.tick .words > span { display: block; }
.tick:has(:checked) { border-style: dashed; background: var(--cl-removed); }
.tick:has(:checked) .big { text-decoration: line-through; }
.tick:focus-within, a:focus-visible, button:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.all a { display: flex; justify-content: space-between; gap: 1rem; min-height: 3.5rem; align-items: center; padding: 0.5rem 0.75rem; border-bottom: 1px solid var(--cl-rail); color: inherit; font-size: 1.15rem; }
button { font: inherit; font-size: 1.25rem; font-weight: 600; min-height: 4rem; padding: 0.5rem 1rem; border: 2px solid var(--accent); border-radius: 0.5rem; background: var(--cl-paper); color: var(--cl-ink); cursor: pointer; }
button.main { background: var(--accent); color: var(--on-accent); }
button:disabled { opacity: 0.45; cursor: default; }
.ways { display: none; }
.paged .ways { display: flex; gap: 0.5rem; position: sticky; bottom: 0; padding: 0.5rem 0; background: var(--cl-paper); max-width: 44rem; margin: 0 auto; }
.paged .ways button { flex: 1; }
.paged .screen:not(.shown) { display: none; }
.paged.unread .ways, .paged.unread .screen:not(#read-first) { display: none; }
.paged.unread #read-first { display: block; }
.script { display: none; }
.paged .script { display: block; }
@media print {
  .ways, .script { display: none !important; }
  .screen { display: block !important; break-before: page; }
  .big { font-size: 1.5rem; }
}
`;
