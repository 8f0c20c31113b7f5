import type { JobKey } from '../../src/core/circuit/recognise/job.ts';
import type { Topology } from '../../src/core/circuit/recognise/recognise.ts';

/** An invented circuit with what a person who knows such boards says of it. */
export interface InventedCircuit {
  readonly name: string;
  readonly lines: string;
  readonly topology: Topology;
  readonly jobs: Readonly<Record<string, JobKey>>;
}

const INLET = 'J1: L=L, N=N';
const SIDES = 'mains: L, N\noutput: OUT+, OUT-';

/** Flyback with controller, optocoupler and shunt reference, as in most 12 V adapters. */
const CONTROLLED = `${SIDES}
${INLET}
F1 T1A: L, L1
RV1 470V: L1, N
CX1 100nF X2 275V: L1, N
R1 2M: L1, N
LF1: 1=L1, 2=L2, 3=N, 4=N2
RT1 5R: L2, L3
BD1 MB6S: ~1=L3, ~2=N2, +=HV+, -=HV-
EC1 22uF 400V: HV+, HV-
R2 1M: HV+, VDD
D1 FR107: SN, DRAIN2
R3 100k: SN, HV+
C1 1nF 1kV: SN, HV+
L5 1uH: DRAIN2, DRAIN
Q1 4N65: G=GATE, D=DRAIN, S=CS
R4 22R: GATE, DRV
R5 0R8 1W: CS, HV-
U1 (controller): VDD=VDD, GND=HV-, FB=FB, DRV=DRV, CS=CS
T1 P 72: HV+, DRAIN
T1 A 14: HV-, AUX
T1 S 12: OUT-, SEC
D2 1N4148: AUX, VDD
EC2 10uF 50V: VDD, HV-
D3 SB5100: SEC, OUT+
R6 22R: SEC, SNUB
C2 1nF: SNUB, OUT+
EC3 680uF 16V: OUT+, OUT-
R7 38k3 1%: OUT+, REF
R8 10k 1%: REF, OUT-
U3 431: R=REF, A=OUT-, K=KA
R9 1k: OUT+, LED
U2 (optocoupler) 817C !: A=LED, K=KA, C=FB, E=HV-
R10 1k: LED, KA
R11 10k: KA, RC
C4 100nF: RC, REF
C3 1nF: FB, HV-
CY1 2.2nF Y1 !: HV-, OUT-
R12 10k: OUT+, OUT-
J2: +=OUT+, -=OUT-
`
  .replace('D1 FR107: SN, DRAIN2', 'D1 FR107: DRAIN2, SN')
  .replace('L5 1uH: DRAIN2, DRAIN\n', '')
  .replaceAll('DRAIN2', 'DRAIN');

/** Regulated from the auxiliary winding by a controller with the switch inside. */
const PRIMARY_SIDE = `${SIDES}
${INLET}
FR1 10R 1W: L, L1
D1: L1, HV
D2: N, HV
D3: HV-, L1
D4: HV-, N
EC1 4u7 400V: HV, HV-
L1 1mH: HV, HV+
EC2 4u7 400V: HV+, HV-
T1 P: HV+, SW
T1 A: AUX, HV-
T1 S: OUT-, SEC
U1 (controller): C=SW, VDD=VDD, FB=FB, CS=CS, GND=HV-
R1 2M: HV+, VDD
R2 1R5: CS, HV-
R3 22k: AUX, FB
R4 3k3: FB, HV-
D5: AUX, VDD
EC3 4u7 50V: VDD, HV-
R5 150k: HV+, SN
C1 470pF: HV+, SN
D6: SW, SN
D7 SS34: SEC, OUT+
EC4 470uF 10V: OUT+, OUT-
R6 1k: OUT+, OUT-
CY1 470pF Y1 !: HV-, OUT-
J2: +=OUT+, -=OUT-
`.replace('T1 A: AUX, HV-', 'T1 A: HV-, AUX');

/** Two transistors, no chip, one diode at the input, a Zener on a negative auxiliary rail. */
const SELF_OSCILLATING = `${SIDES}
${INLET}
R1 10R: L, L1
D1 1N4007: L1, HV+
EC1 2u2 400V: HV+, N
R2 1M: HV+, BASE
Q1 13001: B=BASE, C=COL, E=EM
R3 12R: EM, N
Q2 8050: B=B2, C=BASE, E=N
R4 1k: EM, B2
T1 P: HV+, COL
T1 A: FBK, N
T1 S: OUT-, SEC
R5 220R: FBK, FB1
C1 4n7: FB1, BASE
D2 1N4148: NEG, FBK
EC2 22uF 25V: N, NEG
ZD1 6V2: NEG, BASE
D3 1N5819: SEC, OUT+
EC3 220uF 10V: OUT+, OUT-
LED1: LK, OUT-
R6 1k: OUT+, LK
J2: +=OUT+, -=OUT-
`;

