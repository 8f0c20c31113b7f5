/** The verdict in two halves, of equal weight on every width. */
export const HALVES_CSS = `
.halves{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:6px}
.half{border:2px solid var(--ink);padding:8px 13px 10px;min-width:0;print-color-adjust:exact;overflow-wrap:break-word}
.half .over{font-size:12px;line-height:15px;font-weight:600}.half .word{display:flex;gap:10px;align-items:flex-start;font:600 29px/34px var(--serif);letter-spacing:-.014em}.half .word svg{flex:none;margin-top:6px}.half .word span{min-width:0}.half .second{overflow-wrap:anywhere;font-size:14px;line-height:18px;font-weight:600;margin-top:2px}
.half .cvs{display:flex;flex-wrap:wrap;column-gap:8px;align-items:flex-start;font-size:13px;line-height:17px;font-weight:600;margin-top:3px}.half .cn{width:36px}.half .cc{padding-top:3px}
.half.grave{background:var(--rust-solid);border-color:var(--rust-solid);color:var(--on-rust)}.half.grave .m-fail{stroke:var(--on-rust)}
.half.mild{background:var(--rust-tint);border-color:var(--rust)}.half.mild .word{color:var(--rust)}
.half.clear{border-color:var(--sea)}.half.void{border:2px dashed var(--line-strong)}
.half.cv-none{background:var(--ink);color:var(--paper);background-image:repeating-linear-gradient(135deg,transparent 0 6px,color-mix(in srgb,var(--paper) 13%,transparent) 6px 7.5px)}
.half.cv-part{background:var(--sunk)}
@media screen and (max-width:700px){.half{padding:6px 8px 8px}.half .word{font-size:20px;line-height:23px;gap:7px}.half .word svg{width:18px;height:18px;margin-top:3px}.half .word span{min-width:0}.half .second{overflow-wrap:anywhere;font-size:13px;line-height:16px}.half .cvs{display:grid;grid-template-columns:auto 1fr;column-gap:6px}.half .cc{grid-row:2;grid-column:1/3;padding-top:0}.half .cn{width:auto}}
`;
