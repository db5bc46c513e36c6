/**
 * Black on white, for A4 and a pencil: rules between rows, and upright ones only where something is written. A row is
 * never parted, and headings stay with what they head.
 */
export const checklistStyle = `@page { size: A4; margin: 14mm 12mm }
* { box-sizing: border-box }
:root { --sans: "IBM Plex Sans Condensed", "Arial Narrow", Arial, sans-serif; font-synthesis: none }
body { margin: 0 auto; max-width: 186mm; padding: 4mm; font: 10.5pt/1.35 Alegreya, Georgia, "Times New Roman", serif; color: #000; background: #fff }
h1 { font-size: 20pt; font-weight: normal; line-height: 1.1; margin: 0 0 1.5mm; text-wrap: balance }
h2 { font-size: 14pt; font-weight: normal; font-style: italic; line-height: 1.2; margin: 6mm 0 1.5mm; break-after: avoid }
p { margin: 0 0 2mm; text-wrap: pretty }
table { width: 100%; border-collapse: collapse; border-bottom: 0.7pt solid #000 }
th, td { border-top: 0.3pt solid #000; padding: 1mm 2mm 1mm 0; text-align: left; vertical-align: top }
thead th { border-top: 0; border-bottom: 0.7pt solid #000; font: 8pt/1.3 var(--sans) }
tbody th { font-weight: normal; font-size: 11pt; line-height: 1.25 }
td:empty { border-left: 0.3pt solid #000 }
thead { display: table-header-group }
tr, dt, dd { break-inside: avoid }
dt { break-after: avoid; font: 600 9.5pt/1.35 var(--sans) }
dd { margin: 0 0 2mm }
cite { display: block; font: 8pt/1.35 var(--sans) }
small, .field { font: 8.5pt/1.35 var(--sans) }
.details { font-size: 9.5pt; line-height: 1.3 }
.features td { font-size: 10pt; line-height: 1.3 }
.cautions { border: 1.2pt solid #000; padding: 0 4mm 1.5mm; break-inside: avoid-page }
.cautions h2 { margin-top: 3mm }
strong { font-family: var(--sans); font-weight: 600 }
.danger { text-decoration: underline }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; margin: 0.4mm 0.8mm 0 0; border: 0.7pt solid #000; vertical-align: -0.5mm }
.choice { white-space: nowrap; margin-right: 2mm }
.field { white-space: nowrap; margin-right: 4mm }
.line { display: inline-block; border-bottom: 0.5pt solid #000; height: 5.5mm; vertical-align: bottom }
.short { min-width: 20mm }
.long { min-width: 34mm }
.blank { border-bottom: 0.5pt solid #000; height: 7.5mm }
.parts th:nth-child(1) { width: 17mm }
.parts th:nth-child(2) { width: 30mm }
.parts th:nth-child(4) { width: 22mm }
.parts th:nth-child(5) { width: 18mm }
.parts th:nth-child(6) { width: 30mm }
.parts thead th:nth-child(n + 4) { padding-left: 1.5mm }
.features th:nth-child(1) { width: 30mm }
.features th:nth-child(3) { width: 50mm }
`;
