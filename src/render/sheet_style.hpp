// How a sheet looks: two sides of Letter paper, or as wide as the screen has room for.
#pragma once

namespace quoin {

/// All of it is measured by the letters, which are larger on a screen. What is under `.sheet` holds
/// in a page, too, where the sheet stands in a tree of its own.
inline constexpr const char* sheet_style = R"css(
@page { size: letter; margin: 10mm 14mm 13mm;
  @bottom-left { font: 9pt "Source Sans 3", "Noto Sans", Helvetica, Arial, sans-serif;
    font-size-adjust: .486; color: #55554f;
    vertical-align: top; padding-top: 2mm; }
  @bottom-right { font: 9pt "Source Sans 3", "Noto Sans", Helvetica, Arial, sans-serif;
    font-size-adjust: .486; color: #55554f;
    vertical-align: top; padding-top: 2mm; } }
body { margin: 0; background: #fff; }
.sheet, .sheet * { box-sizing: border-box; }
.sheet { container-type: inline-size; --color: #1d1d1b; color: #1d1d1b; background: #fff;
  max-width: 64em; margin: 0 auto; padding: 2.2em; overflow-wrap: anywhere;
  font: 400 1rem/1.3 var(--letters, "Source Sans 3"), "Noto Sans", Helvetica, Arial, sans-serif;
  font-size-adjust: .486;
  font-variant-numeric: tabular-nums; text-align: left; }
.sheet p, .sheet h1, .sheet h2, .sheet dl, .sheet dd, .sheet ul, .sheet figure { margin: 0; }
.sheet h1, .sheet .large strong, .sheet .sums dd {
  font-family: var(--display, "Source Serif 4"), "Noto Serif", Georgia, serif; font-weight: 500; }
.sheet h1 { font-size: 2.4em; line-height: 1.1; margin: .25em 0 .1em; }
.sheet h2 { font-size: 1.15em; font-weight: 600; margin: 0 0 .3em; break-after: avoid; }
.sheet section, .sheet .beside { margin-top: 1em; }
.sheet dt, .sheet small, .sheet .small, .sheet .estimate { color: #55554f; }
.sheet small { font-size: inherit; }
.sheet dt::first-letter, .sheet tbody th::first-letter, .sheet li::first-letter {
  text-transform: uppercase; }
.sheet header { position: relative; border-top: .4em solid var(--color); padding-top: .6em; }
.sheet .from strong { color: var(--color); font-weight: 700; margin-right: .8em; }
.sheet .buyer { position: absolute; right: 0; top: .6em; }
.sheet .front { display: grid; grid-template-columns: 3fr 2fr; gap: 1em 2.4em; margin-top: 1em;
  padding: 1em 0; border-top: 1px solid #c9c9c2; border-bottom: 1px solid #c9c9c2; }
.sheet .month { margin: 0; }
.sheet .month h2 { font-size: 1em; margin: 0; }
.sheet .large { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .6em; }
.sheet .large strong { font-size: 4.4em; line-height: 1.05; color: var(--color); }
.sheet .large small, .sheet .sums small { font-size: .6em; color: inherit; }
.sheet .terms { display: flex; flex-wrap: wrap; gap: .3em 1.6em; margin-top: .5em; }
.sheet .terms dd { font-weight: 600; }
.sheet .sums { display: grid; align-content: start; gap: .5em; padding-left: 1.6em;
  border-left: 1px solid #c9c9c2; }
.sheet .sum dd { font-size: 2em; line-height: 1.1; }
.sheet .part { display: flex; gap: .6em; }
.sheet .part dd { font: inherit; }
.sheet .estimate { margin-top: .4em; }
.sheet table { border-collapse: collapse; width: 100%; }
.sheet th, .sheet td { padding: .05em 0; vertical-align: baseline; text-align: left;
  font-weight: 400; }
.sheet td { text-align: right; padding-left: .8em; white-space: nowrap; }
.sheet tr { break-inside: avoid; }
.sheet .areas { columns: 2; column-gap: 2.4em; }
.sheet .areas table { break-inside: avoid; }
.sheet .areas table + table { margin-top: .5em; }
.sheet caption { text-align: left; font-weight: 600; color: var(--color); }
.sheet .beside strong { font-weight: 600; }
.sheet .beside p + p { margin-top: .25em; }
.sheet .drawings { display: flex; gap: 1.2em; align-items: flex-end; justify-content: center; }
.sheet figure.plan { flex: 3 1 0; max-width: 34em; }
.sheet figure.lot { flex: 2 1 0; max-width: 16em; }
.sheet figcaption { text-align: center; }
.sheet svg { display: block; width: 100%; max-height: 24em; }
.sheet svg text { font-family: inherit; }
.sheet path.chosen { stroke: #a8480a; }
.sheet text.chosen, .sheet .room.chosen .ground { fill: #a8480a; }
.sheet .lot-map text { fill: currentColor; stroke: none; text-anchor: middle; }
.sheet .lot-map .lot-line { stroke-opacity: .35; }
.sheet .lot-map .chosen .lot-line { stroke: var(--color); stroke-opacity: 1; stroke-width: 2; }
.sheet .side { table-layout: fixed; }
.sheet .side td { padding-left: .4em; }
.sheet .side thead td { width: 24%; }
.sheet .side thead th { font-weight: 600; overflow-wrap: break-word; text-align: right;
  vertical-align: bottom; padding: 0 0 .3em .4em; }
.sheet .side tbody tr:first-child > * { border-top: 1px solid #1d1d1b; }
.sheet .side + .side { margin-top: 1em; }
.sheet .in-front { background: color-mix(in srgb, var(--color) 9%, #fff);
  print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.sheet .sum > th, .sheet .sum > td { font-weight: 600; border-top: 1px solid #1d1d1b; }
.sheet tr.gap > * { padding-top: .6em; }
.sheet .days td { padding-left: .5em; }
.sheet .days { display: grid; grid-template-columns: 6fr 5fr 6fr; gap: 0 2em; }
.sheet ul { padding-left: 1.1em; }
.sheet .notes ul { columns: 2; column-gap: 2.4em; }
.sheet li { margin-bottom: .15em; orphans: 2; widows: 2; }
.sheet .keep { break-inside: avoid; }
.sheet .who { display: grid; grid-template-columns: 3fr 3fr 2fr 2fr 3fr; gap: .8em 1.2em;
  margin-top: 1em; align-items: end; }
.sheet .who dd { border-bottom: 1px solid #8a8a84; min-height: 1.6em; }
.sheet .paper-side + .paper-side { margin-top: 2.5em; }
@container (max-width: 40em) {
  .sheet .front, .sheet .days, .sheet .who { grid-template-columns: 1fr; }
  .sheet .sums { padding: .8em 0 0; border-left: 0; border-top: 1px solid #c9c9c2; }
  .sheet .buyer { position: static; }
  .sheet .areas, .sheet .notes ul { columns: 1; }
  .sheet .drawings { flex-direction: column; align-items: stretch; }
  .sheet figure.plan, .sheet figure.lot { flex: none; max-width: none; }
  .sheet svg { max-height: none; }
  .sheet .scroll { overflow-x: auto; }
  .sheet .side { table-layout: auto; width: auto; }
  .sheet .side th[scope="row"], .sheet .side thead td { position: sticky; left: 0;
    background: #fff; min-width: 7.5em; }
}
@media (max-width: 40em) { .sheet { padding: 1em; } }
@media print {
  .sheet { font-size: 9pt; line-height: 1.2; padding: 0; max-width: none; }
  .sheet section, .sheet .beside { margin-top: .7em; }
  .sheet .front { margin-top: .7em; padding: .7em 0; }
  .sheet .side, .sheet .notes { line-height: 1.16; }
  .sheet h1 { font-size: 2.1em; }
  .sheet .large strong { font-size: 3.6em; }
  .sheet .sum dd { font-size: 1.7em; }
  .sheet svg { max-height: 18em; }
  .sheet figure.lot { max-width: 15em; }
  .sheet .paper-side + .paper-side { margin-top: 0; break-before: page; }
}
)css";

} // namespace quoin
