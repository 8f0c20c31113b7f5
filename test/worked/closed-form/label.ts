import { CELL, type WorkedExample } from '../worked-example.ts';

const BOOK = { publication: 'Schoolbook', origin: 'closed-form', tolerance: 1e-9, because: 'algebra' } as const;
const ARTICLE = {
  publication: 'Encyclopaedia article on the flat two-pin plug',
  origin: 'publication',
  unit: 'mm',
  tolerance: 0,
  because: CELL,
} as const;

/** Plug and body. */
export const LABEL_ALGEBRA: readonly WorkedExample[] = [
  {
    ...BOOK,
    place: '1 kg on an arm of 92 mm and 8 mm',
    formula: 'label/torque-on-socket',
    inputs: { mass: 1, centre: 0.092, pivot: 0.008 },
    printed: 0.980665,
    unit: 'N·m',
  },
  {
    ...BOOK,
    place: 'a weightless unit',
    formula: 'label/torque-on-socket',
    inputs: { mass: 0, centre: 0.1, pivot: 0.008 },
    printed: 0,
    unit: 'N·m',
    tolerance: 0,
  },
  {
    ...BOOK,
    place: '4 mm less 0.2 mm',
    formula: 'label/window-around',
    inputs: { nominal: 0.004, sign: -1, allowance: 0.0002 },
    printed: 3.8,
    unit: 'mm',
  },
  {
    ...BOOK,
    place: '19 mm and 1 mm',
    formula: 'label/window-around',
    inputs: { nominal: 0.019, sign: 1, allowance: 0.001 },
    printed: 20,
    unit: 'mm',
  },
  { ...ARTICLE, place: 'tip of 4 mm diameter', table: 'en-50075/1990/pins/nominal', inputs: { key: 'diameter' }, printed: 4 },
  { ...ARTICLE, place: 'pins 19 mm long', table: 'en-50075/1990/pins/nominal', inputs: { key: 'length' }, printed: 19 },
  {
    publication: 'Maker of test equipment, on IEC 60065 clause 15.4',
    origin: 'publication',
    place: 'torque of 0.25 N m',
    table: 'iec-60065/2014/plug-torque/most',
    inputs: { key: 'plugInBody' },
    printed: 0.25,
    unit: 'N·m',
    tolerance: 0,
    because: CELL,
  },
  {
    publication: 'Maker of test equipment, on IEC 60065 clause 15.4',
    origin: 'publication',
    place: 'pivot 8 mm behind the engagement face',
    table: 'iec-60065/2014/plug-torque/pivot',
    inputs: { key: 'plugInBody' },
    printed: 8,
    unit: 'mm',
    tolerance: 0,
    because: CELL,
  },
];
