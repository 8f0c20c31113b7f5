import type { Case } from '../../core/evidence/case.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import type { Point } from '../../present/schematic/geometry.ts';
import { HAND_MOVES_KEY, parseHandMoves } from '../../present/schematic/hand-moves.ts';
import { toCircuitView } from '../../present/workspace/circuit-view.ts';
import { partMarks } from '../draw-case-schematic.ts';
import type { DrawCircuit } from '../drawn-circuit.ts';
import type { CasebookStore } from './casebook-store.ts';
import type { Desk } from './desk.ts';
import { circuitLines } from './trace-edit.ts';

/** The case as it stands once everything before has been written. */
type Standing = (id: string) => Promise<{ readonly one: Case; readonly assessment: Assessment } | Refusal>;

/** Where parts of the drawing of a case were put by hand. */
export async function handMovesOf(store: CasebookStore, id: string): Promise<ReadonlyMap<string, Point>> {
  return parseHandMoves((await store.cases.readScreen(id))[HAND_MOVES_KEY]);
}

/** What the desk shows of a traced circuit. Drawing takes longer than an entry: it is done on what stood when it was asked for, and entries do not wait behind it. */
export function circuitAtDesk(
  store: CasebookStore,
  standing: Standing,
  draw: DrawCircuit,
): Pick<Desk, 'circuit' | 'liveDrawing' | 'drawing'> {
  return {
    async circuit(id) {
      const here = await standing(id);
      return isRefusal(here) ? here : { lines: circuitLines(here.one), view: toCircuitView(here.one, here.assessment) };
    },
    async liveDrawing(id) {
      const here = await standing(id);
      if (isRefusal(here)) return here;
      const drawn = await draw(here.one, { moves: await handMovesOf(store, id), marks: partMarks(here.assessment), live: true });
      return { drawing: drawn === null ? null : { svg: drawn.figure.markup, barrier: drawn.barrier, places: drawn.places } };
    },
    async drawing(id) {
      const here = await standing(id);
      if (isRefusal(here)) return here;
      const drawn = await draw(here.one, { moves: await handMovesOf(store, id), marks: partMarks(here.assessment) });
      if (drawn === null) return refuse('no-circuit', id, 'a case whose parts have pins on common nets', { place: '/parts' });
      return { figure: drawn.figure, about: here.assessment.case, tool: here.assessment.tool };
    },
  };
}
