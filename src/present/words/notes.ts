import type { Templates } from './fill-template.ts';

/**
 * Remarks on findings and steps. `{name}` puts an argument in as it is, `{name|V}` as a quantity in that SI unit, `{name|percent}` the way
 * `show` says. A remark that has no sentence here appears in the report as its key.
 */
export const NOTES: Templates = {
  // on any value
  because: 'In the words of the examiner: {because}',
  outOfRange: 'Used outside the stated range of the formula: {input} is {value}; the range begins at {from} and ends at {to}.',
  otherBranch: 'Within its uncertainty this could also come out another way ({branch}).',
  estimated: 'Estimated, not measured.',
  readingsDisagree: 'The {readings} readings of this differ by more than their uncertainty; the worst counts.',
  meterDark: '{instrument} only works from {from}: the true value lies below.',
  methodDefault: 'No uncertainty is stated; the usual one for the method counts, within {halfWidthMm} mm ({method|word}).',
  tableCell: 'Row {row}, column {column}.',
  tableColumn: 'Column {column}, from the row {row}.',
  conditionsMissing: 'Cannot be compared; not stated: {missing}.',
  // why a claim is missed
  causeShown: 'Why, at {mains|V} mains: {cause|word}. Shown by measurement.',
  causeConsistent: 'Why, at {mains|V} mains: consistent with {cause|word}, by calculation. {settle|word} would show it.',
  causePossible: 'Why, at {mains|V} mains: perhaps {one|word}; its number was not read.',
  causeOneOfTwo: 'Why, at {mains|V} mains: one of {one|word} or {two|word}; the evidence does not tell them apart.',
  causeOneOfThree: 'Why, at {mains|V} mains: one of {one|word}, {two|word} or {three|word}; the evidence does not tell them apart.',
  causeOneOfFour:
    'Why, at {mains|V} mains: one of {one|word}, {two|word}, {three|word} or {four|word}; the evidence does not tell them apart.',
  // simulated
  simulatedFault: 'Simulated: {fault}, at {load|word}, watched for {seconds|s}. Consistent with the traced parts; not measured.',
  simulatedUnder: 'At {mains|V} mains, on {assumptions} stated assumptions.',
  simulatedPoint: 'Simulated: {part}, at {mains|V} mains and load {load}. Consistent with the traced parts; not measured.',
  simulatedAssumed: 'A simulation on {assumptions} stated assumptions; not measured.',
  faultsWithoutResult: '{count} runs came to no result, the first of them {first}.',
  faultsNotSeenToEnd: '{count} runs ended at a rating or still moved, the first of them {first}: what follows is not known.',
  pointsWithoutResult: '{count} operating points came to no result.',
  nothingThatOpens: 'Nothing in the traced circuit opens.',
  heatedPart: 'The power goes into {part}.',
  partBeyond: 'Beyond their rating: {parts}.',
  afterBreakdownUnknown: 'What follows a breakdown was not simulated.',
  beyondWhileHealthy: 'Beyond a rating without any fault: {parts}.',
  barrierFaultsNotRun: '{count} shorts across the barrier inside one part were not run: they join mains and output.',
  ratingAssumed: 'The rating of {part} was assumed, not read.',
  // barrier
  farFootUnknown: 'Nobody followed the far foot, so it may lead to what can be touched.',
  tracksTooEasily: 'The material tracks below an index of 100: it has no group, and no distance along it is given.',
  valuesNotKnown: 'Two in series count only with equal values, and a value is not known.',
  fuseSideNotStated: 'It is not stated whether both conductors stand before the fuse; behind it their gap is functional.',
  basicMetRestUndecided: 'Basic insulation is met for certain; whether reinforced is met cannot be told.',
  basicUndecided: 'Whether basic insulation is met is not certain: probability {probability|percent}.',
  workingVoltageEstimated: 'The working voltage was not measured; it is estimated from the mains, with its spread in the uncertainty.',
  materialByKind: 'Nobody read a tracking index; {laminate|word} is sold with at least {least}, which is group {group}.',
  materialAssumed: 'The laminate is not known; material group {group} is assumed.',
  betweenMains: 'Both conductors are tied to the mains: an arc here is a matter of fire, nobody stands on the other side.',
  floatingConductor: 'One conductor floats: this gap is a piece of a way, and the whole way is judged as such.',
  sideNotStated: 'It is not stated on which side of the barrier a conductor stands.',
  identityNotEstablished: 'The class is printed on the part; whether the part is what it says was not established.',
  samePart: 'The same part as under “{parts}”, found a second time by following the circuit: one defect, counted once.',
  householdStandardDiffers: 'The standard for household appliances asks for more than one such part.',
  slotCounts: 'The way follows the walls of a slot {width|millimetres} wide; from {least|millimetres} on a slot counts.',
  slotTooNarrow: 'The slot on the way is {width|millimetres} wide; below {least|millimetres} a slot adds nothing.',
  slotWidthUndecided: 'The slot on the way is {width|millimetres} wide, too close to the {least|millimetres} from which a slot counts.',
  slotWidthUnknown: 'How wide the slot on the way is was not told; it counts from {least|millimetres} on.',
  slotBridged: 'Taken straight across the mouth of the slot.',
  straightLonger: 'The way straight across the slot is given as longer than the way along its walls, which cannot be; it is left out.',
  straightMissing: 'The way straight across the slot is not given; enter it as the slot’s "straight".',
  maskDoesNotCount: 'Solder mask lies on the path; it is no insulation and changes nothing.',
  coatingNeedsTests: 'The path is covered ({coating|word}); shorter distances hold only for a coating that a laboratory has tested.',
  printedWiringNotUsed: 'The shorter distances for printed wiring are not used next to the mains.',
  impulseTestInstead:
    'A laboratory could still prove this gap with impulses of {volts|V} (at sea level); no bench like this can, so the distance stands as the answer.',
  // touch
  plugWaysOneConductor: 'The two plug ways differ as behind a single diode, where one rail is one pole of the mains.',
  plugWaysSymmetric: 'The two plug ways agree, as behind a bridge.',
  plugWaysContradictBoard: 'The two plug ways do not fit the rectifier recorded on the board: one of the two is mistaken.',
  scaledToHighestMains: 'Scaled from the mains at which it was read to the highest mains of the setting.',
  otherPlugWay: 'Read one way round only; the other way says nothing about this one.',
  notTheNetwork: 'Not read through the standard network ({method|word}).',
  aboveComputedBound:
    'Clearly more than the parts across the barrier can pass ({boundMa} mA through {parts}): there is another way through.',
  belowComputedBound: 'Agrees with what the parts across the barrier can pass, {boundMa} mA at most ({parts}).',
  alsoBeyondLetGo: 'Also beyond the second limit, from memory and by less than 1.3 times.',
  supplyNotDirect: 'Read on a supply that is not direct ({supply|word}): behind such a supply the current says nothing about the unit.',
  supplyNotStated: 'The kind of supply is not stated; behind an isolating one the current says nothing.',
  orientationNotStated: 'The plug way is not stated.',
  mainsNotStated: 'The mains voltage or frequency at the reading is not stated.',
  // heat
  lightLoad: 'Read at a load below what the unit sustains and below its claim: it can fail so, not pass.',
  shortedNotUse: 'Read with a shorted output: that has limits of its own and settles nothing about use.',
  lifeFromNew:
    'Expected from new at this duty, in the room of the reading; not what is left of it. Its end is a fifth less capacitance or twice the losses.',
  lifeAtHighest: 'At the highest ambient of the setting: {hours} h.',
  aboveRatedAtHighest: 'At the highest ambient it would be above its rated temperature: no life is given for that.',
  aboveRatedTemperature: 'Above its rated temperature no life is given.',
  junctionFromLead:
    'Worked out from the temperature read on it, taken as that of its leads, and a loss by the usual voltage across rectifiers.',
  runawayAt: 'Its own leakage would make it run away from {temperature|K} at the junction on, at the least.',
  runawayNotKnown:
    'Where its own leakage would make it run away is not known: its type is not in the list, or what it blocks is not worked out.',
  leakageIsAtMost: 'Its sheet gives the greatest leakage of its type; this one may leak less and stand more.',
  switchedInstead: 'For information: it loses {now|W}; a switched rectifier in its place would lose about {switched|W}.',
  heatedBy: 'The hottest thing read together with it is {place}, {kelvin} K hotter.',
  rectifierPackageNotKnown: 'Its package is not stated or not in the list: how far the junction lies above the leads is not known.',
  rectifierCurrentNotKnown: 'More than one output, or none with a stated current: the current through it is not known.',
  severalRectifiers: 'Several rectifiers on the output side: how they share the current is not known.',
  carriedByRule:
    'Not read at this load: carried from {current|A} to {to|A} by the losses of the sweep, its rise following the loss a little less than in proportion, with the wider uncertainty that this has.',
  carriedByTwoLoads:
    'Not read at this load: carried from {current|A} to {to|A} by the losses of the sweep; readings at two loads tell how its rise follows the loss.',
  lossRatio: 'From a loss of {from|W} to one of {to|W}.',
  carriedBack:
    'Carried back to the moment of opening, {seconds} s before the first reading, along its own cooling: it was at least as hot.',
  soakDoesNotSay: 'The log does not say where the temperature is going.',
  readTooEarly: 'Read before the heat had settled: it can fail so, not pass.',
  reflectionTooStrong: 'More is reflected than was seen: the emissivity or the reflected temperature is wrong.',
  scaledToHighestAmbient: 'Scaled from the ambient at which it was read to the highest ambient of the setting.',
  asRead: 'As read, near room temperature.',
  contactTime: 'For a contact of {contact|word}.',
  coverOpenAtLeast: 'Read with the cover open: closed, it is at least as hot.',
  coverNotClosed: 'Read with the cover open; the outside was not as it is in use.',
  ambientTooFar: 'Read at an ambient of {ambientC} °C, too far from room temperature to be taken as read.',
  cameraModels: 'By Planck’s law from 8 to 14 µm; the fourth power of temperature would give {apartK} K more.',
  hottestOfRegion:
    'The hottest of the {pixels} pixels of the region: {hottestC} °C as the camera shows it, at column {x}, row {y}, from 0 at the top left. Their mean is {meanC} °C.',
  meanOfRegion:
    'The mean of the {pixels} pixels of the region: {meanC} °C as the camera shows it. The hottest is {hottestC} °C, at column {x}, row {y}, from 0 at the top left.',
  pictureScale: 'The file has {value} at the hottest pixel; × {factor} + {offset} is the temperature in {unit}.',
  pixelsWithoutNumber: '{pixels} pixels of the region hold no number and are left out.',
  bareMetal: 'A thermal picture of bare metal does not show its temperature.',
  emissivityUnknown: 'The emissivity or the reflected temperature is not known; the thermal picture cannot be read.',
  fromVoltageToEarth: 'Worked out of the voltage to earth and what it was read across.',
  lessThroughMeter: 'A meter lets less through than a hand does: this is a bound from below, which can fail and never pass.',
  earthMeterNotStated: 'The input resistance of the meter is not stated: a voltage to earth then says nothing of the current.',
  // load
  reversedPoles: 'A reading is below zero: the poles of the output or of the meter are the wrong way round.',
  claimNotReached: 'The sweep ends before the claim of {claimA|A}.',
  takenBack: 'The unit gave way at a current that was asked for and not read; the knee lies within one step above the last row inside.',
  heldAt: 'From {exhibit}, at {mains|V} mains.',
  neverInside: 'The output is never inside the window.',
  neverLeft: 'The window was not left up to the last row: it holds at least this.',
  cliff: 'The output drops between {fromA|A} and {toA|A}; where exactly is in the uncertainty.',
  worstOfRows: 'The worst of {rows} rows of {exhibit}.',
  noClaim: 'Nothing is claimed for this output.',
  noWindow: 'No voltage window is known for this kind of output.',
  otherMains: 'Read at {mains|V} mains, not at the mains the limit is for.',
  loadPointMissing: 'No row near the load point {point|percent}.',
  interpolated: 'Read between two points of the sweep.',
  efficiencyAtTenth: 'At a tenth of the load {efficiency|percent}; that figure has to be declared, and none is asked for.',
  togetherNotRead:
    'Several outputs are measured loaded together, one run of one row for each load point, with the input power and the voltage at every output.',
  togetherSeveralVoltages: 'All outputs loaded together ({exhibits}), by the line for more than one voltage at a time.',
  togetherOneVoltage: 'All outputs loaded together ({exhibits}). They are of one voltage, so the line for one output holds.',
  togetherDerated:
    'The unit is printed to give less than the sum of its outputs: every load is reduced to {share|percent} of what is printed.',
  togetherAmericanUnknown:
    'By the American rule it was not judged: the figure for several voltages was read nowhere, and the test is at 115 V.',
  // load: what is advertised
  advertisedHeldPrinted: 'Advertised {advertised|A}, held {held|A}, printed {printed|A}.',
  advertisedHeldAtLeast: 'Advertised {advertised|A}, held at least {held|A}, printed {printed|A}.',
  levelNotOffered: 'The output does not offer this voltage to what listened to it.',
  offerWithoutLevel: 'It offers {advertised|A} at a voltage that was not swept.',
  offerNotSwept: 'It offers {advertised|A}; nobody swept it.',
  otherCompany: 'What it offers and what it holds were read with other neighbours loaded; they do not compare.',
  hotOverCold: 'Hot it holds {ratio|percent} of what it holds cold.',
  lostInCable:
    'At the socket it holds the claim ({held|A}, from {socket}) and at the end of the cable not ({left|A}, from {end}): what is missing is lost in the cable and its contacts.',
  // load: the mains range
  kneeRatio: 'At the lowest mains it holds {ratio|percent} of what it holds at the highest.',
  lowestMains: 'The lowest mains of the range, from {exhibit}, at {mains|V}.',
  highestMains: 'The highest mains of the range, from {exhibit}, at {mains|V}.',
  lowestNotTried: 'Nobody tried it at the lowest mains of the range, {mains|V}.',
  highestNotTried: 'Nobody tried it at the highest mains of the range, {mains|V}.',
  // load: power and several ports
  neighboursLoaded: 'Swept only with neighbours loaded.',
  together: 'From {exhibit}, with {company} loaded.',
  noTotal: 'Nothing is printed for all outputs together, and the sum of what is printed for each is not a promise here.',
  sumNotAsked: 'All that is printed was never asked for at the same time.',
  neighboursNotWatched: 'Whether the others kept their voltage meanwhile was not read.',
  neighbourOverdrawn: 'A neighbour drew more than is printed for it.',
  companyNotTried: 'Never swept beside these loaded ({count}): {sets}.',
  // load: idle
  idleAt: 'From {exhibit}, at {mains|V} mains, nothing connected.',
  idleLoaded: 'Something was connected.',
  noNameplate: 'Not every output has a printed current; without them there is no nameplate power.',
  levelSix:
    'By the American rule, from {exhibit}: {average|percent} over {points} load points, {least|percent} asked; shown, not deciding.',
  // load: tries
  wanderNotRead: 'How far it wanders was not read: peak and lowest point.',
  triesFailed: '{failed} of {made} tries did not come off.',
  noneFailed: 'None of {made} tries failed; that leaves up to {bound|percent} of failures open, at 95 %.',
  tooFewTries: 'Fewer than {least} tries show nothing.',
  // load: beyond the window
  limitFrom: 'From {exhibit}.',
  'limit-constantCurrent': 'Beyond its window it holds {current|A}, within {off|percent}, while the voltage sinks.',
  'limit-constantPower': 'Beyond its window it holds {power|W}, within {off|percent}: the current rises as the voltage sinks.',
  'limit-foldback': 'From {most|A} at most it takes the current back to {current|A} at {voltage|V}.',
  'limit-hiccup': 'Beyond its window it stops and tries again.',
  'limit-latchOff': 'Beyond its window it stays off.',
  'limit-soft': 'It gives more and more while the voltage sinks: {current|A} at {voltage|V}, and no limit was found.',
  notSweptBeyond: 'No row lies below the window: how it limits was not looked at.',
  limitElsewhere: 'At {mains|V} mains: {kind|word}.',
  shapeUnknown: 'The rows below the window are too few, too close together, or the output just stops.',
  outputResistance: 'Output resistance {resistance|Ω}, from {exhibit}.',
  cableCompensation:
    'The voltage rises with the load by {rise|Ω} (from {exhibit}): it makes up for a cable, which is neither an error nor better.',
  cableAndContacts: 'Cable and contacts add {resistance|Ω}.',
  // load: shorts and overloads
  endured: 'From {exhibit}, held for {time|minutes}.',
  enduredNotStated: 'From {exhibit}; for how long is not stated.',
  faultPower: 'It drew {power|W} from the mains meanwhile.',
  faultPowerSmall: 'No more than the {line|W} below which nothing counts as a potential ignition source.',
  faultPowerIgnites: 'More than {line|W} for half a minute: whatever turns that into heat is a potential ignition source.',
  powerSourceFirst: 'As a source the output is of the first class: little can start burning behind it.',
  powerSourceSecond: 'As a source the output is of the second class: it gives no more than {line|W} into a fault.',
  powerSourceThird:
    'As a source the output may be of the third class: more than {line|W} are drawn, and how much of that reaches a fault was not read.',
  faultTemperatureUnknown:
    'No flame and nothing live bared; how hot windings may become in a fault is not known to us, so this is no pass.',
  // load: peaks, dips and ripple
  eventReading: 'From {exhibit}, the worst of {made} tries.',
  noPeak: 'The peak was not read; where it settles and how far it dips say nothing about it.',
  rippleWithout: 'Ripple means nothing without the way it was read; not stated: {missing}.',
  rippleRead: 'From {exhibit}, in a bandwidth of {bandwidth|Hz}.',
  rippleHabit: 'No published limit is known; what the trade expects is shown beside it and does not decide.',
  rippleOtherBandwidth: 'No published limit is known, and what the trade expects holds for another bandwidth.',
  earthSwingFrom: 'From {exhibit}, peak to peak against earth.',
  pulseNotStated: 'How long its pulses last was not read; those of up to {shortest|s} are let pass, however high.',
  pulseShort: 'Its pulses last no longer than {shortest|s} and are let pass.',
  // parts
  ratingNotRead: 'The part’s own rating was not read: held against what ordinary parts of its kind bear.',
  insideNotKnown: 'Read outside; inside it is at least as hot, by an amount that needs the loss and the thermal resistance.',
  faultFound: 'In the words of the examiner: {what}',
  faultKindMissing: 'It is not said what kind of fault this is: only a bad joint of the mains or a conductor that can move is a danger.',
  suppressionWithout: 'No {part|word} among them.',
  emissionNotMeasured: 'What is sent out on the mains was not measured; the parts alone do not tell.',
  // plugging in
  inrushPeak: 'Plugged in at the crest of the highest mains, {peak|A} flow at first.',
  hotRestart: 'For a cold limiter. Warm, it limits little: plugged in again at once, the current is many times larger and was not judged.',
  rectifierSurge: 'Whether the rectifier stands that current was not judged.',
  noLimiter: 'Nothing limits the inrush but the mains and the wiring, which nobody measured.',
  trackMelts: 'Estimate, not a limit: {current|A} for one second melt the track ({integral|A²s}).',
  // bulk capacitor
  bulkValley: 'Worked out beside: at {mains|V} mains and {power|W} in, the bulk voltage falls to {valley|V} between two charges.',
  valleyOfEach:
    'Worked out beside: at {mains|V} mains and {power|W} in, each of the two capacitors falls to {valley|V} between two charges.',
  usualBulk: 'Beside it: {found|F} are there for the {power|W} that are printed; makers take {least|F} to {most|F}, a habit and no limit.',
  holdUpBetween:
    'Worked out beside: when the mains of {mains|V} is lost at {power|W} in, the output lasts at least {least|s}, down to a bulk voltage at which it was seen to hold as much, and at most {most|s}, until the capacitor is empty.',
  holdUpAtMost:
    'Worked out beside: when the mains of {mains|V} is lost at {power|W} in, the output lasts at most {most|s}, until the capacitor is empty; no run at a lower mains shows how far down it holds as much.',
  seriesOrDoubler: 'It may share the voltage with another in series, or belong to a doubler; name how it is wired to settle it.',
  // circuit
  insulationJudgedElsewhere:
    'A part made with two sides may stand there; what lies between its sides is judged by distances, windings and wire.',
  setWithoutLoad: 'Worked out from the parts, for no load, at the board.',
  setWithLegs: 'With the leg {legs} joined in; which leg the chip joins for which level was not observed.',
  ledCurrentAtMost: 'The resistor lets at most {amperes|A} through the LED of the optocoupler.',
  ledWithoutCurrent: 'Below LED and reference together: at this output no current is left for the optocoupler.',
  ledResistorAtMost:
    'With the weakest optocoupler of its grade, up to {ohms|Ω} in series with the LED still pull the feedback pin down at this output (transfer ratio from memory).',
  ledResistorAtLeast: 'Below {ohms|Ω} in series with the LED, it or the reference could carry more than its rating (ratings from memory).',
  bleederLoads:
    '{parts} across the output draws {amperes|A} and turns {watts|W} into heat with nothing connected: the least load of the converter.',
  bypassFeedsReference: 'The resistor across the LED hands {amperes|A} to the reference, which needs {least|A} (memory).',
  bypassBelowReference:
    'The resistor across the LED hands {amperes|A} to the reference, less than the {least|A} it needs (memory); the LED must carry the rest.',
  chipShiftsOutput: 'The negotiation chip shifts the output by a current of its own, which no resistor shows.',
  notRecognised: 'What sets the output was not recognised from the trace.',
  setInsideChip: 'The output is set by a voltage inside a chip whose sheet was not entered.',
  noTolerances: 'How far the parts that set it may stray is not known.',
  edgesOfTolerance: 'With everything at its edge at once: {least|V} to {most|V}.',
  drawnOutputs:
    'Of {draws} samples drawn at random inside the tolerances, 95 in 100 are between {low|V} and {high|V}, all between {least|V} and {most|V}.',
  feedbackNotRecognised: 'The feedback was not recognised, or is inside a chip: nothing is said by rule.',
  breaksRunAway: 'Runs away: {faults}. Worst with little load.',
  breaksRest: 'Falls to what LED and reference need together: {faults}.',
  breaksRestAt: 'Falls to what LED and reference need together, about {volts|V}, or locks out: {faults}.',
  breaksLockOut: 'Stops: {faults}.',
  tripNotKnown:
    'Where a runaway ends is decided by the overvoltage trip of the controller, which was not read; without one, only a burst part ends it.',
  tripHoldsAt: 'First estimate: the trip of the controller ends a runaway near {volts|V}; at light load it can pass above.',
  beforeFuse: 'Between the poles before the fuse: {parts}.',
  // fuse
  breakingByLetter: 'Marked L (glass) a fuse breaks {low|A}, E {enhanced|A}, H {high|A}; a socket can drive 200 to 1500 A into a short.',
  breakingNotJudged: 'Whether it can break the current of a short on the mains was not judged.',
  fuseHolds: 'By its sheet such a fuse carries {holds|A} for {time|minutes} without opening.',
  fuseOpens: 'It is sure to open, within {time|minutes}, only from {opens|A} on; a slower fault is not its business.',
  fuseAmerican: 'By the American sheet it opens within {time|minutes} at {opens|A} and breaks {breaks|A} at 250 V.',
  impulseStood: 'A part of this class and size has stood impulses of {volts|V}; the mains brings {comes|V}.',
  impulseTooLow: 'A part of this class and size has stood impulses of only {volts|V}, and the mains brings {comes|V}.',
  arcingSource:
    'A joint that parts there can arc: peak voltage times printed current is {product|W}, above the {line|W} of a potential ignition source.',
  noArcingSource: 'Peak voltage times printed current is {product|W}, not above the {line|W} of a potential ignition source.',
  // pins after unplugging
  plugStartNotSeen:
    'Where in the cycle the plug left the socket was not seen. What was read is a floor; the ceiling allows for {tries} tries at moments of chance.',
  plugProbeCorrected: 'The probe ({probe|Ω}) discharges what it measures; its part is taken out.',
  plugProbeNotStated: 'The input resistance of the probe is not stated: without the probe more may be left.',
  plugProbeTooHeavy: 'The probe discharges the pins so fast that little can be said of them without it; a probe of 100 MΩ would do.',
  plugReadEarly: 'Read after {after|s}, before the two seconds of the limit: by then less is left.',
  plugReadLate: 'Read after {after|s}, past the two seconds of the limit: at that moment more was left.',
  plugNoCapacitor: 'Somebody looked for suppression parts and found none; the 60 V line holds.',
  plugCapacitance: 'Across the pins: {farads|F} ({parts}). The limit follows from it, with its tolerance.',
  plugCapacitanceUnknown:
    'How much capacitance is across the pins is not known; the 60 V line of 300 nF and more is shown. A smaller capacitor may hold more.',
  plugComputed: 'The recorded bleeder would leave {volts|V}.',
  // case and plug
  promisedBy: 'Promised by the {from|word}.',
  promiseOfNoOutput: 'It is not stated for which output this is promised.',
  labelSilent: 'The label prints nothing to compare this with, and nothing was measured that would.',
  plugSystemNotStated: 'Which plug it is, is not stated; the pins of other systems are of other sizes.',
  torqueByGreatestDimension: 'Nobody balanced it; its centre of mass is put at its greatest dimension, which is worse than it can be.',
  fewDrops: 'Fewer than three drops: it did not open, which is not yet enough.',
  dropHeightNotStated: 'The height of the drops is not stated.',
  dropTooLow: 'Dropped from less than 1 m: it did not open, which is not yet enough.',
  dropTooHigh: 'Dropped from more than 1 m: it opened, which does not yet count against it.',
  // cold
  strengthAsked: 'A laboratory would put {asked|V}, direct or peak, across this insulation for a minute, after heat and damp.',
  strengthHeld: 'It held {volts|V} peak, dry and as found; {asked|V} are asked after heat and damp, so this is no pass of the test.',
  strengthHeldLess: 'It held {volts|V} peak, less than the {asked|V} that are asked: that shows little.',
  strengthBroke: 'It gave way at {volts|V} peak or sooner.',
  insulationLowVoltage: 'Read below the 500 V of the test, or at a voltage not stated: so it can only fail, not pass.',
  insulationThroughResistor:
    'A resistor that is recorded across the barrier has this value; such resistors have rules of their own that are not held here.',
  coldCapacitance:
    'Across the barrier before power: {farads|F}, which passes {amperes|milliamperes} at the highest mains if all of it is fed from a line conductor.',
  coldCapacitanceAgrees: 'Agrees with the parts recorded across the barrier, {recorded|F}.',
  coldCapacitanceMore:
    'More than the parts recorded across the barrier ({recorded|F}): another part bridges it, or the windings stand close.',
  coldCapacitanceLess: 'Less than the parts recorded across the barrier ({recorded|F}): one is not what it says, or not connected.',
  touchAboveCold:
    'The touch current that was read, {amperes|milliamperes}, is clearly more than this capacitance passes: there is another way through.',

  // barrier
  pieceTooShort: 'A piece of {distance|millimetres} on the way over a floating conductor counts for nothing; it takes {least|millimetres}.',
  pieceDoubtful: 'A piece of {distance|millimetres} on the way over a floating conductor may count or not; it takes {least|millimetres}.',
  weakestPath: 'The weakest way: {path}. It leads through {ways}.',
  defeatedAlready: 'Nothing has to fail before the mains is at the other end: {pieces}.',
  defeatedBy: 'Failures that it takes, at least: {count} ({pieces}).',
  barrierGap: 'Not on the map, because nobody looked: {what|word}.',
  barrierOpen: 'Not on the map, because it could not be told: {what|word}.',
  personChopped:
    'If this way conducts, a person between the output and earth gets chopped direct voltage of the mains: at {mains|V} between {least|milliamperes} and {greatest|milliamperes}, by the impedance of most bodies, dry.',
  personByPlugWay:
    'If this way conducts, a person between the output and earth gets a half wave or the full mains, by which way the plug stands: at {mains|V} between {least|milliamperes} and {greatest|milliamperes}, by the impedance of most bodies, dry.',
  personEither:
    'If this way conducts, a person between the output and earth gets chopped direct voltage or the full mains; how it is rectified is not stated. At {mains|V} between {least|milliamperes} and {greatest|milliamperes}, by the impedance of most bodies, dry.',
  // transformer: insulation
  layersBetween: 'Layers between that really cover: {layers}.',
  layersUncertain: 'How many layers really cover is not certain; at least {least}.',
  layersNotTested: 'Two layers are double only if each stands the whole test alone, which no bench like this can show.',
  decidedByWay: 'The weakest way between them leads {way|word}.',
  basicNotCertain: 'Whether even basic insulation is there is not certain.',
  solidPiece: 'One solid piece of {thickness|millimetres}.',
  householdSolid:
    'The standard for household appliances asks for {whole|millimetres} in one piece, or {tested|millimetres} that have stood further tests.',
  householdLayers: 'The standard for household appliances asks for {layers} separable layers.',
  wayRoundEdge: 'Round the edge: margins of {inner|millimetres} and {outer|millimetres} make {way|millimetres}.',
  marginsNotRead: 'A margin between the last turn and the wall of the former was not read.',
  shortNotRead: 'How far the tape stops before the wall was not read.',
  toCoreNotRead: 'The way from {name} to the core was not read.',
  leadBare: 'The lead-out has no sleeve.',
  leadSleeved: 'The wall of its sleeve is {wall|millimetres}; reinforced takes {least|millimetres}.',
  sleeveNotRead: 'The wall of its sleeve was not read.',
  wireBuild: 'The cover of {name} is built {ratio} times as thick as the thickest ordinary enamel of that copper.',
  wireOverallMissing: 'Fully insulated wire looks like enamel; the overall diameter of {name} would tell.',
  enamelIsNothing: 'Enamel counts for nothing: here it is the layers between that insulate.',
  couplerPinsNotMeasured: 'The way over the surface between its pins was not measured.',
  workingPeak: 'Peak {peak|V}.',
  workingPeakMissing: 'The peak was not read.',
  // transformer: what it can do
  numberMissing: 'Missing for it: {what|word}.',
  spikeNotKnown:
    'What the spike or the ringing adds is not known: without it the voltage can fail, and passes only well within the rating.',
  capabilityAt:
    'At {mains|V} the rail falls to {valley|V} between two charges; from there {power|W} go into the core at the current limit.',
  capabilityCut:
    'At {mains|V} the rail falls to {valley|V} between two charges; from there the longest on-time ends the stroke before the current limit, and {power|W} go into the core.',
};

