// How a sheet looks, on a screen and on Letter or A4 paper.
#pragma once

namespace quoin {

inline constexpr const char* sheet_style = R"css(
@page { size: auto; margin: 13mm 15mm; }
* { box-sizing: border-box; }
body { max-width: 182mm; margin: 10mm auto; padding: 0 4mm; color: #1d1d1b; background: #fff;
  overflow-wrap: anywhere;
  font: 9.4pt/1.36 "Source Sans 3", "Noto Sans", "DejaVu Sans", Arial, sans-serif; }
header { border-bottom: 1.2pt solid #1d1d1b; margin-bottom: 5mm; padding-bottom: 3mm; }
header p { margin: 0; }
h1 { font-size: 19pt; line-height: 1.15; margin: 1mm 0 2.5mm; font-weight: 600; }
h2 { font-size: 12pt; margin: 0 0 1.5mm; font-weight: 600; break-after: avoid; }
h3 { font-size: 10pt; margin: 3mm 0 0.5mm; font-weight: 600; break-after: avoid; }
section { margin: 0 0 5mm; }
.facts { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.8mm 6mm; margin: 0; }
.facts div { display: flex; gap: 2mm; }
dt { color: #5a5a55; }
dd { margin: 0; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { padding: 0.4mm 0; vertical-align: baseline; text-align: left; font-weight: 400; }
td { text-align: right; padding-left: 3mm; white-space: nowrap; }
tr { break-inside: avoid; }
thead th { font-weight: 600; text-align: right; padding: 0 0 1mm 3mm; vertical-align: bottom;
  border-bottom: 0.6pt solid #1d1d1b; }
tbody th::first-letter, li::first-letter { text-transform: uppercase; }
.area th { font-weight: 600; padding-top: 1.5mm; break-after: avoid; }
.under th { padding-left: 4mm; }
.note td { text-align: left; padding: 0 30mm 0 8mm; white-space: normal; color: #5a5a55;
  font-size: 8.6pt; }
.sum th, .sum td { font-weight: 600; border-top: 0.6pt solid #1d1d1b; padding-top: 1mm; }
.gap th { padding-top: 2.5mm; }
.gap td { padding-top: 2.5mm; }
.side { table-layout: fixed; break-inside: avoid; margin-bottom: 3mm; font-size: 8.8pt; }
.side col.label { width: 38mm; }
.side td, .side thead th { padding-left: 2mm; }
.facts dd { min-width: 0; }
.side.wide { font-size: 8.2pt; }
.side.one col.label { width: 50mm; }
.small { font-size: 8.6pt; color: #43433f; margin: 1mm 0; }
ul { margin: 0; padding-left: 4.5mm; }
li { margin-bottom: 0.6mm; }
.rests li { font-size: 8.8pt; }
.plans { display: flex; flex-wrap: wrap; gap: 3mm 6mm; justify-content: center;
  align-items: flex-end; }
.plans figure { margin: 0; width: 84mm; break-inside: avoid; }
.plans svg { display: block; width: 100%; max-height: 90mm; }
.plans figure:only-child { width: 120mm; }
.plans figure:only-child svg { max-height: 110mm; }
.plans path.chosen { stroke: #a8480a; }
.plans text.chosen, .plans .room.chosen .ground { fill: #a8480a; }
figcaption { text-align: center; font-size: 8.6pt; }
.who { break-inside: avoid; }
.who dl { display: grid; grid-template-columns: auto 1fr auto 1fr; gap: 3mm 4mm; margin: 1mm 0 0; }
.who dd { border-bottom: 0.4pt solid #8a8a84; min-height: 5.2mm; }
.beside { columns: 2; column-gap: 10mm; }
.beside section { break-inside: avoid; }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 10mm; }
.keep { break-inside: avoid; }
@media print { body { margin: 0; padding: 0; max-width: none; } }
)css";

} // namespace quoin
