/** Colours by meaning, light and dark. sea: pass, rust: fail, gorse: inconclusive, slate: not assessed, heather: act here. */
export const LIGHT_COLOURS = `--paper:#fbfcfa;--side:#f0f3f0;--sunk:#e6ebe7;--line:#d3dad6;--line-strong:#788580;--ink:#14201e;--ink-2:#414e4a;--ink-3:#586661;--sea:#00647d;--rust:#b02e18;--rust-tint:#fbe4de;--rust-solid:#b02e18;--on-rust:#fbfcfa;--gorse:#7a5800;--gorse-fill:#e0a92e;--gorse-tint:#fbf0d3;--slate:#586661;--heather:#5a3fc0;--heather-tint:#ece8fa;--mains:#8a5a14;--mains-tint:#f8efdf;--touch-tint:#edf4f4;--copper:#b5713a;--tape:#c9a93a;--former:#d7ddd9;--core:#65716d;color-scheme:light;`;
export const DARK_COLOURS = `--paper:#101716;--side:#161f1d;--sunk:#1e2926;--line:#2c3835;--line-strong:#72807b;--ink:#e9eeeb;--ink-2:#b6c2bd;--ink-3:#95a39d;--sea:#5fc6de;--rust:#ff8d70;--rust-tint:#3b1c15;--rust-solid:#c23c20;--on-rust:#ffffff;--gorse:#f3d57c;--gorse-fill:#f3d57c;--gorse-tint:#352a0e;--slate:#95a39d;--heather:#b9a9ff;--heather-tint:#272144;--mains:#e0ae63;--mains-tint:#231d13;--touch-tint:#132022;--copper:#c98449;--tape:#b39f4c;--former:#3a4744;--core:#7d8a85;color-scheme:dark;`;

