/**
 * Every publication a figure or a formula is taken from: one record per publication and edition.
 * `title` and `edition` are what a reader of the report needs to find it.
 */
export const PUBLICATIONS = {
  'iec-60664-1': {
    title: 'IEC 60664-1, Insulation coordination for equipment within low-voltage supply systems',
    edition: '2007 (tables F.1 to F.4 and A.2 unchanged in substance in 2020)',
  },
  'iec-62368-1': {
    title: 'IEC 62368-1, Audio/video, information and communication technology equipment, safety requirements',
    edition: '2018',
  },
  'iec-60950-1': { title: 'IEC 60950-1, Information technology equipment, safety', edition: '2005 with amendment 2 of 2013' },
  'iec-60335-1': { title: 'IEC 60335-1, Household and similar electrical appliances, safety', edition: '2010' },
  'iec-60065': { title: 'IEC 60065, Audio, video and similar electronic apparatus, safety requirements', edition: '2014' },
  'din-vde-0701-0702': {
    title: 'DIN VDE 0701-0702, Inspection after repair and periodic testing of electrical equipment',
    edition: '2008',
  },
  'iec-60384-14': {
    title: 'IEC 60384-14, Fixed capacitors for electromagnetic interference suppression and connection to the mains',
    edition: '2013',
  },
  'en-50075': {
    title: 'EN 50075, Flat non-wirable two-pole plugs 2.5 A 250 V, with cord, for the connection of class II equipment',
    edition: '1990',
  },
  'bs-1363': { title: 'BS 1363, 13 A plugs, socket-outlets, adaptors and connection units', edition: 'edition not established' },
  'ul-248-14': { title: 'UL 248-14, Low-voltage fuses, supplemental fuses', edition: 'edition not established' },
  'iec-60127': { title: 'IEC 60127, Miniature fuses', edition: 'edition not established' },
  'iec-60038': { title: 'IEC 60038, Standard voltages', edition: '2009' },
  'iec-61140': {
    title: 'IEC 61140, Protection against electric shock, common aspects for installation and equipment',
    edition: 'edition not established',
  },
  'iec-60062': { title: 'IEC 60062, Marking codes for resistors and capacitors', edition: '2016' },
  'iec-60063': { title: 'IEC 60063, Preferred number series for resistors and capacitors', edition: '2015 (edition from memory)' },
  'iec-62684': { title: 'IEC 62684, Common external power supply for data-enabled mobile telephones', edition: '2018' },
  'iec-60990': { title: 'IEC 60990, Measurement of touch current and protective conductor current', edition: '2016' },
  'eu-2019-1782': {
    title: 'Commission Regulation (EU) 2019/1782, ecodesign requirements for external power supplies',
    edition: '2019, applied from 1 April 2020',
  },
  'eu-code-of-conduct': {
    title: 'European Commission, Code of conduct on energy efficiency of external power supplies (voluntary)',
    edition: 'version 5, 2013',
  },
  'us-10cfr430': { title: '10 CFR 430, energy conservation standards for external power supplies (level VI)', edition: '2016' },
  'usb-2': { title: 'USB 2.0 and Battery Charging 1.2', edition: '2000 and 2010' },
  'usb-c': { title: 'USB Type-C Cable and Connector Specification', edition: '2.2' },
  'usb-pd': { title: 'USB Power Delivery Specification', edition: '3.2 version 1.2' },
  gum: { title: 'JCGM 100, Evaluation of measurement data: guide to the expression of uncertainty in measurement', edition: '2008' },
  'jcgm-106': {
    title: 'JCGM 106, Evaluation of measurement data: the role of measurement uncertainty in conformity assessment',
    edition: '2012',
  },
  'iec-60317-0-1': {
    title: 'IEC 60317-0-1, Specifications for particular types of winding wires: enamelled round copper wire',
    edition: 'edition not established',
  },
  'iec-60479-1': { title: 'IEC 60479-1, Effects of current on human beings and livestock', edition: '1994' },
  'core-catalogue': { title: 'TDK, Ferrite cores, catalogue 980817-001', edition: '1998' },
  'core-loss-data': { title: 'Princeton University, MagNet open data set of magnetic materials', edition: '2023' },
  'planar-notes': { title: 'Ferroxcube, Design of planar power transformers', edition: 'undated' },
  'plastics-makers': { title: 'Sheets of makers of plastics, tapes, sleeves and wires', edition: 'various, from memory' },
  'wire-handbook': { title: 'McLyman, Transformer and Inductor Design Handbook', edition: 'third edition, 2004' },
  fusing: { title: 'Brooks and Adam, Onderdonk’s and Preece’s equations, PCD&F', edition: 'July 2015' },
  binomial: {
    title: 'Eypasch and others, Probability of adverse events that have not yet occurred: a statistical reminder, BMJ 311',
    edition: '1995',
  },
  'reference-sheets': { title: 'Data sheets of 431-type shunt references, several makers', edition: 'undated' },
  'circuit-theory': { title: 'Circuit theory, any textbook', edition: 'none' },
  'heat-theory': { title: 'Heat transfer, any textbook', edition: 'none' },
  'camera-makers': { title: 'Manuals and tables of makers of thermal cameras', edition: 'several' },
  'capacitor-makers': { title: 'Notes of makers of electrolytic capacitors on how long they last', edition: 'several' },
  'laminate-makers': { title: 'Sheets of makers of laminates for printed boards', edition: 'several' },
  'diode-makers': { title: 'Data sheets of rectifiers', edition: 'several' },
  bench: { title: 'Practice of the bench', edition: 'none' },
  house: { title: 'Convention of this project', edition: 'none' },
} as const satisfies Record<string, { title: string; edition: string }>;

export type PublicationId = keyof typeof PUBLICATIONS;
