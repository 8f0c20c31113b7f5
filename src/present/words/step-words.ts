type Args = Readonly<Record<string, string | number>>;

/** What one step of undo was, after "Undo" or "Redo": the words of the button. */
const STEPS: Readonly<Record<string, (args: Args) => string>> = {
  entry: () => 'entry',
  cell: ({ row }) => `entry in row ${row}`,
  state: () => 'state of a value',
  details: () => 'details of a reading',
  paste: ({ rows }) => `paste of ${rows} rows`,
  add: () => 'what was added',
  addRow: () => 'added row',
  addItem: () => 'what was added',
  addExhibit: () => 'added evidence',
  addFile: ({ name }) => `file ${name}`,
  remove: () => 'removal',
  removeRow: ({ row }) => `removal of row ${row}`,
  removeExhibit: () => 'removal of evidence',
  trace: () => 'circuit lines',
  pad: ({ pin }) => (pin === '' ? 'pad' : `pad ${pin}`),
  padGone: () => 'pad taken away',
  layOver: () => 'photo laid on another',
  region: () => 'region on a photo',
  scale: () => 'scale of a photo',
  foresee: () => 'where a soak is heading',
  circuitRun: () => 'run of the circuit',
  keep: () => 'kept reading',
  mark: () => 'mark',
  turn: () => 'turn',
  addLayer: () => 'added layer',
  moveLayer: () => 'moved layer',
  removeLayer: () => 'removal of a layer',
  photo: () => 'photo',
  back: () => 'kept reading taken back',
  loadOff: () => 'load off',
  sweep: () => 'begun sweep',
  day: () => 'new day',
  milestone: () => 'what happened to the sample',
};

export function stepWords(name: { readonly key: string; readonly args: Args } | null): string {
  if (name === null) return '';
  return STEPS[name.key]?.(name.args) ?? name.key;
}
