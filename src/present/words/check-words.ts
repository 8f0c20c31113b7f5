/** Title of a check as it stands in a row, and the question it answers. Every id of the bench set has both; a test proves it. */
export interface CheckWords {
  readonly title: string;
  readonly question: string;
}

export const CHECK_WORDS: Readonly<Record<string, CheckWords>> = {
  'shock/clearance': { title: 'Clearance', question: 'Is the shortest way through air between mains and what can be touched long enough?' },
  'shock/creepage': {
    title: 'Creepage',
    question: 'Is the shortest way over the surface between mains and what can be touched long enough?',
  },
  'shock/barrier': {
    title: 'Weakest way across',
    question: 'Does every way from the mains to the output cross the insulation that is asked for?',
  },
  'shock/winding-insulation': {
    title: 'Insulation of the windings',
    question: 'Do the layers between the windings add up to the insulation that is asked for?',
  },
  'shock/wire-insulation': { title: 'Insulation of the wire', question: 'Is a wire that serves as insulation of a kind made for it?' },
  'shock/optocoupler': {
    title: 'Optocoupler',
    question: 'Is the optocoupler across the barrier rated for reinforced insulation, and far enough apart at its pins?',
  },
  'shock/part-across-barrier': { title: 'Parts across the barrier', question: 'May every part that bridges the barrier be there?' },
  'shock/bridging-part': {
    title: 'Bridging capacitors',
    question: 'Are the capacitors across the barrier of the class that is asked for?',
  },
  'shock/touch-current': { title: 'Touch current', question: 'How much current flows through a person who touches the output and earth?' },
  'shock/fault-touch-current': {
    title: 'Touch current, one fault',
    question: 'How much current flows through a person when one part has failed?',
  },
  'shock/cold-insulation': {
    title: 'Insulation, cold',
    question: 'Is the insulation from the mains pins to the output high enough before power?',
  },
  'shock/enclosure': { title: 'Case keeps closed', question: 'Does the case keep fingers off live parts, also after a drop or a pull?' },
  'shock/plug-discharge': {
    title: 'Pins after unplugging',
    question: 'Has the voltage on the pins fallen far enough when a hand can reach them?',
  },
  'shock/optocoupler-temperature': {
    title: 'Optocoupler temperature',
    question: 'Does the optocoupler stay cool enough for its insulation to hold?',
  },
  'shock/safety-capacitor-temperature': {
    title: 'Safety capacitor temperature',
    question: 'Do the capacitors that keep the mains away stay within their temperature rating?',
  },
  'shock/working-voltage': { title: 'Working voltage', question: 'Which voltage does the insulation really see?' },
  'fire/fuse': { title: 'Fuse', question: 'Is there a fuse that can break a fault on the mains?' },
  'fire/winding-temperature': { title: 'Winding temperature', question: 'Do the windings stay within the class of their insulation?' },
  'fire/inrush': { title: 'Inrush current', question: 'Do fuse and rectifier survive being plugged in at the peak of the mains?' },
  'fire/bulk-capacitor-voltage': { title: 'Bulk capacitor voltage', question: 'Is the bulk capacitor rated for the highest mains?' },
  'fire/semiconductor-temperature': {
    title: 'Junction temperature',
    question: 'Do the semiconductors stay below their greatest junction temperature?',
  },
  'fire/board-temperature': { title: 'Board temperature', question: 'Does the board stay within what its laminate bears?' },
  'fire/material-temperature': { title: 'Material temperature', question: 'Do plastics near hot parts stay within what they bear?' },
  'fire/short-endurance': { title: 'Shorted output', question: 'Does the unit bear a shorted output without getting too hot?' },
  'fire/workmanship': {
    title: 'Workmanship',
    question: 'Are mains joints sound and conductors held, so that nothing can come loose or arc?',
  },
  'fire/mains-side': { title: 'Mains side', question: 'Are the parts on the mains side fit for where they stand?' },
  'fire/core-saturation': { title: 'Core saturation', question: 'Does the core stay out of saturation at the greatest current?' },
  'fire/switch-voltage': { title: 'Switch voltage', question: 'Does the switch stay within its voltage rating at the highest mains?' },
  'fire/rectifier-voltage': { title: 'Rectifier voltage', question: 'Does the output rectifier stay within its voltage rating?' },
  'fire/winding-loss': { title: 'Winding loss', question: 'Is the loss in the windings bearable?' },
  'fire/thermal-runaway': { title: 'Settling temperature', question: 'Does the temperature settle, or does it keep rising?' },
  'fire/fault-without-fuse': {
    title: 'Fault without a fuse',
    question: 'How much power goes on heating one part after a single fault that nothing interrupts?',
  },
  'fire/fault-stress': { title: 'Parts under one fault', question: 'Is any part driven beyond its rating when another has failed?' },
  'fire/switch-stress': {
    title: 'Switch, simulated',
    question: 'Does the switch stay within its rating at every simulated load and mains, with its ringing?',
  },
  'fire/rectifier-stress': {
    title: 'Rectifier, simulated',
    question: 'Does the output rectifier stay within its rating at every simulated load and mains, with its ringing?',
  },
  'burn/enclosure-temperature': { title: 'Case temperature', question: 'Can the case be touched without a burn?' },
  'harm/overvoltage': { title: 'Output too high', question: 'Does the output stay below what harms the connected device, at any load?' },
  'harm/transient': { title: 'Output peaks', question: 'Do plugging in, load steps and voltage steps stay below what harms the device?' },
  'harm/ripple': { title: 'Ripple', question: 'Is the ripple on the output small enough?' },
  'harm/set-point-tolerance': {
    title: 'Set point with tolerances',
    question: 'Does the output stay in bounds when every part is at the edge of its tolerance?',
  },
  'harm/feedback-open': { title: 'Feedback opens', question: 'What does the output do when the feedback fails?' },
  'harm/fault-overvoltage': {
    title: 'Output under one fault',
    question: 'Does the output stay below what harms the device when one part has failed?',
  },
  'delivery/current': { title: 'Current held', question: 'Does it deliver the current it claims inside the voltage window?' },
  'delivery/voltage-window': {
    title: 'Voltage window',
    question: 'Does the output voltage stay inside the window up to the claimed current?',
  },
  'delivery/efficiency': { title: 'Efficiency', question: 'Does it meet the published efficiency, averaged over four loads?' },
  'delivery/power': { title: 'Power held', question: 'Does it deliver the power it claims?' },
  'delivery/advertised': {
    title: 'Advertised levels',
    question: 'Do the levels it offers on the plug agree with what is printed and what it can do?',
  },
  'delivery/mains-range': { title: 'Mains range', question: 'Does it work over the whole mains range on its label?' },
  'delivery/steadiness': { title: 'Steadiness', question: 'Does it keep delivering without dropping out?' },
  'delivery/ports': { title: 'Several outputs', question: 'Do outputs used together deliver what is claimed for them?' },
  'delivery/idle-power': { title: 'Idle power', question: 'Does it draw little enough with nothing connected?' },
  'delivery/power-capability': { title: 'What the transformer can pass', question: 'Can the transformer pass the claimed power?' },
  'delivery/set-point': { title: 'Set point', question: 'Do the parts set the output to what is claimed?' },
  'delivery/simulated-limit': { title: 'Simulated limit', question: 'How much does the traced circuit deliver when it is simulated?' },
  'delivery/regulation-mode': { title: 'Kind of limit', question: 'How does it behave beyond its claim?' },
  'endurance/capacitor-temperature': {
    title: 'Capacitor temperature',
    question: 'Do the electrolytic capacitors stay within their temperature rating?',
  },
  'endurance/capacitor-value': { title: 'Capacitor value', question: 'Do the capacitors have the value that is printed on them?' },
  'endurance/capacitor-life': { title: 'Capacitor life', question: 'How long do the electrolytic capacitors last from new?' },
  'endurance/rectifier-margin': { title: 'Rectifier margin', question: 'How far does the rectifier stay from its limits?' },
  'interference/suppression': { title: 'Suppression parts', question: 'Are the parts that keep interference off the mains fitted?' },
  'interference/winding-screen': { title: 'Winding screen', question: 'Is there a screen or a cancelling winding in the transformer?' },
  'interference/earth-swing': {
    title: 'Swing against earth',
    question: 'Does the output stay quiet enough against earth for a touch screen?',
  },
  'labelling/ratings': { title: 'Ratings on the label', question: 'Are the ratings complete, and do they agree with each other?' },
  'labelling/claims': { title: 'Printed claims', question: 'Are the claims possible for the parts that were found?' },
  'labelling/plug': { title: 'Plug', question: 'Do the pins fit the socket system, and does the body not pull on the socket?' },
};

/** Words for a check; an id nobody has written words for is shown as it is. */
export function getCheckWords(id: string): CheckWords {
  return Object.hasOwn(CHECK_WORDS, id) ? (CHECK_WORDS[id] ?? { title: id, question: '' }) : { title: id, question: '' };
}