/** What every figure needs, on a page and in a file of its own. */
export const FIGURE_CSS = `
svg{display:block;font-family:"Source Sans 3",system-ui,sans-serif;overflow:visible}
svg text{fill:var(--ink);font-size:12px}
.ml .good,.ml .bad,.ml .tick{stroke:var(--ink-3);stroke-width:1;fill:none}.ml .bad{stroke-dasharray:1 3}.ml .tick{opacity:.55}
.ml .limit{stroke:var(--ink);stroke-width:2;fill:none}.ml .limit.secondary{stroke-dasharray:6 3}.ml .limit.memory{stroke-dasharray:2 3}
.ml .limit.two,.ml .limit.rung{stroke-width:1.5}
.ml .sign{fill:var(--ink)}
.ml .thread{stroke:var(--line-strong);stroke-width:1;opacity:.7;fill:none}
.ml .m-pass{stroke:var(--sea);fill:var(--sea)}.ml .m-fail{stroke:var(--rust);fill:var(--rust)}.ml .m-inconclusive{stroke:var(--gorse);fill:var(--gorse-fill)}.ml .m-unassessed,.ml .m-inapplicable{stroke:var(--slate);fill:none}
.ml .open{fill:none}.ml .full{stroke:none}.ml .blank{fill:var(--paper)}.ml .whisker{stroke:none;opacity:.26}
.ml .halo{stroke:none;fill:var(--paper)}
.ml .hatching{stroke:var(--slate);stroke-width:.9;fill:none;opacity:.75}.ml .anywhere{fill:none;stroke:var(--slate);stroke-width:.75;stroke-dasharray:2 2}
.ml text{font-size:11px;fill:var(--ink-3)}
.ml.fig text{font-size:12px;fill:var(--ink)}.ml.fig text.ax{font-size:11.5px;fill:var(--ink-2)}.ml.fig text.name{font-size:13px;font-weight:500}.ml.fig text.strong{font-weight:600}
.ml.fig text.word{font-weight:600;stroke:none}.ml.fig text.word.m-pass{fill:var(--sea)}.ml.fig text.word.m-fail{fill:var(--rust)}.ml.fig text.word.m-inconclusive{fill:var(--gorse)}.ml.fig text.word.m-unassessed,.ml.fig text.word.m-inapplicable{fill:var(--slate)}
.ml.fig text.says{font-size:13px;paint-order:stroke;stroke:var(--paper);stroke-width:4px;stroke-linejoin:round}
.cov{display:inline-block}.cov .f{fill:currentColor}.cov .e{fill:none;stroke:currentColor;stroke-width:1.6}.cov .h{fill:none;stroke:currentColor;stroke-width:1.2}.cov.strip .e{stroke-width:1}.cov.strip .h{stroke-width:.9;opacity:.8}
.load .grid{stroke:var(--line);stroke-width:1;fill:none}.load .axis{stroke:var(--ink-2);stroke-width:1;fill:none}
.load .claim{fill:var(--ink-3);opacity:.16}.load .claimed{stroke:var(--ink-2);stroke-width:1;stroke-dasharray:2 2;fill:none}
.load .curve{stroke:var(--ink);stroke-width:1.25;fill:none}.load .point{fill:var(--ink)}.load .point.hollow{fill:var(--paper);stroke:var(--ink);stroke-width:1.2}.load .ring{fill:none;stroke:var(--ink);stroke-width:1.3}.load .spread{stroke:var(--ink);stroke-width:1;opacity:.8;fill:none}

.wind .former{fill:var(--former)}.wind .core{fill:var(--core)}.wind .rule{stroke:var(--ink-2);stroke-width:1;fill:none}.ml.fig.wind text.on-core{fill:var(--paper);font-size:11px}
.wind .tape{stroke:var(--tape);fill:none}.wind .tape.guess{stroke-dasharray:5 4}.wind .unknown{fill:none;stroke:var(--slate);stroke-dasharray:3 3}
.wind .turn{stroke:var(--copper);stroke-width:1.1;fill:var(--paper)}.wind .turn.mains{fill:var(--copper)}.wind .turn.between{stroke-dasharray:1.5 1.5}.wind .turn.unknown{stroke:var(--slate)}.wind .cover{fill:var(--paper);stroke:var(--ink-2);stroke-width:.9}
.wind .way,.across .way{stroke-width:2.4;fill:none}
.across .node{stroke:var(--ink);stroke-width:1.2;fill:var(--paper)}.across .node.mains{fill:var(--mains-tint);stroke:var(--mains)}.across .node.between{stroke-dasharray:3 2}
.across .wall{stroke:var(--ink-3);stroke-width:1;fill:none}.across .edge{stroke:var(--ink-2);stroke-width:1.2;fill:none}.across .edge.none{stroke-dasharray:1 3}.across .edge.part{stroke-dasharray:5 3}.across .edge.double{stroke-width:3.6}.across .core-line{stroke:var(--paper);stroke-width:1.4;fill:none}.across .edge.open{stroke-dasharray:2 4}.across .edge.lit{stroke:var(--rust);stroke-width:2.2}.across .edge.lit.double{stroke-width:3.6}.across .edge.lit.good{stroke:var(--sea)}.across .edge.lit.doubt{stroke:var(--gorse)}
.across .disc{fill:var(--paper);stroke:var(--ink-2);stroke-width:1}.across .disc.lit{stroke:var(--rust);stroke-width:1.8}.across .disc.lit.good{stroke:var(--sea)}.across .disc.lit.doubt{stroke:var(--gorse)}
.load .crossing{stroke-width:1.5;fill:none}
.soak .model{stroke:var(--ink-3);stroke-width:1.5;stroke-dasharray:5 3;fill:none}.soak .end{fill:var(--ink);opacity:.3;stroke:none}.soak .at-end{stroke:var(--ink);stroke-width:1.5;fill:none}
.soak .limit{stroke-width:1.5;fill:none}.soak .stop{stroke:var(--ink-2);stroke-width:1;stroke-dasharray:2 3;fill:none}
.ml.fig.thermal-figure text.degrees{fill:#14201e;stroke:#fbfcfa;stroke-width:3px;paint-order:stroke}.ml.fig.thermal-figure text.tag{fill:#fbfcfa}
`;
