import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';
import { conductionTime } from './conduction-time.ts';
import { valleyAfter } from './valley-after.ts';

const HALVINGS = 60; // the interval is then narrower than the last digit of a double

/** Valley of the bulk voltage where conduction time and valley agree with each other, by halving an interval: the balance rises with the valley. */
export const bulkValley = defineFormula({
  id: 'board/bulk-valley',
  tex: String.raw`V_v^2 = \hat V^2 - \frac{2P}{C}\left(T - \frac{\arccos(V_v/\hat V)}{2\pi f}\right)`,
  text: 'V_v ² = V_pk ² − 2 · P · ( T − arccos( V_v / V_pk ) / ( 2π · f ) ) / C , solved for V_v',
  source: cite(
    'circuit-theory',
    'energy balance of a capacitor between two charges, with the conduction time that belongs to it',
    'reasoned',
  ),
  inputs: {
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    power: { symbol: 'P', unit: 'W', means: 'power drawn from the capacitor', moves: 'down' },
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    interval: { symbol: 'T', unit: 's', means: 'from crest to crest that charges', moves: 'down' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'mains frequency' },
  },
  output: { symbol: 'V_v', unit: 'V', means: 'valley of the bulk voltage' },
  validity: 'constant power; drops of rectifier and limiter left out; zero where the capacitor is empty before the next charge',
  compute: ({ crest, power, capacitance, interval, frequency }) => {
    const balance = (valley: number): number =>
      valley -
      valleyAfter.compute({ crest, power, capacitance, interval, conduction: conductionTime.compute({ valley, crest, frequency }) });
    if (balance(0) >= 0) return 0;
    let [low, high] = [0, crest];
    for (let step = 0; step < HALVINGS; step += 1) {
      const middle = (low + high) / 2;
      if (balance(middle) < 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
});