/** The same family with a transistor that an optocoupler drives, and a Zener for the set point. */
const SELF_OPTO = `${SIDES}
${INLET}
F1 1A: L, L1
BD1: ~1=L1, ~2=N, +=HV+, -=HV-
EC1 10uF 400V: HV+, HV-
R1 470k: HV+, B1
R2 470k: B1, BASE
Q1 13003: B=BASE, C=COL, E=EM
R3 4R7: EM, HV-
Q2 1815: B=B2, C=BASE, E=HV-
R4 470R: EM, B2
T1 P 120: HV+, COL
T1 A 9: AUX, HV-
T1 S 10: OUT-, SEC
R5 100R: AUX, FB1
C1 10n: FB1, BASE
D2: AUX, VX
EC2 10uF 25V: VX, HV-
U2 (optocoupler): A=LED, K=LK, C=VX, E=B2
ZD1 4V3: OUT-, LK
R6 100R: OUT+, LED
D3: SEC, OUT+
EC3 470uF 10V: OUT+, OUT-
D4: COL, SN
R7 100k: SN, HV+
C3 1n: SN, HV+
J2: +=OUT+, -=OUT-
`;

/** A step-down converter without isolation. */
const BUCK = `mains: L, N
${INLET}
FR1 22R: L, L1
D1: L1, HV+
D2: N2, N
EC1 4u7 400V: HV+, N2
L2 1mH: N2, RTN
EC2 4u7 400V: HV+, RTN
U1 (controller): D=HV+, S=SW, FB=FB, BP=BP
C1 100n: BP, SW
D3 UF4005: RTN, SW
L1 1mH: SW, OUT
EC3 100uF 16V: OUT, RTN
D4: OUT, FBC
C2 10uF: FBC, SW
R1 13k: FBC, FB
R2 2k: FB, SW
R3 3k3: OUT, RTN
J2: +=OUT, -=RTN
`;

/** A capacitor in series with the mains, a bridge, a Zener. */
const DROPPER = `mains: L, N
${INLET}
R1 47R: L, L1
C1 (film) 1uF X2: L1, L2
R2 1M: L1, L2
BD1: ~1=L2, ~2=N, +=V+, -=V-
EC1 220uF 25V: V+, V-
ZD1 12V: V-, V+
J2: +=V+, -=V-
`;

/** A transformer at mains frequency with a bridge behind it. */
const MAINS_TRANSFORMER = `${SIDES}
${INLET}
T1 P 2400: L, N
T1 S 110: S1, S2
D1: S1, OUT+
D2: S2, OUT+
D3: OUT-, S1
D4: OUT-, S2
EC1 1000uF 16V: OUT+, OUT-
R1 1k: OUT+, OUT-
J2: +=OUT+, -=OUT-
`;

/** A synchronous rectifier in the return, several voltages by a negotiation chip's leg, a switch before the socket. */
const NEGOTIATING = `${SIDES}
${INLET}
F1 T2A: L, L1
CX1 220nF X2: L1, N
LF1: 1=L1, 2=L2, 3=N, 4=N2
BD1: ~1=L2, ~2=N2, +=HV+, -=HV-
EC1 47uF 400V: HV+, HV-
T1 P: HV+, SW
T1 A: HV-, AUX
T1 S: SR, SEC
T1 X: HV-, ?
U1 (controller): D=SW, VDD=VDD, FB=FB, GND=HV-, CS=CS
R1 R33: CS, HV-
D1: AUX, DA
R2 4R7: DA, VDD
EC2 22uF 50V: VDD, HV-
R3 1M5: HV+, VDD
D2: SW, SN
R4 200k: SN, HV+
C1 2n2: SN, HV+
Q2: D=SR, S=OUT-, G=SRG
U5 (controller): G=SRG, GND=OUT-, VD=SR, VCC=SEC
EC3 680uF 25V: SEC, OUT-
Q3: D=SEC, S=OUT+, G=SWG
R5 100k 1%: SEC, REF
R6 100k 1%: REF, OUT-
R7 38k3 1%: REF, P1
R8 12k 1%: REF, P2
U4 (negotiation): S1=P1, S2=P2, G=SWG, V=SEC, GND=OUT-, CC1=CC1, CC2=CC2
U3 431: R=REF, A=OUT-, K=KA
R9 1k: SEC, LED
U2 (optocoupler): A=LED, K=KA, C=FB, E=HV-
C3 22n: KA, REF
CY1 1nF Y2 !: HV-, MID
CY2 1nF Y2 !: MID, OUT-
C4 100nF: SEC, OUT-
J2 (connector): +=OUT+, -=OUT-, CC1=CC1, CC2=CC2
floating: MID
`;

