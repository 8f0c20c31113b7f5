type Shown = string | number | undefined;

/** Words of entries: what stands in an empty one, and beside it. */
export const ENTRY_WORDS = {
  notChosen: 'not chosen',
  notSaid: 'not said',
  anAmount: 'an amount',
  removeOne: (label: Shown, value: Shown): string => `remove ${label} ${value}`,
  removeKey: 'remove',
  whenFilesNote: 'when, files, note',
  itsStateWhenWithWhat: (label: Shown): string => `${label}: its state, when, with what, under which conditions`,
  state: ': state',
  whenWithWhatUnderWhich: '+ when, with what, under which conditions',
} as const;
