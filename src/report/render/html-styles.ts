import { sheetStyles } from "./sheet-svg.js";

/** Styles of a document: two themes on a screen, black on white on paper, table heads on every page. */
export const htmlStyles =
  (): string => `:root{color-scheme:light dark;--ink:#1c1a17;--paper:#fbf9f5;--rule:#8a8175;--soft:#5a5349;--mark:#7a2e1d}
@media (prefers-color-scheme:dark){:root{--ink:#ece7df;--paper:#191715;--rule:#857c70;--soft:#b9b0a3;--mark:#f0a58f}}
*{box-sizing:border-box}html{scroll-behavior:auto}
body{margin:0 auto;padding:24px clamp(12px,3vw,48px) 64px;max-width:1560px;background:var(--paper);color:var(--ink);font:16px/1.5 Georgia,"Times New Roman",serif;overflow-wrap:anywhere}
h1{font-size:1.7rem;line-height:1.2;font-weight:400;margin:0 0 12px}h2{font-size:1.25rem;font-weight:400;border-top:3px double var(--rule);padding-top:10px;margin:40px 0 12px}
h3{font-size:1rem;margin:24px 0 6px}p,li{max-width:80ch}a{color:inherit;text-underline-offset:3px}
a:focus-visible,[tabindex]:focus-visible{outline:3px solid var(--mark);outline-offset:2px}
.block{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,220px),1fr));border:1px solid var(--rule);margin:0}
.block div{padding:6px 10px;border:1px solid var(--rule);margin:-1px 0 0 -1px}.block dt{font-size:.78rem;color:var(--soft)}.block dd{margin:0}
nav ul{display:flex;flex-wrap:wrap;gap:4px 20px;padding:0;list-style:none}
figure{margin:0 0 24px}figure details{font-size:.9rem}figcaption{font-size:.85rem;color:var(--soft)}.scroll{overflow-x:auto}.scroll svg{display:block}.scroll+.scroll{margin-top:28px}
table{border-collapse:collapse;width:100%;font-size:.92rem}th,td{text-align:left;vertical-align:top;padding:5px 8px 5px 0;border-bottom:1px solid var(--rule)}
th,td{overflow-wrap:break-word}.name{overflow-wrap:anywhere}thead th{white-space:nowrap;border-bottom:2px solid var(--ink);font-weight:400;font-style:italic}
section section p,section section ul{margin:4px 0}
@media (max-width:720px){thead{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}tr,td,tbody th{display:block}tr{border-bottom:1px solid var(--rule);padding:8px 0}
td,tbody th{border:0;padding:1px 0 1px 7.5em;position:relative;min-height:1.5em}td::before,tbody th::before{content:attr(data-label);position:absolute;left:0;font-weight:400;font-style:italic;color:var(--soft)}}
@page{size:letter landscape;margin:12mm}@page drawing{size:portrait;margin:12mm}
@media print{:root{color-scheme:light;--ink:#000;--paper:#fff;--rule:#000;--soft:#000;--mark:#000}body{padding:0;max-width:none;font-size:10.5pt}nav{display:none}
h2,h3{break-after:avoid}thead{display:table-header-group}tr,section section,figure,.block{break-inside:avoid}p{orphans:3;widows:3}a{text-decoration:none}
.scroll{overflow:visible}.scroll svg{width:100%;height:auto;max-height:100vh}.drawing{page:drawing}.drawing details{display:none}}
${sheetStyles()}`;
