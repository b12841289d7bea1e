/**
 * The look of the report. Print and screen share it: one column of pictures 720 pixels wide, notes beside it where there
 * is room. Ink on paper; nothing is told by colour alone.
 */
export const pageStyle = (id: string): string => `
:root { --ink: #14213d; --paper: #fbfaf6; --water: #2f5d73; --faint: #4a5568; --line: #b9c2cc; }
* { box-sizing: border-box; }
html { color-scheme: light; -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; padding: 0 1.5rem 4rem; max-width: 67rem; color: var(--ink); background: var(--paper);
  font: 1rem/1.5 Georgia, "Times New Roman", "Liberation Serif", serif; }
h1, h2, h3 { font-weight: normal; line-height: 1.2; text-wrap: balance; overflow-wrap: anywhere; }
h1 { font-size: 2rem; margin: 0 0 .8rem; max-width: 45rem; }
h2 { font-size: 1.45rem; margin: 0 0 1rem; }
h3 { font-size: 1.1rem; margin: 0; }
p { margin: 0 0 .8rem; max-width: 45rem; overflow-wrap: anywhere; }
a { color: var(--water); text-underline-offset: .15em; }
svg { display: block; width: 100%; max-width: 720px; height: auto; }
svg > rect:first-of-type { fill: none; }
.leadline { height: 14px; margin: 0 0 2rem; border-top: 2px solid var(--ink);
  background: repeating-linear-gradient(90deg, var(--ink) 0 2px, transparent 2px 120px) 0 0 / 100% 14px no-repeat,
    repeating-linear-gradient(90deg, var(--ink) 0 1px, transparent 1px 24px) 0 0 / 100% 7px no-repeat;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.plate { margin-top: 3.2rem; border-top: 1px solid var(--ink); padding-top: .7rem; }
.beside { display: grid; grid-template-columns: minmax(0, 720px) minmax(11rem, 1fr); gap: 0 2rem; align-items: start; }
figure { margin: 0 0 1.6rem; }
figcaption, .note, .facts, table, nav, .caution, footer { font: .84rem/1.45 "Helvetica Neue", Arial, "Liberation Sans", sans-serif; }
figcaption, .note { color: var(--faint); overflow-wrap: anywhere; }
.apart { margin: 1.8rem 0 .6rem; }
figcaption p, .note p { margin-bottom: .5rem; }
.facts { margin: 0; }
.facts dt { color: var(--faint); }
.facts dd { margin: 0 0 .5rem; overflow-wrap: anywhere; }
.caution { margin: 1.2rem 0; padding: .5rem 0; max-width: 45rem; border-top: 4px double var(--ink);
  border-bottom: 4px double var(--ink); font-weight: bold; }
nav { margin: 1.4rem 0; }
nav ol { margin: 0; padding: 0; list-style: none; columns: 13rem; }
.sheet { overflow-x: auto; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--faint); padding-bottom: .4rem; }
th, td { text-align: left; vertical-align: top; padding: .22rem .9rem .22rem 0; border-bottom: 1px solid var(--line); }
td { overflow-wrap: anywhere; }
th { font-weight: bold; border-bottom: 1px solid var(--ink); }
tbody th { font-weight: normal; border-bottom: 1px solid var(--line); }
td.n, th.n { text-align: right; white-space: nowrap; }
.w { white-space: nowrap; }
.cast { margin: 1.8rem 0 0; padding-top: .5rem; border-top: 1px solid var(--line); }
.cast figure { margin-bottom: .3rem; }
.cast details { display: inline-block; vertical-align: top; margin-right: 2rem; max-width: 100%; }
.cast header { display: flex; flex-wrap: wrap; gap: 0 1.2rem; align-items: baseline; margin-bottom: .2rem; }
.cast header .note { margin: 0; }
details { margin: .3rem 0; font-size: .9rem; }
summary { cursor: pointer; color: var(--water); }
.findings { padding: 0; list-style: none; max-width: 45rem; }
.findings li { margin: 0 0 .8rem; padding-left: 1rem; border-left: 4px double var(--ink); overflow-wrap: anywhere; }
footer { margin-top: 3rem; border-top: 1px solid var(--ink); padding-top: .6rem; color: var(--faint); }
@media (max-width: 60rem) { .beside { grid-template-columns: minmax(0, 1fr); } }
@media print {
  @page { size: A4; margin: 15mm 15mm 17mm;
    @bottom-left { content: "${id} · not for navigation or diving"; font: 8pt Arial, "Liberation Sans", sans-serif; color: #4a5568; }
    @bottom-right { content: counter(page) " / " counter(pages); font: 8pt Arial, "Liberation Sans", sans-serif; color: #4a5568; } }
  :root { --paper: #fff; }
  body { padding: 0; max-width: none; font-size: 10.5pt; }
  h1 { font-size: 19pt; }
  h2 { font-size: 14pt; }
  figcaption, .note, .facts, table, nav, .caution, footer { font-size: 8.5pt; }
  h2, h3, .cast header { break-after: avoid; }
  figure, .cast, .findings li, tr, .caution { break-inside: avoid; }
  thead { display: table-header-group; }
  .beside { display: block; }
  .beside > .facts, .cast .facts { display: grid; grid-template-columns: max-content 1fr; gap: 0 1rem; }
  .facts dd { margin: 0 0 .15rem; }
  .plate { margin-top: 8mm; }
  .cast { margin-top: 5mm; }
  nav, details, .cast details { display: none; }
  .key { break-after: avoid; }
  p { break-inside: avoid; }
  a { color: inherit; text-decoration: none; }
  th, td { padding: .12rem .5rem .12rem 0; }
}
`;
