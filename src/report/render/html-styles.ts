import { sheetStyles } from "./sheet-svg.js";

/** What runs along the pages of a document on paper. */
export interface Running {
  readonly title: string;
  readonly foot: string;
}

/** Styles of a document: two themes on a screen, black on white on paper, with a head and the number of the page. */
export const htmlStyles = (running: Running): string => `${screenStyles}
${paperStyles(running)}
${sheetStyles()}`;

const screenStyles = `:root{color-scheme:light dark;--ink:#1c1a17;--paper:#fbf9f5;--rule:#8a8175;--hair:#d5cdc0;--soft:#5a5349;--mark:#7a2e1d}
@media (prefers-color-scheme:dark){:root{--ink:#ece7df;--paper:#191715;--rule:#857c70;--hair:#3b3731;--soft:#b9b0a3;--mark:#f0a58f}}
*{box-sizing:border-box}html{scroll-behavior:auto}
body{margin:0 auto;padding:28px clamp(14px,3vw,32px) 64px;max-width:964px;background:var(--paper);color:var(--ink);font:16px/1.5 Charter,"Bitstream Charter",Cambria,Georgia,serif;overflow-wrap:anywhere}
h1,h2,h3,p,li,dd,th,td,summary{unicode-bidi:plaintext}
h1{font-size:1.75rem;line-height:1.2;font-weight:600;margin:0 0 14px}h2{font-size:1.25rem;line-height:1.25;font-weight:600;border-top:1px solid var(--ink);padding-top:10px;margin:44px 0 10px}
h3{font-size:1rem;line-height:1.35;margin:20px 0 4px}p,li{max-width:76ch}p{margin:8px 0}ul{padding-left:1.3em;margin:8px 0}li+li{margin-top:4px}
a{color:inherit;text-underline-offset:3px;text-decoration-color:var(--rule)}
a:focus-visible,summary:focus-visible,[tabindex]:focus-visible{outline:3px solid var(--mark);outline-offset:2px}
.block{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,200px),1fr));gap:8px 24px;border-top:3px solid var(--ink);border-bottom:1px solid var(--ink);padding:10px 0;margin:0 0 14px}
.block dt{font-size:.82rem;line-height:1.3;color:var(--soft)}.block dd{margin:0;line-height:1.35}
nav ul{display:flex;flex-wrap:wrap;gap:2px 18px;padding:0;margin:0 0 8px;list-style:none}nav li+li{margin:0}
figure{margin:0 0 24px}figure details{font-size:.9rem}.scroll{overflow-x:auto}.drawing svg{display:block;width:100%;min-width:640px;max-width:900px;height:auto}
table{border-collapse:collapse;width:100%;font-size:.92rem;line-height:1.4}th,td{text-align:left;vertical-align:top;padding:5px 12px 5px 0;border-bottom:1px solid var(--hair);font-weight:400}
th:last-child,td:last-child{padding-right:0}th,td{overflow-wrap:break-word}.name{overflow-wrap:anywhere}thead th{vertical-align:bottom;border-bottom:1px solid var(--ink);font-size:.82rem;color:var(--soft)}
.records thead th{white-space:nowrap}.grid th:first-child{min-width:9em}.grid td{min-width:6.5em}.over th{font-weight:600;padding-top:14px}.number{font-variant-numeric:tabular-nums}.number::after{content:"."}
dl{margin:0}.sheet{margin:0 0 16px}.sheet h3{margin:0 0 2px}.sheet dl div{display:grid;grid-template-columns:4.2em 1fr}.sheet dt{color:var(--soft)}.sheet dd{margin:0;max-width:76ch}
summary{cursor:pointer}.signatures{display:none}@media (min-width:960px),print{.records .short{white-space:nowrap}}
@media (max-width:720px){.records thead{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}.records tr,.records .over th{display:block}.records tr{border-bottom:1px solid var(--rule);padding:8px 0}
.records td,.records tbody th{display:grid;grid-template-columns:7em 1fr;gap:.5em;border:0;padding:1px 0}.records td:empty{display:none}.records td::before,.records tbody th::before{content:attr(data-label);color:var(--soft)}.records .over th::before{content:none}}`;

