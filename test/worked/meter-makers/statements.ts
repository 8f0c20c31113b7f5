/** What meter makers print as examples of their accuracy statements: a reading, and the band that the true value lies in. */
export interface Statement {
  readonly publication: string;
  readonly accuracy: string;
  readonly reading: string;
  readonly least: number;
  readonly most: number;
}

const GVDA = 'GVDA, digital multimeter accuracy calculation';

export const STATEMENTS: readonly Statement[] = [
  { publication: GVDA, accuracy: '±(0.8 % + 2)', reading: '100.0 V', least: 99, most: 101 },
  { publication: GVDA, accuracy: '±(0.5 % + 3)', reading: '2.000 V', least: 1.987, most: 2.013 },
  { publication: 'Sanwa PC510a example', accuracy: '±(0.08 % + 2)', reading: '2.000 V', least: 1.9964, most: 2.0036 },
  {
    publication: 'GVDA, introduction to digital multimeter accuracy',
    accuracy: '±(1 % + 2)',
    reading: '100.0 V',
    least: 98.8,
    most: 101.2,
  },
];
