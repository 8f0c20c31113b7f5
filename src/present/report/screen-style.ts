import { DARK_COLOURS, LIGHT_COLOURS } from '../figure/figure-style.ts';

/** The report on a screen, wide and narrow. */
export const SCREEN_CSS = `
:root{${LIGHT_COLOURS}--sans:"Source Sans 3",system-ui,sans-serif;--serif:"Source Serif 4",Georgia,serif}
@media screen and (prefers-color-scheme:dark){:root{${DARK_COLOURS}}}
*,*::before,*::after{box-sizing:border-box}
html{background:var(--sunk);color:var(--ink);font:400 14px/1.45 var(--sans);font-kerning:normal;-webkit-font-smoothing:antialiased;scroll-padding-top:16px;overflow-wrap:break-word}
body{margin:0;display:grid;grid-template-columns:172px minmax(0,860px) 172px;justify-content:center;gap:24px;padding:24px}
h1,h2,h3,h4,p,dl,dd,ol,ul,figure,table{margin:0;padding:0}ol,ul{list-style:none}
h1,h2,h3{font-family:var(--serif);font-weight:500;line-height:1.15;letter-spacing:-.006em}
h1{font-size:38px;margin-top:12px;overflow-wrap:anywhere}h2{font-size:24px;margin:40px 0 12px;padding-top:14px;border-top:2px solid var(--ink)}h3{font-size:18px}
a{color:inherit}a.from{text-decoration:underline dotted var(--heather);text-decoration-thickness:1.5px;text-underline-offset:3px}
:focus-visible{outline:2px solid var(--heather);outline-offset:2px;border-radius:2px}
:target{background:var(--heather-tint);box-shadow:0 0 0 6px var(--heather-tint)}
.skip{position:absolute;left:-9999px}.skip:focus{left:16px;top:8px;background:var(--paper);padding:6px 10px;z-index:2}
.contents{position:sticky;top:24px;align-self:start;font-size:13px;padding-top:56px}.contents a{display:block;padding:3px 0;text-decoration:none;color:var(--ink-2);min-height:24px}.contents a:hover{text-decoration:underline}
.sheet{background:var(--paper);padding:44px 60px 40px;min-width:0;grid-column:2}
.run{display:flex;justify-content:space-between;gap:16px;font-size:12px;color:var(--ink-2);align-items:center}.run span{min-width:0;overflow-wrap:anywhere}.run span:first-child{flex:none;display:flex;gap:8px;align-items:center}
.sub{font-size:15px;color:var(--ink-2);margin-top:3px;overflow-wrap:anywhere}
.invented{margin-top:10px;padding:7px 12px;background:var(--gorse-tint);border:2px solid var(--gorse);color:var(--ink);font-weight:600}
.verdict{margin-top:14px;padding:14px 0 10px;border-top:2px solid var(--ink);border-bottom:1px solid var(--line)}
.txt{font:400 15px/1.45 var(--serif);max-width:76ch;text-wrap:pretty;overflow-wrap:anywhere}.txt+.txt,.verdict .txt{margin-top:8px}
.lablist{font-size:12px;line-height:16px;color:var(--ink-2);margin-top:10px}.lablist b{color:var(--ink);font-weight:600}
.small{font-size:12px;color:var(--ink-2);max-width:92ch;overflow-wrap:anywhere}.small+.small{margin-top:3px}
.facts{display:grid;grid-template-columns:repeat(auto-fill,minmax(128px,1fr));gap:8px 20px;font-size:12.5px;margin-top:12px}.facts>div{min-width:0}.facts dt{color:var(--ink-2);line-height:15px}.facts dd{font-weight:600;overflow-wrap:anywhere}.facts dd i{font-weight:400;color:var(--ink-2);font-style:normal;display:block;line-height:14px;font-size:12px}.facts dd i.changed{font-weight:600;color:var(--ink);border-left:3px solid var(--ink);padding-left:5px}
.grade{font-size:12px;font-weight:600;white-space:nowrap;margin-left:5px}.grade::before{content:"";display:inline-block;width:2px;height:11px;margin-right:5px;vertical-align:-1px;background:var(--ink);print-color-adjust:exact}.grade.secondary::before{background:repeating-linear-gradient(var(--ink) 0 4px,transparent 4px 6px)}.grade.memory::before{background:repeating-linear-gradient(var(--ink) 0 2px,transparent 2px 4.5px)}td>.grade,.dots .grade{margin-left:0}
.u{color:var(--ink-3)}.q{white-space:nowrap}
.pass{color:var(--sea)}.fail{color:var(--rust)}.inconclusive{color:var(--gorse)}.unassessed,.inapplicable{color:var(--slate)}
.refused{text-decoration:line-through;text-decoration-thickness:2px;color:var(--ink-3)}
/* portrait */
.prow,.phead{display:grid;grid-template-columns:16px minmax(0,1fr) 124px minmax(64px,auto) 104px;column-gap:8px;align-items:center}.prow{min-height:34px;break-inside:avoid}
.prow .nm{padding:3px 0}.prow .nm b{display:block;font-weight:500;font-size:13.5px;line-height:16px;overflow-wrap:anywhere}.prow .nm span{display:block;font-size:12px;line-height:14px;color:var(--ink-2);overflow-wrap:anywhere}
.prow .ln,.phead .ln{align-self:stretch;display:flex;align-items:center;background:linear-gradient(var(--line-strong),var(--line-strong)) center/1px 100% no-repeat;print-color-adjust:exact}.prow .ln svg{background:var(--paper)}
.prow .vl{text-align:right;font-size:13px;line-height:15px;width:118px;overflow-wrap:anywhere}.prow .wd{font-size:12px;line-height:14px;font-weight:600;overflow-wrap:anywhere}
.phead{min-height:24px;align-items:stretch;break-after:avoid}.phead h3{grid-column:1/3;font:600 12.5px/1 var(--sans);color:var(--ink-2);letter-spacing:0;align-self:end;padding-bottom:4px}.phead .vl{width:118px}
.phead.first .ln{background:none;align-items:end}.phead text.ax{font-size:11px;fill:var(--ink-3)}.phead text.strong{fill:var(--ink);font-weight:600}
.key{margin-top:10px}
/* findings */
.find{padding:16px 0 14px;border-bottom:1px solid var(--line);break-inside:avoid;overflow-wrap:anywhere}.find .top{display:flex;gap:10px;align-items:baseline}.find .top h3{flex:1;min-width:0}.find .top .wd{font-weight:600;font-size:13px;text-align:right;max-width:34%}.find .top svg{flex:none;align-self:flex-start;margin-top:3px}
.find.plain svg{display:inline-block;vertical-align:-1px;margin-right:3px}.find.plain .wd{font-weight:600;margin-right:6px}
.find .ask{font:italic 400 14px/1.4 var(--serif);color:var(--ink-2);margin:3px 0 8px 26px;max-width:76ch}
.find .body{margin-left:26px;display:grid;grid-template-columns:290px minmax(0,1fr);gap:6px 28px;align-items:start}.find .body.plain{grid-template-columns:minmax(0,1fr)}
.find .rest{margin:6px 0 0 26px}
.kv{display:grid;grid-template-columns:auto minmax(0,1fr);column-gap:14px;font-size:13px}.kv dt{color:var(--ink-2);padding:3px 0;white-space:nowrap}.kv dd{padding:3px 0;overflow-wrap:anywhere}.kv .strong{font-weight:600;font-size:14px}
.find .kv{grid-template-columns:72px minmax(0,1fr)}.find .body .kv{grid-template-columns:38px minmax(0,1fr)}
.remarks li,.dots li{padding-left:14px;position:relative;font-size:13px;max-width:84ch;overflow-wrap:anywhere}.remarks li::before,.dots li::before{content:"–";position:absolute;left:0;color:var(--ink-3)}.remarks{margin-top:6px}
.hz{font:600 13px/1.3 var(--sans);color:var(--ink-2);margin-top:22px;letter-spacing:0;break-after:avoid}
/* tables */
.scroll{overflow-x:auto}
table.d{border-collapse:collapse;width:100%;font-size:13px}table.d th{text-align:left;font-weight:600;color:var(--ink-2);font-size:12px;border-bottom:1px solid var(--ink);padding:3px 10px 3px 0;vertical-align:bottom}table.d td{border-bottom:1px solid var(--line);padding:4px 10px 4px 0;vertical-align:baseline;overflow-wrap:anywhere}table.d .num{text-align:right;white-space:nowrap}table.d tr{break-inside:avoid}table.d tr>:last-child{padding-right:0}
/* steps */
.step{padding:12px 0 10px;border-bottom:1px solid var(--line);break-inside:avoid;overflow-wrap:anywhere}.step .id{font-size:12px;color:var(--ink-2)}.step h3{font:600 14px/1.3 var(--sans);letter-spacing:0}
.step.leaf{padding:7px 0 6px}
.eq{display:grid;grid-template-columns:auto auto minmax(0,1fr);column-gap:7px;font:400 15px/1.5 var(--serif);margin:5px 0}.eq>*{min-width:0}.eq .res{font-weight:600;font-family:var(--sans)}.sym{font-style:italic}.sym sub,.eq sub{font:400 .72em var(--sans);font-style:normal;line-height:0}
.budget{margin:5px 0}.budget .bl{display:grid;grid-template-columns:minmax(0,1fr) 96px 110px 72px;gap:10px;font-size:12px;line-height:17px;align-items:center;max-width:640px}.budget .num{text-align:right}.budget svg rect{fill:var(--ink-3)}
.tags{font-size:12px;color:var(--ink-2);line-height:17px}
.gap{padding:10px 12px;border-left:4px solid var(--ink);background:var(--sunk);print-color-adjust:exact}
.caution{background:var(--gorse-tint);padding:10px 14px;print-color-adjust:exact;border:1px solid var(--gorse)}.caution li{max-width:84ch;padding:2px 0}
.nexts>li{padding:9px 0;border-bottom:1px solid var(--line);break-inside:avoid;overflow-wrap:anywhere}.nexts b{font-weight:600}
.chap{break-inside:avoid;margin-top:12px}.chap h3{font:600 13px/1.3 var(--sans);letter-spacing:0}.chap h3 span{font-weight:400;color:var(--ink-2)}.chap h4{font:400 12.5px/1.4 var(--sans);color:var(--ink-2);margin-top:6px}.chap h4 b{color:var(--ink);font-weight:600}.chap ul{columns:2;column-gap:28px;margin-top:3px}.chap li{font-size:13px;line-height:18px;break-inside:avoid;padding-left:18px;text-indent:-18px;overflow-wrap:anywhere}.chap li .glyph{display:inline-block;vertical-align:-1px;margin-right:7px}.chap .why{font-size:12px;color:var(--ink-2);margin-top:2px}.chap .why::first-letter{text-transform:uppercase}.chap li i{font-style:normal;color:var(--ink-2);font-size:12px}
figure{margin:14px 0 20px;break-inside:avoid}figcaption{font-size:13px;color:var(--ink-2);margin-top:6px;max-width:76ch;overflow-wrap:anywhere}figcaption b{color:var(--ink);font-weight:600}
.narrow{display:none}
.mono{overflow-wrap:anywhere;font-size:12px}
@media screen and (max-width:1160px){body{grid-template-columns:minmax(0,860px);padding:16px}.contents{display:none}.sheet{grid-column:1}}
@media screen and (max-width:700px){
body{padding:0}.sheet{padding:20px 16px 32px}h1{font-size:30px}h2{font-size:22px;margin-top:32px}
.prow,.phead{grid-template-columns:16px minmax(0,1fr) 124px}.prow{padding:3px 0}.prow .vl{width:auto;text-align:left;grid-column:2;grid-row:2}.prow .wd{grid-column:3;grid-row:2;text-align:right}.prow .ln{grid-column:3;grid-row:1}.prow .ms{grid-row:1}.phead .vl,.phead .wd{display:none}
.find .body{grid-template-columns:minmax(0,1fr);margin-left:0}.find .ask,.find .rest{margin-left:0}.find .top{flex-wrap:wrap}.find .top .wd{max-width:none;flex-basis:100%;text-align:left;padding-left:26px}
.kv,.find .kv,.find .body .kv{grid-template-columns:minmax(0,1fr)}.kv dt{padding:5px 0 0}.kv dd{padding:0}
.chap ul{columns:1}.budget .bl{grid-template-columns:minmax(0,1fr) 64px}.budget .bl>:nth-child(2),.budget .bl>:nth-child(3){display:none}
.wide{display:none}.narrow{display:block}.run{align-items:flex-start}
table.d.stack thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}table.d.stack,table.d.stack tbody,table.d.stack tr,table.d.stack td{display:block}table.d.stack tr{border-bottom:1px solid var(--line);padding:6px 0}table.d.stack td{border:0;padding:1px 0;text-align:left!important;white-space:normal!important}table.d.stack td[data-h]::before{content:attr(data-h) " ";color:var(--ink-2)}
}
`;
