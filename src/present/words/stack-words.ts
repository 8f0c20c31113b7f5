/** Words of the transformer chapter: layers as they come off, what is at hand, what follows. */
export const STACK_WORDS = {
  barrier: 'The barrier',
  formerWall: 'wall of the former',
  outsideIn: 'outside in',
  layersOutsideIn: 'layers, outside in',
  countedHead: 'count',
  sizeHead: 'wire, each',
  comesOffNext: 'comes off next',
  underThisOne: 'comes off next, under the one at hand',
  winding: 'winding',
  insulation: 'insulation',
  stopsShort: 'insulation, stops short',
  ends: 'core and drive',
  core: 'Core and former',
  coreRow: 'core and former',
  drive: 'How it is driven',
  driveRow: 'how it is driven',
  notEntered: 'not entered',
  driveHint:
    'Power, frequency and currents are worked out by the formulas of the law that is named here, and by no other. Leave it open when it is not known.',
  furtherOut: 'further out',
  furtherIn: 'further in',
  removeLayer: 'remove this layer',
  enterBoth: 'enter both',
  oneBack: 'One back',
  nextRow: 'Next row',
  notCountedUp: 'A count with a doubt or a reason is written in its entry, not counted up.',
  photoOfLayer: 'photo of this layer',
  takePhoto: 'Take or choose one',
  onItsWay: 'on its way …',
  noPicture: 'That is no picture; nothing of it was kept with this layer.',
  leadOuts: 'lead-outs',
  nobodyFollowed: 'Nobody followed them yet.',
  noneCrosses: 'Followed: none of them crosses another layer.',
  addLeadOut: '+ lead-out',
  sayNoneCrosses: 'none crosses anything',
  notFollowed: 'not followed after all',
  crosses: 'crosses',
  sleevedThere: 'sleeved there',
  sleeveWall: 'wall of the sleeve',
  photo: 'photo',
  remove: 'remove',
  pairs: 'What each pair of windings really has',
  follows: 'What follows from it',
  blocked: 'Not worked out, and what is missing',
  notDrawn: 'The cross-section is drawn as soon as the first layer stands in the list.',
  drawnHow:
    'Filled turns stand on the mains side, hollow ones on the side of a hand, dashed ones float; a ring is an insulating cover. A line out of the window is a lead-out that crosses, in an outline when it is sleeved. Outermost on top.',
  window: 'window: room for the winding',
  former: 'former: tube and walls',
  marginOne: 'margin at one end',
  marginOther: 'margin at the other',
  startGoesTo: 'its start goes to',
  finishGoesTo: 'its finish goes to',
  to: 'to',
} as const;

/** Keys as they are printed on a keyboard. */
export const STACK_KEYS = {
  winding: 'W',
  insulation: 'T',
  formerWall: 'F',
  row: 'L',
  photo: 'P',
  turn: 'space',
  back: '⌫',
  out: 'Alt ↑',
  in: 'Alt ↓',
  remove: 'Delete',
} as const;

type Labels = readonly (readonly [member: string, label: string])[];

/** Members of a winding besides its turns and its bare wire, in the order in which a hand meets them. */
export const WINDING_LABELS: Labels = [
  ['name', 'name'],
  ['side', 'stands on the side of'],
  ['role', 'it is the'],
  ['wireKind', 'kind of wire'],
  ['overall', 'wire with its cover'],
  ['strands', 'strands in parallel'],
  ['layers', 'rows'],
  ['toCore', 'over the surface to the core'],
  ['resistance', 'resistance, cold'],
];
export const INSULATION_LABELS: Labels = [
  ['covers', 'what it covers'],
  ['short', 'stops before the wall by'],
  ['folded', 'folded up the wall'],
  ['material', 'material'],
  ['overlap', 'overlap of its ends'],
  ['sleeved', 'sleeved where wires leave'],
];
export const CORE_LABELS: Labels = [
  ['core', 'core, by its name'],
  ['coreArea', 'area of its middle leg, measured'],
  ['coreLength', 'length of its path'],
  ['ferrite', 'ferrite'],
  ['gap', 'air gap'],
  ['gapWhere', 'where the gap is'],
  ['inductance', 'inductance, others open'],
  ['leakage', 'inductance, secondary shorted'],
  ['meanTurn', 'mean length of a turn'],
  ['bath', 'varnish or resin'],
  ['coreConductor', 'its name among the conductors'],
  ['part', 'which part it is'],
];
export const DRIVE_LABELS: Labels = [
  ['law', 'how the switch is driven'],
  ['peakCurrent', 'peak current at which it opens'],
  ['frequency', 'frequency'],
  ['longestOn', 'longest on-time, share of a period'],
  ['ratioSeen', 'primary over secondary, on the scope'],
  ['clamp', 'clamped above the rail by'],
  ['switchResistance', 'resistance of the switch, hot'],
  ['fallTime', 'its current falls in'],
  ['riseTime', 'its current rises in'],
  ['switchPart', 'which part is the switch'],
  ['rectifierPart', 'which part is the output rectifier'],
];

export const layerAtHand = (name: string): string => `Layer at hand: ${name}`;
export const windingWithout = (number: number): string => `${STACK_WORDS.winding} ${number}`;
export const photoOf = (name: string): string => `photo of ${name}`;
export const pictureOf = (name: string): string => `layer ${name}`;
export const leadOut = (number: number): string => `lead-out ${number}`;
export const removeLeadOut = (number: number): string => `remove lead-out ${number}`;
export const removeOne = (one: string): string => `remove this ${one}`;
export const weakestAt = (where: string): string => `Weakest ${where}`;
export const whereFrom = (label: string): string => `where ${label} comes from`;

const COUNTED = { turns: 'turn', layers: 'layer' } as const;

export const oneMore = (member: 'turns' | 'layers'): string => `One ${COUNTED[member]}`;
/** "secondary: turns", for ears. */
export const countOfLayer = (name: string, member: 'turns' | 'layers'): string => `${name}: ${member}`;
export const sizeOfLayer = (name: string, isWinding: boolean): string => `${name}: ${isWinding ? 'bare wire' : 'thickness of each'}`;