/** A doubler for low mains. */
const DOUBLER = `${SIDES}
${INLET}
F1 1A: L, L1
D1: L1, HV+
D2: HV-, L1
EC1 22uF 200V: HV+, N
EC2 22uF 200V: N, HV-
R1 1M: HV+, HV-
T1 P: SW, HV+
T1 S: SEC, OUT-
U1 (controller): D=SW, GND=HV-, VDD=VDD, FB=FB
R2 1M: HV+, VDD
EC4 10uF 50V: VDD, HV-
U2 (optocoupler): A=LED, K=LK, C=FB, E=HV-
R5 100R: OUT+, LED
ZD1 11V: OUT-, LK
D3: SEC, OUT+
EC3 330uF 25V: OUT+, OUT-
J2: +=OUT+, -=OUT-
`;

const without = (lines: string, ...refs: readonly string[]): string =>
  lines
    .split('\n')
    .filter((line) => !refs.some((ref) => line.startsWith(`${ref} `) || line.startsWith(`${ref}:`)))
    .join('\n');

/** "R1:switchSense R2:bulkBleeder" as a table. */
function jobs(text: string): Readonly<Record<string, JobKey>> {
  return Object.fromEntries(
    text
      .trim()
      .split(/\s+/)
      .map((pair) => pair.split(':') as [string, JobKey]),
  );
}

const FLYBACK = { converter: 'flyback', isolated: true } as const;

