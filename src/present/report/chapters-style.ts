/** The head of the report, its chapters, and the lists that go with them. */
export const CHAPTERS_CSS = `
.paper{display:none}
.kv.bench{margin-top:12px;border-top:1px solid var(--line);padding-top:6px}.kv.bench dt,.kv.bench dd{padding:1px 0}
.group{padding:14px 0 4px;border-bottom:1px solid var(--line)}.group .lead{break-after:avoid}.group .lead p{margin-left:26px;font-size:12px;line-height:16px;color:var(--ink-2);max-width:84ch;overflow-wrap:anywhere}.group .lead .ask{font:italic 400 14px/1.4 var(--serif);margin:2px 0 3px 26px}.group .lead h3{margin-left:26px}
.find.one{padding:5px 0 6px;border-bottom:0;border-top:1px solid var(--line)}.find.one .prow{grid-template-columns:16px minmax(0,1fr) 124px minmax(130px,auto) 104px;column-gap:10px}.find.one .nm h4{font:500 13.5px/16px var(--sans);overflow-wrap:anywhere}.find.one .vl{width:150px}.find.one .vl .strong{font-weight:600}.find.one .small,.find.one .remarks{margin-left:26px;line-height:16px}.find.one .remarks{margin-top:2px}.find.one .remarks li{font-size:12px}.find.one .prow .ln{background:none}
.gap-none{margin-top:10px}p.gap b{font-weight:600}p.gap{margin-top:14px;font-size:13px;line-height:18px;overflow-wrap:anywhere}
.ports{margin:4px 0 16px}.ports caption{text-align:left;font-size:13px;color:var(--ink-2);padding-bottom:4px}.wordmark{display:inline-flex;gap:6px;align-items:center}
.last{padding:10px 14px;border:1px solid var(--line-strong);border-left:4px solid var(--ink);break-inside:avoid}.last .hz{margin-top:0;color:var(--ink)}.last h4{font:400 13px/1.4 var(--sans);margin-top:6px}.last ul{columns:2;column-gap:28px}.last li{font-size:13px;line-height:17px;padding:1px 0 1px 14px;text-indent:-14px;break-inside:avoid;overflow-wrap:anywhere}.last li::before{content:"– ";color:var(--ink-3)}
.nexts{counter-reset:next}.nexts>li{counter-increment:next;padding-left:26px;position:relative}.nexts>li::before{content:counter(next) ".";position:absolute;left:0;color:var(--ink-2)}.nexts .small{display:block}
.sources{font-size:13px}.sources>li{padding:5px 0;border-bottom:1px solid var(--line);break-inside:avoid;overflow-wrap:anywhere}.sources p{font-size:12px;line-height:16px;color:var(--ink-2);margin-left:26px}.sources .grade{margin-left:0}
.wider{overflow-x:auto}@media print{figure:has(.wider){page:wide;break-before:page}.wider svg{width:100%;height:auto;max-height:145mm}}@page wide{size:A4 landscape}.jobs{margin:8px 0 14px}.jobs table{width:100%;font-size:12.5px;margin-top:6px}.jobs th[scope=row]{text-align:left;font-weight:500;white-space:nowrap;padding-right:12px}.jobs td{padding-right:12px;overflow-wrap:anywhere}.jobs tr{break-inside:avoid}
.budgetline{display:none}
.step .no{display:inline-block;min-width:22px;color:var(--ink-2);font-weight:400}
@media screen and (max-width:700px){.ports caption{display:block}.find.one .prow{grid-template-columns:16px minmax(0,1fr) 124px}.find.one .vl{width:auto}.find.one .small,.find.one .remarks,.group .lead p,.group .lead .ask,.group .lead h3{margin-left:0}.last ul{columns:1}.sources p{margin-left:0}.kv.bench dt{padding-top:4px}}
`;
