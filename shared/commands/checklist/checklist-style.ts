/** Black on white, for A4 and a pencil. A row is never parted, and headings stay with what they head. */
export const checklistStyle = `@page { size: A4; margin: 14mm 12mm }
* { box-sizing: border-box }
body { margin: 0 auto; max-width: 186mm; padding: 4mm; font: 9.5pt/1.35 Georgia, "Times New Roman", serif; color: #000; background: #fff }
h1 { font-size: 16pt; line-height: 1.2; margin: 0 0 1mm }
h2 { font-size: 11.5pt; margin: 5mm 0 1.5mm; break-after: avoid }
p { margin: 0 0 2mm }
table { width: 100%; border-collapse: collapse }
th, td { border: 0.3pt solid #000; padding: 1mm 1.5mm; text-align: left; vertical-align: top }
thead th { font-size: 8pt; font-weight: normal }
thead { display: table-header-group }
tr, dt, dd { break-inside: avoid }
dt { break-after: avoid; font-weight: bold }
dd { margin: 0 0 1.5mm 4mm }
cite { display: block; font-size: 8pt }
small { font-weight: normal }
small, .details, .features td { font-size: 8.5pt }
.cautions { border: 1.2pt solid #000; padding: 0 3mm 1mm; break-inside: avoid-page }
.danger { text-decoration: underline }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; margin: 0.4mm 0.8mm 0 0; border: 0.7pt solid #000; vertical-align: -0.5mm }
.choice { white-space: nowrap; margin-right: 2mm }
.field { white-space: nowrap; margin-right: 4mm }
.line { display: inline-block; border-bottom: 0.5pt solid #000; height: 5.5mm; vertical-align: bottom }
.short { min-width: 20mm }
.long { min-width: 34mm }
.blank { border-bottom: 0.5pt solid #000; height: 7.5mm }
.parts th:nth-child(1) { width: 17mm }
.parts th:nth-child(2) { width: 26mm }
.parts th:nth-child(4) { width: 22mm }
.parts th:nth-child(5) { width: 18mm }
.parts th:nth-child(6) { width: 30mm }
.features th:nth-child(1) { width: 30mm }
.features th:nth-child(3) { width: 50mm }
`;
