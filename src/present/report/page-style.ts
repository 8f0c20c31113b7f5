import { ONE_SAMPLE } from '../words/fixed-sentences.ts';
import { cssString } from './css-string.ts';

/** The report on A4: small type, two columns for the derivation, nothing cut by the end of a page, and the pages counted. */
export function pageCss(runningHead: string): string {
  return `
@page{size:A4;margin:20mm 17mm 20mm 18mm;@top-left{content:${cssString(runningHead)};font:400 8.5pt "Source Sans 3",sans-serif;color:#414e4a}@bottom-left{content:${cssString(ONE_SAMPLE)};font:400 8.5pt "Source Sans 3",sans-serif;color:#414e4a}@bottom-right{content:counter(page) " of " counter(pages);font:400 8.5pt "Source Sans 3",sans-serif;color:#414e4a}}
@page:first{@top-left{content:""}}
@page short{margin:13mm 15mm 12mm 16mm}
.short{page:short}
@media print{${PRINT_CSS}}
`;
}

/** Little was examined: two pages before the derivation. What stands twice on a screen stands once on paper. */
const SHORT_CSS = `
.short section[aria-labelledby=part-portrait],.short .ports:has(tbody>tr:only-child),.short figure:has(svg.list),.short .gap,.short p.gap,.short .chap h4 span,.short .chap li i,.short .nexts>li:nth-child(n+5),.short .group .lead .ask{display:none}
.short .run{font-size:9px}.short h1{font-size:22px;line-height:26px;margin:0}.short .sub{margin:0;font-size:11px;line-height:14px}.short .invented{padding:1px 8px;margin-top:3px;font-size:10px}.short h2{font-size:14px;line-height:17px;margin:7px 0 2px;padding-top:3px}
.short .txt{font-size:11px;line-height:14px}.short .txt+.txt,.short .verdict .txt{margin-top:3px}.short .small,.short .lablist,.short .find.one .small,.short .find.one .remarks li,.short figcaption,.short .chap h4,.short .chap ul,.short .chap li,.short .nexts>li,.short .nexts .small,.short .last h4,.short .last ul,.short .last li,.short .caution li{font-size:9px;line-height:11.2px}
.short .facts{display:block;margin-top:3px;font-size:9px;line-height:11.5px}.short .facts div,.short .facts dt,.short .facts dd,.short .facts dd i{display:inline;font-size:9px;line-height:11.5px}.short .facts dt::after{content:": "}.short .facts dd i::before{content:" ("}.short .facts dd i::after{content:")"}.short .facts div:not(:last-child)::after{content:"; "}
.short .kv.bench{margin-top:3px;padding-top:2px;font-size:9.5px;line-height:12px}.short .kv.bench dt,.short .kv.bench dd{padding:0}
.short .find.one{padding:1px 0 2px 26px;font-size:9px;line-height:11.2px}.short .find.one .remarks::before{content:" "}.short .find.one .prow{margin-left:-26px}.short .find.one .prow .ln{align-self:center;height:26px;overflow:hidden}.short .find.one .small,.short .find.one .remarks{display:inline;margin-left:0}.short .find.one .remarks li::after{content:" "}.short .find.one .prow{min-height:22px}.short .find.one .remarks li{display:inline;padding:0}.short .find.one .remarks li::before{content:none}.short .find.one .remarks{margin-top:0}.short .group{padding:2px 0 0}.short .group .lead h3{font-size:11.5px}
.short figure{margin:2px 0;display:inline-block;vertical-align:top;width:49%}.short .many figure{width:100%}.short figure .wide{display:none}.short figure .narrow{display:block}.short figure svg{width:100%;height:auto;max-height:33mm}
.short .half{padding:4px 10px 5px}.short .half .word{font-size:20px;line-height:23px}.short .half .word svg{margin-top:1px}.short .half .over{font-size:10px;line-height:12px}.short .half .second{font-size:11px;line-height:14px;margin-top:0}.short .half .cvs{font-size:10.5px;line-height:13px;margin-top:1px}.short .verdict{margin-top:5px;padding:6px 0 4px}
.short .small .grade,.short figcaption .grade{font-size:inherit}.short .unex,.short .last{font-size:9px;line-height:11.2px}.short .unex{margin-top:0}.short .unex .chap{margin-bottom:1px}.short .unex .chap h3{font-size:9.5px;line-height:12px}
.short .last{padding:2px 8px}.short .last h4,.short .last ul,.short .last li{display:inline;padding:0;text-indent:0}.short .last li::before{content:none}.short .last li:not(:last-child)::after{content:"; "}.short .last li:last-child::after{content:". "}.short .last h3{font-size:10px;line-height:12px}
.short .caution{break-inside:avoid;padding:2px 10px;columns:2;column-gap:6mm}.short .caution li{padding:0 0 1px}
`;

