/** Style of a schematic, and of the spread of what it sets, beside the one of all figures. */
export const SCHEMATIC_CSS = `
.sch{font-family:"Source Sans 3",system-ui,sans-serif}.sch .ground{fill:var(--paper)}.sch .mains{fill:var(--mains-tint)}.sch .touch{fill:var(--touch-tint)}
.sch path,.sch rect,.sch circle{stroke:var(--ink);stroke-width:1.4;fill:none;stroke-linejoin:round}.sch .plain{stroke:none}
.sch .art rect{fill:var(--paper)}.sch .art .clear{fill:none}.sch .art .solid{fill:var(--paper)}.sch .art .bar{stroke-width:2.4}.sch .dot,.sch .joint{fill:var(--ink);stroke:none}
.sch .barrier{stroke-width:1.6}.sch text{fill:var(--ink);font-size:12px;stroke:none}.sch text.second{fill:var(--ink-2)}.sch text.net{fill:var(--ink-2);font-style:italic}.sch text.side{fill:var(--ink-2);font-weight:600}
.sch .foot{stroke-width:1.4}.sch .failing .art path,.sch .failing .art rect,.sch .failing .art circle{stroke:var(--rust)}.sch .failing text.first{fill:var(--rust);font-weight:600}
.sch .mark .open{fill:none}.sch .mark .full{stroke:none}.sch .mark .m-fail{stroke:var(--rust);stroke-width:2.6}.sch .mark .m-inconclusive{stroke:var(--gorse)}.sch .mark path.m-inconclusive{fill:var(--gorse-fill)}.sch .mark .blank{fill:var(--paper)}.sch .mark .m-slip{stroke:var(--ink-2)}
.spread .bar{fill:var(--ink-3);opacity:.55}.load.spread .limit{stroke:var(--ink);stroke-width:2}
`;