/** Letter and A4 alike: what decides is the paper of the printer. */
const paperStyles = ({
  title,
  foot,
}: Running): string => `@page{size:portrait;margin:13mm 12mm;font:7.5pt Charter,"Bitstream Charter",Cambria,Georgia,serif;
@top-left{content:${cssString(shortened(title))};vertical-align:bottom;padding-bottom:2mm}@top-right{content:"Page " counter(page) " of " counter(pages);vertical-align:bottom;padding-bottom:2mm}
@bottom-left{content:${cssString(shortened(foot))};vertical-align:top;padding-top:2mm}}
@media print{:root{color-scheme:light;--ink:#000;--paper:#fff;--rule:#000;--hair:#999;--soft:#000;--mark:#000}body{padding:0;max-width:none;font-size:8.6pt;line-height:1.32}nav,.drawing details,details:not([open])>summary::marker{display:none}
h1{font-size:15pt;margin-bottom:6pt}h2{font-size:10.5pt;margin:9pt 0 3pt;padding-top:3pt;border-top-width:.6pt;break-after:avoid}h3{font-size:8.6pt;break-after:avoid}p,li,.sheet dd{max-width:none}p{margin:3pt 0;orphans:3;widows:3}p:has(+figure){break-after:avoid;break-inside:avoid}ul{margin:3pt 0}li{break-inside:avoid}li+li{margin-top:2pt}
.block{grid-template-columns:repeat(3,1fr);gap:3pt 14pt;padding:5pt 0;margin-bottom:6pt;border-top-width:1.5pt}.block dt{font-size:7.2pt}
table{font-size:7.7pt;line-height:1.22}th,td{padding:1.5pt 6pt 1.5pt 0}thead{display:table-header-group}thead th{font-size:7.4pt}.over th{padding-top:4pt}tr,figure,.sheet,.block{break-inside:avoid}.over,.over+tr,tbody tr:first-child,tbody tr:nth-last-child(2){break-after:avoid}
a{text-decoration:none}.columns{columns:2;column-gap:7mm;font-size:7.3pt;line-height:1.22}.columns h2{font-size:9.5pt;margin:7pt 0 2pt;padding-top:2pt}.columns h3{font-size:7.3pt}.columns p,.columns ul{margin:2pt 0}.columns li+li{margin-top:1pt}.columns section:first-child h2{margin-top:0}.columns ul{padding-left:1.5em}.columns li:last-child{break-before:avoid}.sheet{margin-bottom:3.5pt}.sheet h3{margin:0}.sheet dl div{grid-template-columns:3.6em 1fr}
.signatures{display:table;break-inside:avoid;margin:0 0 6pt;font-size:7.2pt;line-height:1.2;table-layout:fixed;border-bottom:.6pt solid}.signatures th,.signatures td{border:0;padding:0 8pt 3pt 0;vertical-align:bottom}.signatures th{font-weight:600;padding-bottom:13pt}
.signatures td::before{content:"";display:block;height:17pt;border-bottom:.6pt solid;margin-bottom:1.5pt}
.scroll{overflow:visible}.drawing{margin:0}.drawing svg{width:703px;min-width:0;max-width:100%;margin:auto;height:auto;max-height:100vh}}`;

const mostLetters = 90;

function shortened(text: string): string {
  const letters = [...text];
  return letters.length <= mostLetters ? text : `${letters.slice(0, mostLetters - 1).join("")}…`;
}

/** A text as a string of CSS; whatever could end it, or the style itself, is written by its number. */
function cssString(text: string): string {
  return `"${text.replace(/[^A-Za-z0-9 .,:()-]/gu, (one) => `\\${(one.codePointAt(0) ?? 0).toString(16)} `)}"`;
}
