import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { WindowPlan } from './winding-plan.ts';

/** Upper left corner of the window in the drawing. */
export interface At {
  readonly x0: number;
  readonly y0: number;
}

const LEAD_IN = 14; // px from the end of a winding to where its wire leaves
const LEAD_OUT = 6; // px that a wire end reaches beyond what it crosses
const SLEEVE = 4.4; // px
const APART = 9; // px between two lead-outs on one side

/** Wire ends on their way out of the window, over the layers that they cross; one in a sleeve lies in an outline. */
export function drawLeads(sheet: TransformerSheet, plan: WindowPlan, { x0, y0 }: At): Markup {
  const drawn = { left: 0, right: 0 };
  return joined(
    sheet.layers.flatMap((layer) => {
      const own = plan.layers.find(({ id }) => id === layer.id);
      if (layer.is !== 'winding' || own === undefined) return [];
      return layer.leads.map(({ end, crosses, sleeved }) => {
        const side = end === 'finish' ? 'right' : 'left';
        const step = LEAD_IN + APART * drawn[side];
        drawn[side] += 1;
        const x = x0 + (side === 'left' ? own.from + step : own.to - step);
        const reached = plan.layers.filter(({ id }) => crosses.includes(id));
        const isOut = reached.some(({ y }) => y < own.y) || reached.length === 0;
        const from = y0 + own.y + own.height / 2;
        const to = isOut ? y0 - LEAD_OUT : y0 + Math.max(...reached.map(({ y, height }) => y + height)) + LEAD_OUT;
        const sleeve =
          sleeved === true
            ? html`<rect class="cover" x="${c(x - SLEEVE / 2)}" y="${c(Math.min(from, to))}" width="${SLEEVE}" height="${c(Math.abs(to - from))}"/>`
            : NOTHING;
        return html`${sleeve}<path class="turn" d="M${c(x)} ${c(from)}V${c(to)}"/>`;
      });
    }),
  );
}

/** Where the lead-out of a way ("lead:t1:s:start:p") leaves its winding, from the left of the drawing. */
export function leadAt(sheet: TransformerSheet, plan: WindowPlan, way: string): number {
  const [, , winding, lead] = way.split(':');
  const own = plan.layers.find(({ id }) => id === winding);
  const layer = sheet.layers.find(({ id }) => id === winding);
  const end = layer?.is === 'winding' ? layer.leads.find(({ id }) => id === lead)?.end : null;
  return own === undefined ? plan.wall : end === 'finish' ? own.to - LEAD_IN : own.from + LEAD_IN;
}
