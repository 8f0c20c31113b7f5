import type { Templates } from './fill-template.ts';

/** What can be found, or allowed, in a word instead of a number. A word that is not here is a marking and stands as it is. */
export const FOUND: Templates = {
  present: 'present',
  absent: 'absent',
  bridged: 'bridged',
  unknown: 'unknown',
  notLooked: 'not looked at',
  cannotNow: 'cannot be seen any more',
  noFuse: 'no fuse',
  cartridge: 'cartridge fuse',
  wire: 'wire fuse',
  fusibleResistor: 'fusible resistor',
  track: 'a printed track',
  plainResistor: 'a plain resistor',
  ordinaryCeramic: 'an ordinary ceramic capacitor',
  ordinaryFilm: 'an ordinary film capacitor',
  ordinaryCapacitor: 'an ordinary capacitor',
  'Y2+Y2': 'two Y2 in series',
  resistor: 'a resistor',
  jumper: 'a wire link',
  inductor: 'an inductor',
  ceramicCapacitor: 'a ceramic capacitor',
  filmCapacitor: 'a film capacitor',
  electrolyticCapacitor: 'an electrolytic capacitor',
  capacitor: 'a capacitor',
  diode: 'a diode',
  controller: 'a controller',
  heatSink: 'a heat sink',
  connector: 'a connector',
  varistor: 'a varistor',
  under1s: 'under 1 s',
  '1to10s': '1 to 10 s',
  '10to60s': '10 to 60 s',
  over1min: 'over 1 min',
};

export function foundText(word: string): string {
  return (Object.hasOwn(FOUND, word) ? FOUND[word] : undefined) ?? word;
}
