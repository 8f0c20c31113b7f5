import type { Note } from '../trace/step.ts';
import type { DistanceReading } from '../working/insulation/pair-facts.ts';

/** What covers a path or carries it, and why it earns nothing here: mask, lacquer, potting, printed wiring. */
export function surfaceNotes({ coating, exhibit }: DistanceReading): readonly Note[] {
  const notes: Note[] = [];
  if (coating === 'solderMask') notes.push({ key: 'maskDoesNotCount', args: {} });
  else if (coating !== null) notes.push({ key: 'coatingNeedsTests', args: { coating } });
  if (exhibit.path === 'printedWiring') notes.push({ key: 'printedWiringNotUsed', args: {} });
  return notes;
}
