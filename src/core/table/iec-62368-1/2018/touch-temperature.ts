import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Temperature of a part that is touched, by contact time and material, read at about 25 °C ambient and not scaled. First limit (TS1). */
const fromMemory = (place = 'table 38, TS1') => cite('iec-62368-1', place, 'memory');

export const touchTemperature = defineTable({
  id: 'iec-62368-1/2018/touch-temperature',
  title: 'Touch temperature limits',
  source: fromMemory(),
  lookUp: 'exact key',
  key: { name: 'contact time', unit: '', si: 'word', factor: 1 },
  columns: {
    metal: { unit: '°C', si: 'K', factor: 1 },
    glass: { unit: '°C', si: 'K', factor: 1 },
    plastic: { unit: '°C', si: 'K', factor: 1 },
    wood: { unit: '°C', si: 'K', factor: 1 },
  },
  rows: [
    ['over1min', 48, 48, 48, 48],
    ['10to60s', 51, 56, 60, 60],
    ['1to10s', 60, 71, 77, 107],
    ['under1s', 70, 85, 94, 140],
  ],
  cellSources: {
    '1to10s/plastic': cite('iec-62368-1', 'table 38, TS1, plastic; the row by its contact time is from memory', 'memory', {
      alsoBy: ['a safety engineers’ list prints 77 °C for TS1 plastic, compared at 25 °C ambient without scaling'],
    }),
    'over1min/plastic': cite('iec-62368-1', 'table 38, TS1, plastic, longest contact', 'secondary', {
      alsoBy: ['a safety engineers’ list: plastic from 48 to 94 °C by contact time'],
    }),
    'under1s/plastic': cite('iec-62368-1', 'table 38, TS1, plastic, shortest contact', 'secondary', {
      alsoBy: ['a safety engineers’ list: plastic from 48 to 94 °C by contact time'],
    }),
  },
});