const PRINT_CSS = `
:root{--paper:#fff;--side:#fff;--sunk:#f2f2f2;--ink-3:#4a5652;--line:#b9c2be}
html{background:#fff;font-size:11.5px;line-height:1.35}body{display:block;padding:0}.sheet{padding:0}.contents,.skip,.screen,.users{display:none}
a,a.from{text-decoration:none}:target{background:none;box-shadow:none}
h1{font-size:30px;margin-top:6px}h2{font-size:18px;margin:20px 0 8px;padding-top:8px;break-after:avoid}h2+p.small{break-after:avoid}h3{font-size:14px;break-after:avoid}h4{break-after:avoid}
p,li,dd{orphans:3;widows:3}
.txt{font-size:12.5px;line-height:1.38;max-width:none}.small,.lablist,.find .remarks li,.dots li,.group .lead p{font-size:10.5px;line-height:14px;max-width:none}.txt+.txt,.verdict .txt{margin-top:5px}
.kv,.kv .strong{font-size:11.5px}.kv dt,.kv dd{padding:1px 0}.facts{font-size:11px;gap:4px 14px;grid-template-columns:repeat(6,minmax(0,1fr));margin-top:8px}.facts dd i{font-size:10px;line-height:12px}.facts dt{line-height:13px}.facts,.kv.bench{break-inside:avoid}
.prow{min-height:27px}.prow .nm{padding:1.5px 0}.prow .nm b,.find.one .nm h4{font-size:12px;line-height:14px}.prow .nm span{font-size:10.5px;line-height:12px}.prow .vl{font-size:11.5px}.prow .wd{font-size:11px;line-height:12px}
.find{padding:8px 0 7px}.find .top{align-items:flex-start}.find .ask,.group .lead .ask{font-size:12px;margin:1px 0 3px 26px}.find .body{grid-template-columns:290px minmax(0,1fr)}.find .body .kv{font-size:11.5px}.find .rest{margin-top:2px}.group{padding:8px 0 2px;break-inside:auto}.find.one{padding:3px 0 4px}.find.one .small,.find.one .remarks li{font-size:10.5px;line-height:13px}
.find .rest .kv{display:block;line-height:15px}.find .rest .kv dt,.find .rest .kv dd{display:inline;padding:0}.find .rest .kv dt::after{content:": "}.find .rest .kv dt{font-weight:600;white-space:normal}.find .rest .kv dd:not(:last-child)::after{content:" · "}.find .rest .kv dd .small{font-size:inherit;color:inherit}
figure{margin:6px 0 8px}.wide>svg{max-width:84%;height:auto}.many{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:0 12px}.many .wide{display:none}.many .narrow{display:block}.many svg{width:100%;height:auto}.many figcaption{font-size:10.5px}.keep{break-inside:avoid}figcaption{font-size:11px;max-width:none}table.d{font-size:11.5px}table.d,table.d tr{break-inside:avoid}table.d td{padding:2px 8px 2px 0}
.gap,p.gap{padding:6px 10px;font-size:11.5px;line-height:15px;break-inside:avoid}
.unex{margin-top:4px}.unex .chap{margin:0 0 6px;break-inside:auto}.unex .chap h3{font-size:11.5px}.unex .chap h4{margin:0}.unex .chap h4,.unex .chap ul,.unex .chap li{display:inline;font-size:10.5px;line-height:14px;padding:0;text-indent:0}.unex .chap h4 span,.unex .chap li i{font-size:10px}.unex .chap h4::after{content:" "}.unex .chap li svg{display:none}.unex .chap li:not(:last-child)::after{content:"; "}.unex .chap li:last-child::after{content:". "}
.nexts{columns:2;column-gap:6mm}.nexts>li{padding:2px 0 2px 22px;font-size:10.5px;line-height:13px}.nexts .small{display:inline;margin-left:4px;font-size:10px;line-height:13px}.last{padding:5px 10px;break-inside:auto}.last li,.last h4{font-size:10px;line-height:13px}.last h4{break-after:avoid}.caution{padding:6px 10px}.caution li{font-size:11px;max-width:none;padding:1px 0}
.sources{columns:2;column-gap:6mm}.sources,.sources p{font-size:10px;line-height:12.5px}.sources>li{padding:2px 0;break-inside:auto}
.steps{columns:3;column-gap:5mm}.step,.step.leaf{padding:2px 0;font-size:9px;line-height:11.5px}.step h3{font-size:9.5px;line-height:12px}.step .tags,.step .remarks li{font-size:9px;line-height:11.5px}.step .grade{font-size:9px}.step .no{min-width:18px}.step.leaf h3,.step.leaf .tags:not(.users){display:inline}.step.leaf .tags::before{content:" "}.step .eq{display:block;font-size:10px;line-height:13px;margin:0}.step .eq>span{margin-right:4px}.step .remarks{margin-top:0}.budget{display:none}.budgetline{display:inline}
.paper{display:block}${SHORT_CSS}
.mono{font-size:9px}.about .txt,#part-statement .txt{font-size:10.5px;line-height:14px}
`;