/** Things about the case as a whole that a reader must know. */
export const WARNINGS: Templates = {
  supplyNotDirect: 'A touch reading was taken on a supply that is not direct ({supply|word}); it cannot count.',
  supplyNotStated: 'A touch reading does not state its supply; it cannot count.',
  orientationNotStated: 'A touch reading does not state the plug way; it cannot count.',
  mainsNotStated: 'A touch reading does not state mains voltage and frequency; it cannot count.',
  workingVoltageRefused: 'A working voltage was taken behind a supply that is not direct ({supply|word}); it cannot count.',
  cellNotRead: 'A cell could not be read; it is kept as typed and left out.',
  fileMissing: 'The file of a sweep is missing.',
  columnMissing: 'A sweep lacks a column that is needed.',
  columnInDoubt: 'It is not settled what a column of a sweep means; it is left out.',
  pictureHoldsNoNumbers:
    'The thermal picture is taken from {path}, which holds no temperatures: colours are no numbers. Export the field of numbers from the camera.',
  pictureIsATable: 'The thermal picture is taken from {path}, which is a table with columns of its own and no field of numbers.',
  pictureUnitUnknown: '“{unit}” is no unit of temperature: the numbers of the thermal picture are left alone.',
  pictureUnitsDiffer:
    'The thermal picture is said to be in {unit}, its file says {said}: its numbers are left alone until both say the same.',
  pictureInDoubt: 'The file {path} of the thermal picture leaves questions open; its numbers are left alone.',
  regionEmpty: 'No pixel with a number has its middle inside this region.',
  regionWithoutPlace: 'The region names a place that is not there ({place}).',
  fileInDoubt: 'The file {path} leaves open questions ({codes}); the columns they touch are not used.',
  unitNotStated: 'A column of a sweep states no unit; it is left out.',
  'slip-dangling': 'A net has one pin only: {nets}.',
  'slip-shorted': 'Both ends of {part} are on one net: {nets}.',
  'slip-straddling': '{part} joins the mains side and the other side ({nets}) and is not marked as crossing.',
  'slip-marksNoCrossing': '{part} is marked as crossing the barrier; all of its pins are on one side.',
  'slip-outputsTied': 'Two outputs, or both poles of one, share a net: {nets}.',
  'slip-missingReturn': 'The pole {pin} of {part} leads nowhere that the converter feeds.',
  'slip-backwards': '{part} stands the wrong way for its place: it would empty the capacitor it is to fill.',
  'slip-capacitorBackwards': '{part} stands with its plus on the lower rail.',
  'slip-valueAgainstMarking': 'The value {value} of {part} is none that its marking {marking} can mean.',
  'slip-turnsAgainstStack': 'Winding {winding} of {part} was traced with {traced} turns and unwound with {unwound}.',
  ratiosDisagree: 'The turns give a ratio of {counted}, the waveforms {seen}: one of them is wrong, and neither is used.',
  coreNotInTable: 'The core "{core}" is not in the table, and its area was not measured: what hangs on it is not worked out.',
  turnsNotPositive: 'The winding {name} cannot have {turns} turns; it is taken as not counted.',
  notAboveZero: '“{typed}” cannot be here, it must be above zero; it is taken as not read.',
  windingOnBothSides: 'The winding {name} stands on both sides of the barrier by its pins; it is on the map of neither.',
  coverThinnerThanWire: 'The wire of {name} is thinner over its cover than bare.',
  layerOutsideStack: 'A lead-out of {name} crosses "{layer}", which is no layer of this stack.',
  decisionChanged: 'The decision rule differs from the default: passes from {passAt|percent}, fails up to {failAt|percent}.',
};
