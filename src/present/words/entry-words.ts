type Shown = string | number | undefined;

/** Words of entries: what stands in an empty one, and beside it. */
export const ENTRY_WORDS = {
  notChosen: 'not chosen',
  notSaid: 'not said',
  yes: 'yes',
  no: 'no',
  and: 'and',
  anAmount: 'an amount',
  removeOne: (label: Shown, value: Shown): string => `remove ${label} ${value}`,
  removeKey: 'remove',
  whenFilesNote: 'when, files, note',
  itsStateWhenWithWhat: (label: Shown): string => `${label}: its state, when, with what, under which conditions`,
  state: ': state',
  whenWithWhatUnderWhich: '+ when, with what, under which conditions',
  anotherTabWroteHereMeanwhile: (theirs: Shown, mine: Shown): string =>
    `Another tab wrote ${theirs} here meanwhile; yours was ${mine} and is not kept.`,
  enterAll: (count: number): string => (count === 2 ? 'enter both' : `enter all ${count}`),
  nameOfTheNew: (item: Shown): string => `name of the new ${item}`,
  newOne: (item: Shown): string => `new ${item} …`,
  item: 'item',
  nothing: 'nothing',
} as const;