export const INVENTED_CIRCUITS: readonly InventedCircuit[] = [
  {
    name: 'controlled flyback with shunt reference',
    lines: CONTROLLED,
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'controller', feedback: 'optocoupler' },
    jobs: jobs(`
      J1:inlet F1:fuse RV1:surgeLimiter CX1:acrossMains R1:mainsBleeder LF1:commonModeChoke RT1:inrushLimiter
      BD1:mainsRectifier EC1:bulk R2:startResistor D1:clampDiode R3:clampStore C1:clampStore Q1:switch
      R4:driveResistor R5:switchSense U1:controller T1:transformer D2:auxiliaryRectifier EC2:auxiliaryStore
      D3:outputRectifier R6:snubber C2:snubber EC3:outputStore R7:dividerUpper R8:dividerLower U3:reference
      R9:ledResistor U2:optocoupler R10:ledBypass R11:compensation C4:compensation C3:signalDecoupling
      CY1:barrierCapacitor R12:outputBleeder J2:outlet`),
  },
  {
    name: 'controlled flyback without choke, limiter, snubber and clamp',
    lines: without(CONTROLLED, 'RT1', 'R6', 'C2', 'D1', 'R3', 'C1', 'RV1', 'CX1', 'R1').replace('~1=L3', '~1=L2'),
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'controller', feedback: 'optocoupler' },
    jobs: jobs(`
      F1:fuse LF1:commonModeChoke EC1:bulk R7:dividerUpper U2:optocoupler R5:switchSense`),
  },
  {
    name: 'controlled flyback whose optocoupler was taken out',
    lines: without(CONTROLLED, 'U2'),
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'controller', feedback: 'none' },
    jobs: jobs(`
      Q1:switch D3:outputRectifier EC3:outputStore`),
  },
  {
    name: 'flyback regulated from the primary side',
    lines: PRIMARY_SIDE,
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'controller', feedback: 'auxiliarySense' },
    jobs: jobs(`
      FR1:fuse D1:mainsRectifier D4:mainsRectifier EC1:bulk L1:bulkFilter EC2:bulk T1:transformer
      U1:controllerWithSwitch R1:startResistor R2:switchSense R3:dividerUpper R4:dividerLower D5:auxiliaryRectifier
      EC3:auxiliaryStore R5:clampStore C1:clampStore D6:clampDiode D7:outputRectifier EC4:outputStore
      R6:outputBleeder CY1:barrierCapacitor`),
  },
  {
    name: 'self-oscillating flyback with two transistors',
    lines: SELF_OSCILLATING,
    topology: { ...FLYBACK, rectifier: 'singleDiode', drive: 'selfOscillating', feedback: 'auxiliaryZener' },
    jobs: jobs(`
      R1:inrushLimiter D1:mainsRectifier EC1:bulk R2:startResistor Q1:switch R3:switchSense Q2:limitTransistor R4:senseResistor
      R5:drivePath C1:drivePath D2:auxiliaryRectifier EC2:auxiliaryStore ZD1:regulatingZener D3:outputRectifier
      EC3:outputStore LED1:lamp R6:lampResistor`),
  },
  {
    name: 'self-oscillating flyback without its second transistor',
    lines: without(SELF_OSCILLATING, 'Q2', 'R4'),
    topology: { ...FLYBACK, rectifier: 'singleDiode', drive: 'selfOscillating', feedback: 'auxiliaryZener' },
    jobs: jobs(`
      Q1:switch ZD1:regulatingZener`),
  },
  {
    name: 'self-oscillating flyback with optocoupler and Zener',
    lines: SELF_OPTO,
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'selfOscillating', feedback: 'optocoupler' },
    jobs: jobs(`
      R1:startResistor R2:startResistor Q1:switch Q2:limitTransistor C1:drivePath ZD1:regulatingZener R6:ledResistor
      D4:clampDiode R7:clampStore EC2:auxiliaryStore`),
  },
  {
    name: 'step-down converter without isolation',
    lines: BUCK,
    topology: { converter: 'buck', isolated: false, rectifier: 'singleDiode', drive: 'controller', feedback: 'outputSense' },
    jobs: jobs(`
      FR1:fuse D1:mainsRectifier D2:mainsRectifier EC1:bulk L2:bulkFilter U1:controllerWithSwitch D3:freewheel
      L1:outputChoke EC3:outputStore R3:outputBleeder`),
  },
  {
    name: 'capacitive dropper',
    lines: DROPPER,
    topology: { converter: 'capacitiveDropper', isolated: false, rectifier: 'bridge', drive: null, feedback: 'zenerAcross' },
    jobs: jobs(`
      R1:inrushLimiter R2:mainsBleeder C1:droppingCapacitor BD1:mainsRectifier EC1:outputStore ZD1:regulatingZener`),
  },
  {
    name: 'transformer at mains frequency',
    lines: MAINS_TRANSFORMER,
    topology: { converter: 'mainsTransformer', isolated: true, rectifier: null, drive: null, feedback: 'none' },
    jobs: jobs(`
      T1:transformer D1:outputRectifier D4:outputRectifier EC1:outputStore R1:outputBleeder`),
  },
  {
    name: 'negotiating flyback with a synchronous rectifier',
    lines: NEGOTIATING,
    topology: { ...FLYBACK, rectifier: 'bridge', drive: 'controller', feedback: 'optocoupler' },
    jobs: jobs(`
      Q2:outputRectifier Q3:outputSwitch R5:dividerUpper R6:dividerLower R7:voltageLeg R8:voltageLeg U4:negotiation
      CY1:barrierCapacitor CY2:barrierCapacitor R1:switchSense EC3:outputStore D1:auxiliaryRectifier
      R2:auxiliaryResistor R3:startResistor C3:compensation`),
  },
  {
    name: 'flyback behind a doubler, set by a Zener',
    lines: DOUBLER,
    topology: { ...FLYBACK, rectifier: 'doubler', drive: 'controller', feedback: 'optocoupler' },
    jobs: jobs(`
      D1:mainsRectifier D2:mainsRectifier EC1:bulk EC2:bulk R1:bulkBleeder ZD1:regulatingZener R5:ledResistor
      U1:controllerWithSwitch`),
  },
  {
    name: 'board of which only the input was traced',
    lines: `${SIDES}\n${INLET}\nF1 1A: L, L1\nBD1: ~1=L1, ~2=N, +=HV+, -=HV-\nEC1 10uF 400V: HV+, HV-\nU1 (?): 1=HV+, 2=X, 3=HV-`,
    topology: { converter: null, isolated: null, rectifier: 'bridge', drive: null, feedback: null },
    jobs: jobs(`
      F1:fuse BD1:mainsRectifier EC1:bulk`),
  },
  {
    name: 'parts that make no supply',
    lines: 'R1 1k: A, B\nR2 1k: B, C\nC1 1n: C, A',
    topology: { converter: null, isolated: null, rectifier: null, drive: null, feedback: null },
    jobs: {},
  },
];
